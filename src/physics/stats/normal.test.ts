import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { logBelow, logBetween } from "./normal.ts";

/** Abramowitz & Stegun, Handbook of Mathematical Functions, tables 26.1 and 26.2. */
const printed: readonly [z: number, below: number][] = [
  [0, 0.5],
  [1, 0.841344746],
  [1.96, 0.975002105],
  [-1, 0.158655254],
  [-2, 0.022750132],
  [-3, 0.001349898],
  [-5, 2.8665157e-7],
  [-8, 6.2209606e-16],
];

describe("the normal distribution", () => {
  test.each(printed)("below %d lies %d of it", (z, below) => {
    expect(Math.abs(Math.exp(logBelow(z)) / below - 1)).toBeLessThan(1e-6);
  });

  test("the far tail keeps its logarithm, by the asymptote of Mills' ratio", () => {
    for (const z of [20, 50, 300]) {
      const mills = (1 - 1 / z ** 2 + 3 / z ** 4 - 15 / z ** 6) / z;
      expect(
        Math.abs(logBelow(-z) - (-0.5 * z * z - 0.5 * Math.log(2 * Math.PI) + Math.log(mills))),
      ).toBeLessThan(1e-5);
    }
  });

  test("a stretch cut in two is the sum of its parts, wherever it lies", () =>
    fc.assert(
      fc.property(
        fc.double({ min: -12, max: 12, noNaN: true }),
        fc.double({ min: 0.02, max: 4, noNaN: true }),
        fc.double({ min: 0.1, max: 0.9, noNaN: true }),
        (low, width, cut) => {
          const middle = low + cut * width;
          const whole = logBetween(low, low + width);
          const parts =
            Math.exp(logBetween(low, middle) - whole) + Math.exp(logBetween(middle, low + width) - whole);
          expect(Math.abs(parts - 1)).toBeLessThan(1e-3);
        },
      ),
    ));

  test("a stretch without an end is the tail", () => {
    expect(logBetween(-Infinity, 1)).toBeCloseTo(logBelow(1), 9);
    expect(logBetween(1, Infinity)).toBeCloseTo(logBelow(-1), 6);
    expect(logBetween(-Infinity, Infinity)).toBeCloseTo(0, 6);
  });
});
