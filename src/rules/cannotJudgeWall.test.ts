import { expect, test } from "vitest";
import { givenCoated, givenPiece, knownPlan } from "../../tests/givenPiece.ts";
import { reviewFindingsFor } from "./all.ts";
import { cannotJudgeWall } from "./cannotJudgeWall.ts";

const missing = (findings: ReturnType<typeof cannotJudgeWall>) =>
  findings.flatMap(({ figures }) => Object.keys(figures));

const levels = (findings: ReturnType<typeof cannotJudgeWall>) => findings.map(({ level }) => level);

test("a piece with only a name is left alone until half its coats are on, then all three are missing", () => {
  const piece = givenPiece();
  piece.coats([1, 12, 24]);
  expect(cannotJudgeWall(piece.standing(25))).toEqual([]);
  piece.coat(36);
  const found = cannotJudgeWall(piece.standing(37));
  expect(levels(found)).toEqual(["watch"]);
  expect(missing(found)).toEqual(["alloy", "head", "part"]);
});

test("with a recipe it is a note until half the coats are on, and again after it was told", () => {
  const piece = givenPiece({ recipeId: "start-general" });
  expect(levels(cannotJudgeWall(piece.standing(0.5)))).toEqual(["note"]);
  piece.coats([1, 12, 24, 36]);
  expect(levels(cannotJudgeWall(piece.standing(36.5)))).toEqual(["note"]);
  piece.coat(48);
  expect(levels(cannotJudgeWall(piece.standing(49.9)))).toEqual(["watch"]);
  expect(levels(cannotJudgeWall(piece.standing(50.1)))).toEqual(["note"]);
  piece.coats([60, 72, 84, 96]);
  expect(levels(cannotJudgeWall(piece.standing(97)))).toEqual(["watch"]);
  expect(levels(cannotJudgeWall(piece.standing(99)))).toEqual(["note"]);
});

test("at the review, and from the fire on, it is always to be watched", () => {
  const piece = givenPiece({ recipeId: "start-general" });
  piece.coats([1, 12]);
  expect(levels(cannotJudgeWall({ ...piece.standing(20), atReview: true }))).toEqual(["watch"]);
  piece.log(20, "burnout-started", {});
  expect(levels(cannotJudgeWall(piece.standing(30)))).toEqual(["watch"]);
});

test("a piece with every number known can be judged, before and after its coats", () => {
  expect(cannotJudgeWall(givenPiece(knownPlan).standing(1))).toEqual([]);
  expect(cannotJudgeWall(givenCoated().standing(119))).toEqual([]);
});

test("one missing number is the one that is named", () => {
  expect(missing(cannotJudgeWall(givenCoated({ part: undefined }).standing(119)))).toEqual(["part"]);
});

test("at the review, coats that nobody logged are missing too", () => {
  const piece = givenPiece(knownPlan);
  const found = reviewFindingsFor(piece.standing(1)).filter(({ rule }) => rule === "cannot-judge-wall");
  expect(Object.keys(found[0]?.figures ?? {})).toEqual(["coats"]);
});

test("a number that is not known has no value, never a zero", () => {
  const [found] = cannotJudgeWall(givenPiece({ recipeId: "start-general" }).standing(1));
  expect(Object.values(found?.figures ?? {}).map(({ value }) => value)).toEqual([null, null, null]);
});
