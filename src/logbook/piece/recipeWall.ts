import { thickestMm, toTenth } from "../../physics/shell/wallVerdict.ts";
import type { RecipeCoat } from "../../trade/coats.ts";
import { stuccoOf } from "../../trade/stuccos.ts";
import { wallFigures } from "../../trade/wallFigures.ts";
import { coatMm } from "../drying/coatMm.ts";
import type { OwnByKind } from "../shop/shopThings.ts";

type PlannedCoat = Pick<RecipeCoat, "kind" | "stuccoId">;
export type RecipeWall = { readonly mm: number; readonly lowMm: number; readonly highMm: number };

/** Wall one coat of a recipe gives, mm, as its pieces will count it; null for a stucco the table does not know. */
export const recipeCoatMm = (coat: PlannedCoat, ownMm: OwnByKind): number | null =>
  coat.stuccoId === null || stuccoOf(coat.stuccoId) !== null ? coatMm(coat, ownMm) : null;

/**
 * Wall the coats give together, mm, with the range to allow for: both as a piece of this recipe says them once its
 * coats are on. Null when one of them is not in the table.
 */
export function recipeWall(coats: readonly PlannedCoat[], ownMm: OwnByKind): RecipeWall | null {
  let sum = 0;
  for (const coat of coats) {
    const one = recipeCoatMm(coat, ownMm);
    if (one === null) return null;
    sum += one;
  }
  const mm = toTenth(Math.min(thickestMm, sum));
  const spread = wallFigures.tableSpread.value;
  return { mm, lowMm: mm / spread, highMm: mm * spread };
}
