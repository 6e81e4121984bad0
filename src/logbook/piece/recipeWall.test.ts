import { expect, test } from "vitest";
import { startingRecipeOf } from "../../trade/startingRecipes.ts";
import { wallOf } from "./recipeWall.ts";

test("two 80–120, one 50–100, five 16–30 and a seal build about 7.4 mm", () => {
  // Hand sum of slurry film and 1.1 of the mean grain: 2 × 0.318 + 0.398 + 5 × 1.229 + 0.25.
  const coats = ["80-120", "80-120", "50-100", ...Array<string>(5).fill("16-30"), null];
  expect(wallOf(coats.map((stuccoId) => ({ stuccoId })))?.mm).toBeCloseTo(7.43, 1);
});

test("a stucco that is not in the table leaves the wall unknown instead of too thin", () =>
  expect(wallOf([{ stuccoId: "80-120" }, { stuccoId: "river-sand" }])).toBeNull());

test("the general recipe reaches its own least wall", () => {
  const recipe = startingRecipeOf("start-general");
  expect(wallOf(recipe?.coats ?? [])?.mm).toBeGreaterThan(recipe?.floorMm ?? Infinity);
});
