import { describe, expect, test } from "vitest";
import truth from "../../../tests/truth/drying.json" with { type: "json" };
import { readyRange } from "../drying/readyRange.ts";
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

test("a range walks the same air three times, and steady air spreads it by its factors", () => {
  const spread = readySpread();
  const { early, likely, late } = readyRange({
    coat: truth.coats.backup,
    filmWM2K: 4,
    pocketSM: 0,
    intervals: [{ durationS: 1e6, tempC: 22, rh: 0.5, pressurePa: 101_325 }],
    spread,
  });
  const likelyS = likely.readyAfterS ?? NaN;
  expect((early.readyAfterS ?? NaN) / likelyS).toBeCloseTo(spread.early, 9);
  expect((late.readyAfterS ?? NaN) / likelyS).toBeCloseTo(spread.late, 9);
});
