import { expect, test } from "vitest";
import { builtInRecipe } from "../logbook/piece/builtIns.ts";
import { givenCoated, givenPiece, knownPlan, told, unhurried } from "../../tests/givenPiece.ts";
import { reviewFindingsFor } from "./all.ts";
import { noSealCoat } from "./noSealCoat.ts";

test("a piece with its seal on is sealed", () => {
  expect(noSealCoat(givenCoated().standing(119))).toEqual([]);
});

test("a seal that is still to come is not missed", () => {
  const piece = givenPiece(knownPlan);
  piece.coats(unhurried.slice(0, 8));
  expect(noSealCoat(piece.standing(80))).toEqual([]);
});

test("a seal left out is one to watch", () => {
  const piece = givenPiece(knownPlan);
  piece.coats(unhurried.slice(0, 8));
  piece.log(80, "coat-skipped", { step: 8, reason: "bucket empty" });
  expect(told(noSealCoat(piece.standing(81)))).toEqual(["watch left-out"]);
});

test("a recipe without a seal is only told", () => {
  const general = builtInRecipe("start-general");
  if (general === null) throw new Error("no general recipe");
  const piece = givenPiece(knownPlan, {
    recipe: { ...general, id: "own", coats: general.coats.slice(0, 8) },
  });
  piece.coats(unhurried.slice(0, 8));
  expect(told(noSealCoat(piece.standing(100)))).toEqual(["note none-planned"]);
});

test("with no coat in the log the rule claims nothing", () => {
  const piece = givenPiece(knownPlan);
  piece.log(1, "burnout-started", {});
  expect(noSealCoat(piece.standing(2))).toEqual([]);
});

test("coats missing with the seal are another rule's word, and nothing says that all coats are on", () => {
  const piece = givenPiece(knownPlan);
  piece.coats(unhurried.slice(0, 5));
  expect(reviewFindingsFor(piece.standing(60)).filter(({ rule }) => rule === "no-seal-coat")).toEqual([]);
});
