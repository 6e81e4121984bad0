import { useMemo } from "react";
import type { PatternMeasured, PiecePlan } from "../../../logbook/entries/pieceBodies.ts";
import { useFigures, usePattern, useRecipes } from "../../base/state/live.ts";
import { measuredOf, planOfStudy } from "./planOfStudy.ts";
import { readStudy } from "./readStudy.ts";
import { needsOf } from "./wallFigures.ts";

export type StartPattern = {
  readonly name: string;
  readonly plan: Omit<PiecePlan, "name">;
  readonly measured: PatternMeasured | null;
};

/** What a new piece gets from its pattern: null without one, undefined while it is read. */
export function useStartPattern(
  patternId: string | null,
  recipeId: string | null,
): StartPattern | null | undefined {
  const row = usePattern(patternId ?? "");
  const shop = useFigures();
  const recipes = useRecipes();
  const kept = row?.kept ?? null;
  const study = useMemo(() => readStudy(kept), [kept]);
  if (patternId === null) return null;
  // A plan begun with starting figures in place of the shop's own would keep them.
  if (row === undefined || shop === undefined || recipes === undefined) return undefined;
  const recipe = recipes.find(({ id }) => id === recipeId) ?? null;
  // A live read keeps its last row for a moment when the question changes.
  if (study === null || study.id !== patternId) return row === null || study === null ? null : undefined;
  const need = needsOf(study, { shop, recipe })[0] ?? null;
  return { name: study.name, plan: planOfStudy(study, need), measured: measuredOf(study) };
}
