import type { Recipe, Shop } from "../../../logbook/piece/piece.ts";
import type { PatternStudy } from "./patternStudy.ts";
import { planOfStudy } from "./planOfStudy.ts";
import { needsOf } from "./wallFigures.ts";

/** The head a pattern gives a plan, m: the drawn cup's over the part that asks most of the shell; null where none is known. */
export function drawnHeadM(
  study: PatternStudy,
  { shop, recipes }: { readonly shop: Shop; readonly recipes: readonly Recipe[] },
): number | null {
  const recipe = recipes.find(({ id }) => id === study.recipeId) ?? null;
  const need = needsOf(study, { shop, recipe })[0] ?? null;
  return planOfStudy(study, need).headM ?? null;
}
