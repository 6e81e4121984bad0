import { hotStrengthShare } from "../../trade/shellStrength.ts";
import { ranges, within } from "../entries/ranges.ts";
import type { Recipe, Shop } from "./piece.ts";

/** Serves until a recipe says otherwise: fired fused silica; see the starting recipes. */
const startingMorMPa = 4;

/** Bend strength of a shell while metal is in it, MPa: the shop's bars or the recipe's figure, less what polymer takes of a hot shell. */
export function hotMorMPa(
  recipe: Pick<Recipe, "morMPa" | "polymer"> | null,
  { morMPa }: Pick<Shop, "morMPa">,
): number {
  const told = within(ranges.morMPa, morMPa) ? morMPa : recipe?.morMPa;
  return (within(ranges.morMPa, told) ? told : startingMorMPa) * hotStrengthShare(recipe?.polymer);
}
