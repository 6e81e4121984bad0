import type { Recipe } from "../../../logbook/piece/piece.ts";
import { recipeSizeKg } from "../../../logbook/piece/recipeSize.ts";
import type { Format } from "./units.ts";

/** "1 to 10 kg", "up to 2 lb": a size is about so much, so no decimals. */
export function sizeWords(
  { low, high }: { readonly low: number; readonly high: number },
  format: Format,
): string {
  const about = (kg: number): string => format.number(format.toShown("kg", kg), 0);
  const most = `${about(high)}\u00a0${format.unit("kg")}`;
  return low > 0 ? `${about(low)} to ${most}` : `up to ${most}`;
}

/** Recipes to choose from: "General bronze (9 coats), 1 to 10 kg". */
export const recipeOptions = (
  recipes: readonly Recipe[],
  format: Format,
): readonly { readonly value: string; readonly label: string }[] =>
  recipes.map((recipe) => {
    const size = recipeSizeKg(recipe);
    const coats = `${recipe.name} (${recipe.coats.length} coats)`;
    return { value: recipe.id, label: size === null ? coats : `${coats}, ${sizeWords(size, format)}` };
  });
