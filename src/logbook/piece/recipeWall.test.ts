import { expect, test } from "vitest";
import { givenCoated, knownPlan } from "../../../tests/givenPiece.ts";
import { startingRecipeOf } from "../../trade/startingRecipes.ts";
import { recipeWall } from "./recipeWall.ts";

test("two 80–120, one 50–100, five 16–30 and a seal build about 7.4 mm", () => {
  // Hand sum of slurry film and 1.1 of the mean grain: 2 × 0.318 + 0.398 + 5 × 1.229 + 0.25.
  const coats = ["80-120", "80-120", "50-100", ...Array<string>(5).fill("16-30"), null];
  const wall = recipeWall(
    coats.map((stuccoId) => ({ kind: "backup", stuccoId })),
    {},
  );
  expect(wall?.mm).toBeCloseTo(7.43, 1);
});

test("a stucco that is not in the table leaves the wall unknown instead of too thin", () =>
  expect(
    recipeWall(
      [
        { kind: "prime", stuccoId: "80-120" },
        { kind: "backup", stuccoId: "river-sand" },
      ],
      {},
    ),
  ).toBeNull());

test("the general recipe reaches its own least wall", () => {
  const recipe = startingRecipeOf("start-general");
  expect(recipeWall(recipe?.coats ?? [], {})?.mm).toBeGreaterThan(recipe?.floorMm ?? Infinity);
});

test("a recipe says of its shell what a piece of it says once all coats are on", () => {
  const { wall } = givenCoated().standing(119);
  const recipe = startingRecipeOf(knownPlan.recipeId);
  expect(recipeWall(recipe?.coats ?? [], {})).toEqual({
    mm: wall.likelyMm,
    lowMm: wall.lowMm,
    highMm: wall.highMm,
  });
});

test("the shop's own build of a kind is in it", () => {
  const coats = [
    { kind: "prime", stuccoId: "80-120" },
    { kind: "backup", stuccoId: "16-30" },
  ] as const;
  expect(recipeWall(coats, { backup: 1 })?.mm).toBeCloseTo(1.3, 9);
});
