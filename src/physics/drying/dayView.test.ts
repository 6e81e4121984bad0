import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { dewPointC, saturationDeficitGM3, saturationPressurePa } from "../air/air.ts";
import { dayView, forecastPoints } from "./dayView.ts";
import { hourMs } from "../stats/time.ts";

const reading = (h: number, tempC: number, rh: number) => ({ atMs: h * hourMs, tempC, rh, filmWM2K: 4 });
const hourly = (hours: number, tempC = 22, rh = 0.5) =>
  Array.from({ length: hours + 1 }, (_, h) => reading(h, tempC, rh));
const view = (readings: ReturnType<typeof hourly>, fromH = 0, toH = 24) =>
  dayView({ readings, fromMs: fromH * hourMs, toMs: toH * hourMs, stepS: 600 });

describe("a day in a room", () => {
  test("of steady 22 °C and 50 % pulls 9.71 g/m³ all day, 233 g·h/m³ in sum, at a dew point of 11.1 °C", () => {
    const day = view(hourly(24));
    expect(day.points).toHaveLength(145);
    expect(day.doseGHM3).toBeCloseTo(24 * 9.708, 0);
    expect(day.spans?.deficitGM3.low).toBeCloseTo(9.708, 2);
    // 11.1 °C: from the printed table of dew points (20 °C/50 % 9.27, 25 °C/50 % 13.86), drawn straight.
    expect(day.spans?.dewC?.high).toBeCloseTo(9.27 + 0.4 * (13.86 - 9.27), 1);
    expect(day.knownShare).toBe(1);
  });

  test("leaves a hole where nothing was read for over two hours, and counts it as not known", () => {
    const readings = hourly(24).filter(({ atMs }) => atMs < 6 * hourMs || atMs > 8 * hourMs);
    const day = view(readings);
    expect(day.points.filter((point) => point === null)).toHaveLength(23);
    expect(day.points[30]).not.toBeNull();
    expect(day.points[31]).toBeNull();
    expect(day.knownShare).toBeCloseTo(20 / 24, 12);
    expect(day.doseGHM3).toBeCloseTo(20 * 9.708, 0);
  });

  test("between two readings the vapour goes straight, not the relative humidity", () => {
    const day = view([reading(0, 16, 0.8), reading(2, 24, 0.4)], 0, 2);
    const middle = day.points[6];
    const vapourPa = (0.8 * saturationPressurePa(16) + 0.4 * saturationPressurePa(24)) / 2;
    expect(middle?.tempC).toBeCloseTo(20, 9);
    expect(middle?.rh).toBeCloseTo(vapourPa / saturationPressurePa(20), 9);
  });

  test("of no readings has no spans, and points that say nothing", () => {
    const day = view([]);
    expect(day.spans).toBeNull();
    expect(day.doseGHM3).toBe(0);
    expect(new Set(day.points)).toEqual(new Set([null]));
  });

  test("is the same whatever order its readings come in, and every point is air between its neighbours", () =>
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.integer({ min: 0, max: 1440 }), { minLength: 2, maxLength: 60 }),
        fc.infiniteStream(
          fc.tuple(fc.double({ min: 0, max: 35, noNaN: true }), fc.double({ min: 0.1, max: 1, noNaN: true })),
        ),
        (minutes, airs) => {
          const readings = minutes.map((minute) => {
            const [tempC, rh] = airs.next().value;
            return reading(minute / 60, tempC, rh);
          });
          const day = view(readings);
          expect(view(readings.toReversed())).toEqual(day);
          const temps = readings.map(({ tempC }) => tempC);
          for (const point of day.points) {
            if (point === null) continue;
            expect(point.tempC).toBeGreaterThanOrEqual(Math.min(...temps) - 1e-9);
            expect(point.tempC).toBeLessThanOrEqual(Math.max(...temps) + 1e-9);
            expect(point.deficitGM3).toBe(saturationDeficitGM3(point));
            expect(point.dewC).toBe(dewPointC(point));
          }
        },
      ),
      { numRuns: 100 },
    ));

  test("nonsense is refused", () => {
    expect(() => dayView({ readings: [], fromMs: 5, toMs: 5, stepS: 600 })).toThrow(/toMs/);
    expect(() => dayView({ readings: [], fromMs: 0, toMs: 5, stepS: 1 })).toThrow(/stepS/);
  });
});

test("a forecast's stretches are drawn at their middles", () => {
  const stretch = { tempC: 20, rh: 0.5, pressurePa: 101_325, durationS: 3600 };
  expect(forecastPoints([stretch, { ...stretch, durationS: 1800 }], 0).map(({ atMs }) => atMs)).toEqual([
    1_800_000, 4_500_000,
  ]);
});
