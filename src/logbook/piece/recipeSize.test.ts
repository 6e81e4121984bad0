import { expect, test } from "vitest";
import { builtInRecipe, builtInShop } from "./builtIns.ts";
import { otherSize, recipeSizeKg } from "./recipeSize.ts";

const general = builtInRecipe("start-general");
const asked = (metalKg: number, alloyId?: string) =>
  otherSize({ metalKg, ...(alloyId === undefined ? {} : { alloyId }) }, general, builtInShop);

test("a general recipe is for about 1 to 10 kg of bronze: 25 kg and 0.5 kg are other sizes, 4 kg is not", () => {
  expect(asked(4)).toBeNull();
  expect(asked(11.9)).toBeNull();
  expect(asked(25)).toMatchObject({ bronzeKg: 25, low: 1, high: 10 });
  expect(asked(0.5)?.bronzeKg).toBeCloseTo(0.5, 6);
});

test("aluminium counts by its volume: 3 kg of it are as large as 9 to 10 kg of bronze", () => {
  // Densities of solid metal: A356 2.68 g/cm³ (ASM Handbook 2), C87300 8.36 g/cm³ (0.302 lb/in³, Copper Development Association).
  expect(asked(3, "a356")).toBeNull();
  expect(asked(8, "a356")?.bronzeKg).toBeCloseTo((8 * 8.36) / 2.68, 0);
});

test("of what is not known nothing is said: no metal, no recipe, a recipe of the shop's own", () => {
  expect(otherSize({}, general, builtInShop)).toBeNull();
  expect(otherSize({ metalKg: 30 }, null, builtInShop)).toBeNull();
  expect(recipeSizeKg({ id: "start-general", starting: false })).toBeNull();
});
