import { expect, test } from "vitest";
import { guessUnit, scaleFactor } from "./scaleMesh.ts";

test.each([
  [180, "mm"],
  [350, "mm"],
  [7.5, "inch"],
  [22, "cm"],
  [0.3, "m"],
])("a longest side of %f most likely means %s", (longest, unit) => {
  const guess = guessUnit(longest);
  expect(guess.unit).toBe(unit);
  expect(guess.all[0]?.unit).toBe(unit);
  expect(guess.all).toHaveLength(6);
});

test("a guess is clear for a hand-sized figure in mm or m, and not for one that could be inches or centimetres", () => {
  expect(guessUnit(200).clear).toBe(true);
  expect(guessUnit(0.2).clear).toBe(true);
  expect(guessUnit(12).clear).toBe(false);
});

test("a length is brought to another, and absurd scales are refused", () => {
  expect(scaleFactor({ kind: "length", fromMm: 80, toMm: 120 })).toBe(1.5);
  for (const percent of [0, -5, NaN, 2e6])
    expect(() => scaleFactor({ kind: "percent", percent })).toThrow(RangeError);
  expect(() => guessUnit(0)).toThrow(RangeError);
});
