import { describe, expect, test } from "vitest";
import truth from "../../../tests/truth/drying.json" with { type: "json" };
import { readySpread } from "./spread.ts";

describe("early, likely and late", () => {
  test.each(truth.spread.safeMultipliers)("factor $factor: nine in ten are ready by $late times", (row) => {
    const { late } = readySpread({ factor: row.factor, sigmaLn: Math.sqrt(row.variance + 0.0625) });
    expect(late).toBeCloseTo(row.late, 2);
  });

  test("a shop that has learned nothing waits 0.55 to 1.83 times", () => {
    const { early, likely, late } = readySpread();
    expect(likely).toBe(1);
    expect(early).toBeCloseTo(0.546, 3);
    expect(late).toBeCloseTo(1.83, 2);
  });

  test("every two hours without a reading widen the band by 1.15, a night and a day no more than twelve hours", () => {
    const sigma = (gapH: number) => readySpread({ sigmaLn: 0.4, gapS: gapH * 3600 }).sigmaLn / 0.4;
    expect(sigma(1.9)).toBe(1);
    expect(sigma(2)).toBeCloseTo(1.15, 9);
    expect(sigma(5)).toBeCloseTo(1.15 ** 2, 9);
    expect(sigma(40)).toBeCloseTo(1.15 ** 6, 9);
  });

  test("nonsense is refused", () => {
    expect(() => readySpread({ factor: 0 })).toThrow(/factor/);
    expect(() => readySpread({ sigmaLn: -1 })).toThrow(/sigmaLn/);
    expect(() => readySpread({ gapS: NaN })).toThrow(/gapS/);
  });
});
