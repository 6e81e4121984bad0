import type { Recipe } from "../../../logbook/piece/piece.ts";
import { recipeSizeKg } from "../../../logbook/piece/recipeSize.ts";
import type { Format } from "./units.ts";

/** "1 kg to 10 kg", "up to 1 kg". */
export const sizeWords = (
  { low, high }: { readonly low: number; readonly high: number },
  format: Format,
): string =>
  low > 0 ? `${format.show("kg", low)} to ${format.show("kg", high)}` : `up to ${format.show("kg", high)}`;

/** Recipes to choose from: "General bronze (9 coats), 1 kg to 10 kg". */
export const recipeOptions = (
  recipes: readonly Recipe[],
  format: Format,
): readonly { readonly value: string; readonly label: string }[] =>
  recipes.map((recipe) => {
    const size = recipeSizeKg(recipe);
    const coats = `${recipe.name} (${recipe.coats.length} coats)`;
    return { value: recipe.id, label: size === null ? coats : `${coats}, ${sizeWords(size, format)}` };
  });
