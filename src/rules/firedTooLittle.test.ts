import { expect, test } from "vitest";
import { givenCoated, told } from "../../tests/givenPiece.ts";
import { firedTooLittle } from "./firedTooLittle.ts";

function burntOut() {
  const piece = givenCoated();
  piece.log(100, "burnout-started", {});
  piece.log(104, "burnout-ended", { result: "clean" });
  return piece;
}

test.each([
  [800, 30, []],
  [799, 30, ["watch cool"]],
  [800, 29, ["watch short"]],
  [700, 60, ["watch cool"]],
  [699, 60, ["hold not-bonded"]],
])("fired to %d °C for %d min: %j", (peakC, holdMin, expected) => {
  const piece = burntOut();
  piece.log(105, "shell-fired", { peakC, holdMin });
  expect(told(firedTooLittle(piece.standing(106)))).toEqual(expected);
});

test("a second, hotter firing mends a cool one", () => {
  const piece = burntOut();
  piece.log(105, "shell-fired", { peakC: 720, holdMin: 60 });
  piece.log(120, "shell-fired", { peakC: 850, holdMin: 45 });
  expect(firedTooLittle(piece.standing(121))).toEqual([]);
});

test("a firing before the last coat or patch doesn't count for it", () => {
  const coated = burntOut();
  coated.log(105, "shell-fired", { peakC: 850, holdMin: 60 });
  coated.coat(110);
  coated.log(130, "shell-preheated", { shellC: 600 });
  expect(told(firedTooLittle(coated.standing(131)))).toEqual(["watch not-logged"]);
});

test("a patch put on a fired shell has seen no fire", () => {
  const piece = burntOut();
  piece.log(105, "shell-fired", { peakC: 850, holdMin: 60 });
  const crackId = piece.log(110, "crack-found", { kind: "open", stage: "firing", where: "rim" });
  piece.log(111, "crack-patched", { crackId, how: "slurry" });
  piece.log(130, "shell-preheated", { shellC: 600 });
  expect(told(firedTooLittle(piece.standing(131)))).toEqual(["watch not-logged"]);
});

test("a burnout that was read hot for half an hour is a firing", () => {
  const piece = givenCoated();
  piece.log(100, "burnout-started", {});
  piece.log(103, "burnout-read", { kilnC: 820 });
  piece.log(103.6, "burnout-read", { kilnC: 830 });
  piece.log(104, "burnout-ended", { result: "clean" });
  piece.log(105, "shell-preheated", { shellC: 600 });
  expect(firedTooLittle(piece.standing(106))).toEqual([]);
});

test("a shell that is heated for metal with no firing in its log can't be judged", () => {
  const piece = burntOut();
  expect(firedTooLittle(piece.standing(104.5))).toEqual([]);
  piece.log(105, "shell-preheated", { shellC: 600 });
  expect(told(firedTooLittle(piece.standing(106)))).toEqual(["watch not-logged"]);
});
