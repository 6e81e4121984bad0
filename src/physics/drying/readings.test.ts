import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { dryThrough } from "../../../tests/dryThrough.ts";
import { intervalsFromReadings } from "../../../tests/sums/intervalsFromReadings.ts";
import { hourMs } from "../stats/time.ts";

const pressurePa = 101_325;
const reading = (h: number, tempC: number, rh: number, filmWM2K = 4) => ({
  atMs: h * hourMs,
  tempC,
  rh,
  filmWM2K,
});
const build = (
  readings: Parameters<typeof intervalsFromReadings>[0]["readings"],
  fromH: number,
  toH: number,
) => intervalsFromReadings({ readings, fromMs: fromH * hourMs, toMs: toH * hourMs, pressurePa });
const hoursOf = ({ intervals }: ReturnType<typeof build>): number =>
  intervals.reduce((sum, { durationS }) => sum + durationS, 0) / 3600;

describe("a room's readings as air", () => {
  test("two steady readings give the air halfway between them, then the last is held", () => {
    const { intervals, gapS, heldBackS } = build([reading(0, 20, 0.5), reading(1, 21, 0.52)], 0, 3);
    expect(intervals).toHaveLength(2);
    expect(intervals[0]?.tempC).toBeCloseTo(20.5, 9);
    expect(intervals[0]?.rh).toBeCloseTo(0.51, 2);
    expect(intervals[1]).toEqual({ durationS: 7200, tempC: 21, rh: 0.52, pressurePa, filmWM2K: 4 });
    expect([gapS, heldBackS]).toEqual([7200, 0]);
  });

  test("a change of more than 2 K is walked in half hours", () => {
    const { intervals } = build([reading(0, 20, 0.5), reading(3, 14, 0.7)], 0, 3);
    expect(intervals).toHaveLength(6);
    expect(intervals.every(({ durationS }) => durationS === 1800)).toBe(true);
    expect(intervals[0]?.tempC).toBeCloseTo(19.5, 9);
    expect(intervals[5]?.tempC).toBeCloseTo(14.5, 9);
  });

  test("before the first reading the first is held back, and that is told", () => {
    const { intervals, heldBackS } = build([reading(5, 18, 0.6)], 2, 6);
    expect(heldBackS).toBe(3 * 3600);
    expect(intervals.map(({ durationS }) => durationS)).toEqual([3 * 3600, 3600]);
  });

  test("a span that ends before the first reading is held back no longer than it lasts", () => {
    const history = build([reading(9, 18, 0.6)], 2, 6);
    expect(history.heldBackS).toBe(4 * 3600);
    expect(hoursOf(history)).toBeCloseTo(4, 9);
  });

  test("the longest gap is told, whole, also where it began before the coat", () => {
    expect(build([reading(0, 20, 0.5), reading(9, 20, 0.5), reading(10, 20, 0.5)], 6, 11).gapS).toBe(
      9 * 3600,
    );
    expect(build([reading(0, 20, 0.5)], 0, 14).gapS).toBe(14 * 3600);
  });

  test("across a cooling night the far reading counts, so the night promises less than its evening", () => {
    const evening = reading(18, 22, 0.47);
    const both = build([evening, reading(32, 15, 0.74)], 18, 32);
    const coat = { waterKgM2: 0.2, criticalKgM2: 0.12, depthM: 0.0035, dryFraction: 0.95 };
    const ready = (of: ReturnType<typeof build>) =>
      dryThrough({ coat, filmWM2K: 4, pocketSM: 0, intervals: of.intervals }).readyAfterS;
    expect(ready(both)).toBeGreaterThan(ready(build([evening], 18, 32)) ?? NaN);
  });

  test("a fan switched on counts from its reading on", () => {
    const { intervals } = build(
      [reading(0, 20, 0.5), reading(1, 20, 0.5, 15), reading(2, 20, 0.5, 15)],
      0,
      3,
    );
    expect(intervals.map(({ filmWM2K }) => filmWM2K)).toEqual([4, 15, 15]);
  });

  test("no readings give no air, and the whole span as gap", () => {
    expect(build([], 0, 5)).toEqual({ intervals: [], gapS: 5 * 3600, heldBackS: 0 });
  });

  test("nonsense is refused with what was found", () => {
    expect(() => build([reading(0, 20, 50)], 0, 5)).toThrow(/rh.*50/);
    expect(() => build([reading(NaN, 20, 0.5)], 0, 5)).toThrow(/atMs.*NaN/);
    expect(() => build([], 5, 0)).toThrow(/toMs/);
  });

  test("two readings of the same minute count alike whichever was written first", () => {
    const pair = [reading(1, 20, 0.4), reading(1, 20, 0.6), reading(1, 20, 0.4, 15)];
    const built = build([reading(0, 20, 0.5), ...pair], 0, 3);
    expect(build([...pair.toReversed(), reading(0, 20, 0.5)], 0, 3)).toEqual(built);
    expect(built.intervals.at(-1)?.rh).toBe(0.6);
  });

  const readings = fc.array(
    fc.record({
      atMs: fc.integer({ min: 0, max: 60 }).map((h) => h * hourMs),
      tempC: fc.double({ min: -5, max: 40, noNaN: true }),
      rh: fc.double({ min: 0, max: 1, noNaN: true }),
      filmWM2K: fc.constantFrom(4, 7, 15),
    }),
    { minLength: 1, maxLength: 12 },
  );

  test("the order they were written in never matters, ties included", () =>
    fc.assert(
      fc.property(
        readings.chain((list) =>
          fc.tuple(fc.constant(list), fc.shuffledSubarray(list, { minLength: list.length })),
        ),
        ([list, shuffled]) => {
          expect(build(shuffled, 10, 50)).toEqual(build(list, 10, 50));
        },
      ),
    ));

  test("the span is covered to the second, with air between the readings' own", () =>
    fc.assert(
      fc.property(readings, (list) => {
        const history = build(list, 10, 50);
        expect(hoursOf(history)).toBeCloseTo(40, 9);
        for (const { tempC, rh, durationS } of history.intervals) {
          expect(durationS).toBeGreaterThan(0);
          expect(tempC).toBeGreaterThanOrEqual(Math.min(...list.map((r) => r.tempC)) - 1e-9);
          expect(tempC).toBeLessThanOrEqual(Math.max(...list.map((r) => r.tempC)) + 1e-9);
          expect(rh).toBeGreaterThanOrEqual(0);
          expect(rh).toBeLessThanOrEqual(1);
        }
      }),
    ));
});
