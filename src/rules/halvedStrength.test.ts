import { expect, test } from "vitest";
import { givenCoated, givenPiece, knownPlan, told } from "../../tests/givenPiece.ts";
import { halvedStrength } from "./halvedStrength.ts";
import { recoatedBeforeDry } from "./recoatedBeforeDry.ts";
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

test("a damp recoat halves the strength, and both figures are given", () => {
  const found = halvedStrength(hurried(100));
  expect(found?.damp.map(({ coat }) => coat.number)).toEqual([4]);
  expect(found?.figures["fullMPa"]?.value).toBe(4);
  expect(found?.figures["usedMPa"]?.value).toBe(2);
});

// At full strength 229.5 mm is the widest round that 7.5 mm carries (see wallTooThin.test.ts), at half strength 114.7 mm.
test("a wall that carries the head at half strength is no finding, one that doesn't says which coat was damp", () => {
  expect(wallTooThin(hurried(114))).toEqual([]);
  const [found] = wallTooThin(hurried(116));
  expect(found).toMatchObject({ level: "watch", variant: "marginal", texts: { damp: "4" } });
});

test("the damp coat is told once, with what it does to the strength", () => {
  const [found, ...more] = recoatedBeforeDry(hurried(114));
  expect(more).toEqual([]);
  expect(told(found === undefined ? [] : [found])).toEqual(["note dried-since"]);
  expect(found?.figures).toMatchObject({ fullMPa: { value: 4 }, usedMPa: { value: 2 } });
});

test("an unhurried shell keeps its strength", () => {
  expect(halvedStrength(givenCoated().standing(119))).toBeNull();
});

test("strength halved by a poor firing is another rule's to tell", () => {
  const piece = givenCoated();
  piece.log(100, "burnout-started", {});
  piece.log(104, "burnout-ended", { result: "clean" });
  piece.log(105, "shell-fired", { peakC: 750, holdMin: 60 });
  expect(piece.standing(106).wall.judged?.loadShare).toBeLessThan(1);
  expect(halvedStrength(piece.standing(106))).toBeNull();
});

test("where the wall can't be judged no strength is told", () => {
  const piece = givenPiece();
  piece.air(0.5);
  piece.coats([1, 1.1, 1.2]);
  expect(halvedStrength(piece.standing(2))).toBeNull();
});
