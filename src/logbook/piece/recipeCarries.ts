import { headPressurePa, type WallPart } from "../../physics/shell/wall.ts";
import { carries, thickestMm, toTenth } from "../../physics/shell/wallVerdict.ts";
import { wallFigures } from "../../trade/wallFigures.ts";
import { coatMm } from "../drying/coatMm.ts";
import { ownAlloy } from "../shop/ownAlloy.ts";
import type { RecipeCoat } from "../../trade/coats.ts";
import type { Recipe, Shop } from "./piece.ts";
import { wallLimitsOf, wallStrength } from "./wallBasis.ts";

const headM = 0.3;
const alloyId = "c87300";
const stepMm = 10;
const mostSteps = 300;

/**
 * The broadest square flat and the widest tube, mm, in steps of 10, that a recipe's shell carries under 0.3 m of silicon
 * bronze, nothing of it measured; 0 where it carries none. Null without a coat.
 */
export function recipeCarries(
  recipe: Pick<Recipe, "morMPa" | "safetyFactor"> & {
    readonly id?: string | undefined;
    readonly coats: readonly Pick<RecipeCoat, "kind" | "stuccoId">[];
  },
  shop: Shop,
): { readonly headM: number; readonly flatMm: number; readonly tubeMm: number } | null {
  const densityKgM3 = ownAlloy(alloyId, shop)?.liquidKgM3.value;
  if (recipe.coats.length === 0 || densityKgM3 === undefined) return null;
  const mm = recipe.coats.reduce((sum, coat) => sum + coatMm(coat, shop.buildMm), 0);
  const likelyMm = toTenth(Math.min(thickestMm, mm));
  const { morMPa, spread } = wallStrength(recipe, shop);
  const { tableSpread, headSpread } = wallFigures;
  const does = (part: WallPart): boolean =>
    carries(
      {
        pressurePa: headPressurePa({ densityKgM3, headM }),
        part,
        morMPa,
        spreads: { strength: spread, wall: tableSpread.value, head: headSpread.value },
      },
      { likelyMm, limits: wallLimitsOf(recipe) },
    );
  return {
    headM,
    flatMm: broadest((widthMm) => does({ kind: "flat", widthMm, lengthMm: widthMm })),
    tubeMm: broadest((diameterMm) => does({ kind: "round", diameterMm })),
  };
}

/** The greatest size, in whole steps, that does; a smaller one always does where a greater one does. */
function broadest(does: (mm: number) => boolean): number {
  let [fits, fails] = [0, mostSteps + 1];
  while (fails - fits > 1) {
    const middle = Math.floor((fits + fails) / 2);
    if (does(middle * stepMm)) fits = middle;
    else fails = middle;
  }
  return fits * stepMm;
}
