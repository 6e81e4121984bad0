import { expect, test } from "vitest";
import { builtInRecipe, builtInShop } from "./builtIns.ts";
import { recipeCarries } from "./recipeCarries.ts";

const general = builtInRecipe("start-general")!;

test("by hand: 7.5 mm of the general recipe's 7.7 under 0.3 m of silicon bronze", () => {
  // Flat: b² = 7.5²·4/(0.3078·0.02296·e^0.6054): 131.8 mm. Tube: 2·7.5·0.5·4/(0.02296·e^0.5357): 765 mm.
  expect(recipeCarries(general, builtInShop)).toEqual({ headM: 0.3, flatMm: 130, tubeMm: 760 });
});

test("more margin carries less, test bars of the same strength more, no coat nothing", () => {
  const flat = (more: object, shop = builtInShop) => recipeCarries({ ...general, ...more }, shop)?.flatMm;
  expect(flat({ safetyFactor: 4 })).toBe(110);
  expect(flat({}, { ...builtInShop, morMPa: 4 })).toBe(140);
  expect(flat({ coats: [] })).toBeUndefined();
});
