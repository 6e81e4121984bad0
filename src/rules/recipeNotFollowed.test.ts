import { expect, test } from "vitest";
import { givenCoated, givenPiece, knownPlan, told } from "../../tests/givenPiece.ts";
import { reviewFindingsFor } from "./all.ts";
import { recipeNotFollowed } from "./recipeNotFollowed.ts";

test("a piece coated by its recipe follows it", () => {
  expect(recipeNotFollowed(givenCoated().standing(119))).toEqual([]);
});

test("a piece on its way has left nothing out yet", () => {
  const piece = givenPiece(knownPlan);
  piece.coats([1, 8, 16]);
  expect(recipeNotFollowed(piece.standing(20))).toEqual([]);
});

test("at the review, coats that are not on the piece hold it", () => {
  const piece = givenPiece(knownPlan);
  piece.coats([1, 8, 16]);
  const found = reviewFindingsFor(piece.standing(40)).filter(({ rule }) => rule === "recipe-not-followed");
  expect(told(found)).toEqual(["hold left-out"]);
  expect(found[0]?.texts["which"]).toBe("4, 5, 6, 7, 8, 9");
});

test("a coat skipped in words is one to watch, and holds nothing", () => {
  const piece = givenPiece(knownPlan);
  piece.coats([1, 8]);
  piece.log(10, "coat-skipped", { step: 2, reason: "no intermediate left" });
  piece.coat(16);
  const found = recipeNotFollowed(piece.standing(20));
  expect(told(found)).toEqual(["watch skipped"]);
  expect(found[0]?.texts["which"]).toBe("3");
});

test("another kind or another stucco than the recipe's is told with the coat's number", () => {
  const piece = givenPiece(knownPlan);
  piece.coat(1);
  piece.coat(8, { stuccoId: "50-100" });
  piece.coat(16, { kind: "backup" });
  const found = recipeNotFollowed(piece.standing(20));
  expect(told(found)).toEqual(["note other-kind", "note other-stucco"]);
  expect(found.map(({ texts }) => texts["which"])).toEqual(["3", "2"]);
});

test("a coat beyond the recipe is extra; one that mends a burnt-out shell is not", () => {
  const extra = givenCoated();
  extra.coat(100);
  expect(told(recipeNotFollowed(extra.standing(110)))).toEqual(["note extra"]);
  const mended = givenCoated();
  mended.log(100, "burnout-started", {});
  mended.log(101, "burnout-ended", { result: "stopped" });
  mended.coat(102);
  expect(recipeNotFollowed(mended.standing(110))).toEqual([]);
});

test("without a recipe there is nothing to follow, and that is said", () => {
  const piece = givenPiece();
  expect(recipeNotFollowed(piece.standing(1))).toEqual([]);
  piece.coat(2);
  expect(told(recipeNotFollowed(piece.standing(3)))).toEqual(["note no-recipe"]);
});
