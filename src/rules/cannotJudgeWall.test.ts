import { expect, test } from "vitest";
import { givenCoated, givenPiece, knownPlan } from "../../tests/givenPiece.ts";
import { reviewFindingsFor } from "./all.ts";
import { cannotJudgeWall } from "./cannotJudgeWall.ts";

const missing = (findings: ReturnType<typeof cannotJudgeWall>) =>
  findings.flatMap(({ figures }) => Object.keys(figures));

test("of a piece with only a name, alloy, head and part are missing", () => {
  const piece = givenPiece();
  const found = cannotJudgeWall(piece.standing(1));
  expect(found.map(({ level }) => level)).toEqual(["watch"]);
  expect(missing(found)).toEqual(["alloy", "head", "part"]);
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
  const [found] = cannotJudgeWall(givenPiece().standing(1));
  expect(Object.values(found?.figures ?? {}).map(({ value }) => value)).toEqual([null, null, null]);
});
