import { expect, test } from "vitest";
import { givenCoated, givenPiece, knownPlan, told } from "../../tests/givenPiece.ts";
import { dampRecoatWeakens } from "./dampRecoatWeakens.ts";
import { wallTooThin } from "./wallTooThin.ts";

/** Nine coats, the fifth put on the fourth within the hour. */
function hurried(diameterMm: number) {
  const piece = givenPiece({ ...knownPlan, headM: 1, part: { kind: "round", diameterMm } });
  for (const hour of [1, 6, 12, 24, 24.4, 48, 60, 72, 84]) {
    piece.air(hour - 0.1);
    piece.coat(hour);
  }
  return piece.standing(119);
}

test("a damp recoat halves the strength, and both figures are told", () => {
  const [found] = dampRecoatWeakens(hurried(100));
  expect(found?.figures["fullMPa"]?.value).toBe(4);
  expect(found?.figures["usedMPa"]?.value).toBe(2);
  expect(found?.figures["fullSafety"]?.value).toBeCloseTo(
    2 * (found?.figures["usedSafety"]?.value ?? NaN),
    9,
  );
});

// At full strength 133.5 mm is the widest round this wall carries, so at half strength it is 66.7 mm.
test("a wall that carries the head at half strength is only told of, one that doesn't is watched", () => {
  expect(told(dampRecoatWeakens(hurried(66)))).toEqual(["note carries"]);
  expect(wallTooThin(hurried(66))).toEqual([]);
  expect(told(dampRecoatWeakens(hurried(68)))).toEqual(["watch short"]);
  expect(told(wallTooThin(hurried(68)))).toEqual(["watch marginal"]);
});

test("an unhurried shell keeps its strength", () => {
  expect(dampRecoatWeakens(givenCoated().standing(119))).toEqual([]);
});

test("strength halved by a poor firing is another rule's to tell", () => {
  const piece = givenCoated();
  piece.log(100, "burnout-started", {});
  piece.log(104, "burnout-ended", { result: "clean" });
  piece.log(105, "shell-fired", { peakC: 750, holdMin: 60 });
  expect(piece.standing(106).wall.judged?.morHalved).toBe(true);
  expect(dampRecoatWeakens(piece.standing(106))).toEqual([]);
});

test("where the wall can't be judged no strength is told", () => {
  const piece = givenPiece();
  piece.air(0.5);
  piece.coats([1, 1.1, 1.2]);
  expect(dampRecoatWeakens(piece.standing(2))).toEqual([]);
});
