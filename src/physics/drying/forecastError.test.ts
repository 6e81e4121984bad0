import { describe, expect, test } from "vitest";
import { saturationPressurePa } from "../air/air.ts";
import { forecastError } from "./forecastError.ts";
import { dayMs, hourMs } from "../stats/time.ts";

const nowMs = 30 * dayMs;

/** A closed shed: the vapour stays, the temperature swings with the day; `lift` moves a whole day up or down. */
function shed(days: number, lift: (day: number) => number = () => 0) {
  return Array.from({ length: days * 24 + 1 }, (_, i) => {
    const atMs = nowMs - i * hourMs;
    const hour = (atMs / hourMs) % 24;
    const tempC = 18 + 4 * Math.cos((2 * Math.PI * (hour - 15)) / 24) + lift(Math.floor(atMs / dayMs));
    return { atMs, tempC, rh: (0.6 * saturationPressurePa(18)) / saturationPressurePa(tempC), filmWM2K: 4 };
  });
}

describe("how far repeating yesterday was off", () => {
  test("next to nothing where every day is like the last", () => {
    const error = forecastError({ readings: shed(8), nowMs });
    expect(error).toMatchObject({ ok: true, days: 7 });
    if (!error.ok) return;
    expect(error.tempK).toBeLessThan(0.05);
    expect(error.rh).toBeLessThan(0.002);
    expect(error.dewK).toBeLessThan(0.05);
    expect(error.deficitGM3).toBeLessThan(0.05);
  });

  test("about 2 K where every second day is 2 K warmer", () => {
    const error = forecastError({ readings: shed(12, (day) => (day % 2 === 0 ? 2 : 0)), nowMs });
    if (!error.ok) throw new Error(error.code);
    // Repeats the day before at the same hour; the difference of now is none at all at midnight's end.
    expect(error.tempK).toBeGreaterThan(1.5);
    expect(error.tempK).toBeLessThan(2.1);
    expect(error.dewK).toBeLessThan(0.1);
  });

  test("one wild night among twenty days leaves the median where it was", () => {
    const error = forecastError({ readings: shed(20, (day) => (day === 20 ? 8 : 0)), nowMs });
    if (!error.ok) throw new Error(error.code);
    expect(error.tempK).toBeLessThan(0.1);
  });

  test("is not told from two days, nor from readings with holes", () => {
    expect(forecastError({ readings: shed(3), nowMs })).toEqual({
      ok: false,
      code: "too-little-history",
      days: 2,
      wanted: 3,
    });
    const thrice = shed(20).filter(({ atMs }) => (atMs / hourMs) % 8 === 0);
    expect(forecastError({ readings: thrice, nowMs })).toMatchObject({ ok: false, days: 0 });
    expect(forecastError({ readings: [], nowMs })).toMatchObject({ ok: false, days: 0 });
  });

  test("rests on no more than the days asked for, on nothing after now, and on no order", () => {
    const readings = shed(12, (day) => (day % 3) / 2);
    const error = forecastError({ readings, nowMs, mostDays: 5 });
    expect(error).toMatchObject({ ok: true, days: 5 });
    const future = { ...shed(1)[0], atMs: nowMs + hourMs, tempC: 60, rh: 0.1, filmWM2K: 4 };
    expect(forecastError({ readings: [future, ...readings.toReversed()], nowMs, mostDays: 5 })).toEqual(
      error,
    );
  });
});
