import { expect, test } from "vitest";
import { isTooCoarse, neededStepG } from "./scaleStep.ts";

test("steps of 5 g will do from a hundred grams of water on; a small piece wants a finer balance", () => {
  expect(neededStepG(40)).toBe(2);
  expect([99.9, 100, 400].map(isTooCoarse)).toEqual([true, false, false]);
  expect(isTooCoarse(null)).toBe(false);
});
