import type { Standing } from "../logbook/piece/standing.ts";
import { leftOutSteps } from "./recipeNotFollowed.ts";
import { coatsAreDone } from "./stage.ts";
import type { FindingOf } from "./variants.ts";

/** The coats are done and no seal is among them: the last stucco lies loose. A seal of earlier date counts. */
export function noSealCoat(standing: Standing): readonly FindingOf<"no-seal-coat">[] {
  const { piece, recipe } = standing;
  const last = piece.coats.at(-1);
  // With no coat at all, `cannot-judge-wall` says that the coats are not in the log.
  if (last === undefined || !coatsAreDone(standing)) return [];
  if (piece.coats.some(({ kind }) => kind === "seal")) return [];
  // With other coats missing as well, those are listed with the seal among them.
  if (recipe !== null && leftOutSteps(standing, recipe).length > 0) return [];
  const isPlanned = recipe === null || recipe.coats.some(({ kind }) => kind === "seal");
  return [
    {
      rule: "no-seal-coat",
      variant: isPlanned ? "left-out" : "none-planned",
      level: isPlanned ? "watch" : "note",
      figures: {},
      texts: {},
      entries: [last.id],
      source: "common practice, no source",
    },
  ];
}
