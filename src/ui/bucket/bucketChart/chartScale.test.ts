import { describe, expect, test } from "vitest";
import { secondsSpan, secondsTicks } from "./chartScale.ts";

const points = [12.4, 12.9, 13.3].map((seconds, i) => ({
  id: `r${i}`,
  at: i,
  seconds,
  hollow: false,
  afterCorrection: false,
}));

describe("the picture of the seconds", () => {
  test("holds every reading and the whole target band", () => {
    const { low, high } = secondsSpan({ points, chart: null }, { lowS: 10, highS: 13 });
    expect(low).toBeLessThan(10);
    expect(high).toBeGreaterThan(13.3);
  });

  test("one lonely reading still has room above and below it", () => {
    const { low, high } = secondsSpan({ points: points.slice(0, 1), chart: null }, null);
    expect(high - low).toBeGreaterThan(0.5);
  });

  test("rules are drawn at round seconds inside the picture, and are few", () => {
    const ticks = secondsTicks({ low: 11.1, high: 14.2 });
    expect(ticks).toEqual([12, 13, 14]);
    expect(secondsTicks({ low: 0, high: 90 }).length).toBeLessThanOrEqual(6);
  });
});
