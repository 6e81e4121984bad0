import { lnSdOf, type WallLimits } from "../../physics/shell/wallVerdict.ts";
import { provenStrength } from "../../physics/shell/provenStrength.ts";
import { hotStrengthShare } from "../../trade/shellStrength.ts";
import { usualFactor, wallFigures, wallLimits } from "../../trade/wallFigures.ts";
import { ranges, within } from "../entries/ranges.ts";
import type { Recipe, Shop } from "./piece.ts";

/** Likely bending strength of a shell while metal is in it, MPa, the factor it is known to, and what it comes from. */
export type WallStrength = {
  readonly morMPa: number;
  readonly spread: number;
  readonly from: "starting" | "recipe" | "bars" | "pours";
};

/**
 * The shop's own test bars stand before the recipe's figure, and that before the starting value; the last two learn from
 * what shells of that recipe bore at the pour. Polymer takes its share of a hot shell from bars and figures alike.
 */
export function wallStrength(
  recipe: (Pick<Recipe, "morMPa" | "polymer"> & { readonly id?: string | undefined }) | null,
  { morMPa, proven = [] }: Pick<Shop, "morMPa" | "proven">,
): WallStrength {
  const { barsSpread, strengthSpread, strengthMPa } = wallFigures;
  const hotShare = hotStrengthShare(recipe?.polymer);
  if (within(ranges.morMPa, morMPa))
    return { morMPa: morMPa * hotShare, spread: barsSpread.value, from: "bars" };
  const isOwn = within(ranges.morMPa, recipe?.morMPa);
  const likelyMPa = (isOwn ? recipe.morMPa : strengthMPa.value) * hotShare;
  const bore = proven.filter(({ recipeId }) => recipeId === recipe?.id);
  const loadsOf = (held: boolean): readonly number[] =>
    bore.filter((one) => one.held === held).map(({ loadMPa }) => loadMPa);
  const learned = provenStrength({
    likelyMPa,
    spread: strengthSpread.value,
    within: barsSpread.value,
    loadSpread: Math.exp(1.645 * usualLoadSd),
    held: loadsOf(true),
    broke: loadsOf(false),
  });
  return {
    morMPa: learned.likelyMPa,
    spread: learned.spread,
    from: bore.length > 0 ? "pours" : isOwn ? "recipe" : "starting",
  };
}

/** Standard deviation of the logarithm of a flat's load, its wall by the table. */
const usualLoadSd = Math.hypot(
  2 * lnSdOf(wallFigures.tableSpread.value),
  lnSdOf(wallFigures.headSpread.value),
);

/** Standard deviation of the logarithm of a flat's strength over load with nothing measured. */
const usualSd = Math.hypot(lnSdOf(wallFigures.strengthSpread.value), usualLoadSd);

/**
 * The limits a recipe asks for. Its factor of old is read as the limit it stood for: 3 is the usual one, 4 asks for a
 * third more strength over load, and no factor lowers it under the limit of marginal.
 */
export function wallLimitsOf(recipe: Pick<Recipe, "safetyFactor"> | null): WallLimits {
  const factor = recipe?.safetyFactor;
  const asked = within(ranges.safetyFactor, factor) ? factor : usualFactor.value;
  const carries = wallLimits.carries.value + Math.log(asked / usualFactor.value) / usualSd;
  const marginal = wallLimits.marginal.value;
  return { carries: Math.max(marginal, carries), marginal, thin: wallLimits.thin.value };
}

/** What handling and burnout ask of a wall, mm; 0 where no recipe says. */
export const floorMmOf = (recipe: Pick<Recipe, "floorMm"> | null): number =>
  within(ranges.floorMm, recipe?.floorMm) ? recipe.floorMm : 0;
