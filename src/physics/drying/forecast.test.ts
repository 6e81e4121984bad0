import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import truth from "../../../tests/truth/drying.json" with { type: "json" };
import { dewPointC, saturationPressurePa } from "../air/air.ts";
import { dryThrough } from "../../../tests/dryThrough.ts";
import { forecastAir } from "./forecast.ts";
import { hourMs } from "../stats/time.ts";

const pressurePa = 101_325;
const coat = truth.coats.backup;

/** A sine day in a closed shed: the vapour stays, the temperature swings, warmest at 15 h. */
const shed = (h: number, filmWM2K = 4) => {
  const tempC = 18 + 4 * Math.cos((2 * Math.PI * (h - 15)) / 24);
  const rh = (0.6 * saturationPressurePa(18)) / saturationPressurePa(tempC);
  return { atMs: h * hourMs, tempC, rh, filmWM2K };
};
const hourly = (fromH: number, toH: number, of = shed) =>
  Array.from({ length: Math.floor(toH - fromH) + 1 }, (_, i) => of(fromH + i));
const ahead = (readings: ReturnType<typeof hourly>, nowH: number, hours = 48, basis?: "hold-last") =>
  forecastAir({
    readings,
    nowMs: nowH * hourMs,
    untilMs: (nowH + hours) * hourMs,
    stepS: 900,
    pressurePa,
    basis,
  });
const readyH = (forecast: ReturnType<typeof ahead>, filmWM2K = 4): number =>
  (dryThrough({ coat, filmWM2K, pocketSM: 0, intervals: forecast.intervals.map((i) => ({ ...i, filmWM2K })) })
    .readyAfterS ?? NaN) / 3600;

describe("a shed that cools at night", () => {
  test.each(truth.day.rows)(
    "film $filmWM2K, dipped at $dipH h: $realH h, where holding says $holdLastH h",
    (row) => {
      const nowH = 24 + row.dipH;
      const readings = hourly(row.dipH, nowH);
      const repeated = ahead(readings, nowH);
      const held = ahead(readings, nowH, 48, "hold-last");
      expect([repeated.basis, held.basis]).toEqual(["repeat-yesterday", "hold-last"]);
      expect(Math.abs(readyH(repeated, row.filmWM2K) / row.realH - 1)).toBeLessThan(truth.day.within);
      expect(Math.abs(readyH(held, row.filmWM2K) / row.holdLastH - 1)).toBeLessThan(truth.day.within);
    },
  );

  test("a day like yesterday is foretold to a tenth of a degree, two days on as well", () => {
    const { intervals } = ahead(hourly(0, 30), 30);
    let h = 30;
    for (const { durationS, tempC, rh } of intervals) {
      const real = shed(h + durationS / 7200);
      expect(Math.abs(tempC - real.tempC)).toBeLessThan(0.1);
      expect(Math.abs(rh - real.rh)).toBeLessThan(0.01);
      h += durationS / 3600;
    }
  });

  test("a warmer today fades: 3 K now, 1.1 K after six hours, nothing after two days", () => {
    const readings = [...hourly(0, 29), { ...shed(30), tempC: shed(30).tempC + 3 }];
    const { intervals } = ahead(readings, 30);
    const over = (i: number) => (intervals[i]?.tempC ?? NaN) - shed(30 + (i + 0.5) / 4).tempC;
    expect(over(0)).toBeCloseTo(3 * Math.exp(-0.125 / 6), 1);
    expect(over(24)).toBeCloseTo(3 * Math.exp(-6.125 / 6), 1);
    // At clock times of the warm reading itself the second day repeats it.
    expect(Math.abs(over(150))).toBeLessThan(0.1);
  });

  test("the moisture moves as dew point, so a warm-up lowers the humidity", () => {
    const dew = dewPointC(shed(30)) ?? NaN;
    const tempC = shed(30).tempC + 3;
    const warm = { ...shed(30), tempC, rh: saturationPressurePa(dew) / saturationPressurePa(tempC) };
    const first = ahead([...hourly(0, 29), warm], 30).intervals[0];
    expect(first?.rh).toBeLessThan(shed(30).rh - 0.05);
    expect(dewPointC(first ?? shed(30))).toBeCloseTo(dew, 1);
  });
});

test("a damper today fades: a dew point 2 K up is 0.7 K up after six hours", () => {
  const now = shed(30);
  const dewC = (dewPointC(now) ?? NaN) + 2;
  const damp = { ...now, rh: saturationPressurePa(dewC) / saturationPressurePa(now.tempC) };
  const { intervals } = ahead([...hourly(0, 29), damp], 30);
  const over = (i: number) => (dewPointC(intervals[i] ?? now) ?? NaN) - (dewC - 2);
  expect(over(0)).toBeCloseTo(2 * Math.exp(-0.125 / 6), 1);
  expect(over(24)).toBeCloseTo(2 * Math.exp(-6.125 / 6), 1);
});

describe("what a forecast rests on", () => {
  test("under 20 hours of readings the last one is held", () => {
    const { basis, intervals } = ahead(hourly(0, 19), 19, 2);
    expect(basis).toBe("hold-last");
    for (const { tempC, rh } of intervals) expect([tempC, rh]).toEqual([shed(19).tempC, shed(19).rh]);
    expect(ahead(hourly(0, 20), 20).basis).toBe("repeat-yesterday");
  });

  test("two readings a day apart are no yesterday, nor is a last reading of long ago", () => {
    expect(ahead([shed(0), shed(24)], 24).basis).toBe("hold-last");
    expect(ahead(hourly(0, 30), 44).basis).toBe("hold-last");
  });

  test("without a reading there is no air and no basis", () => {
    expect(ahead([], 5)).toEqual({ intervals: [], basis: null, lastAgeS: null });
    expect(ahead([shed(6)], 5).basis).toBeNull();
  });

  test("readings of the future are left out, and the age of the last is told", () => {
    const known = hourly(0, 30);
    expect(ahead([...known, { ...shed(32), tempC: 60 }], 31)).toEqual(ahead(known, 31));
    expect(ahead(known, 31).lastAgeS).toBe(3600);
  });

  test("the fan of the last reading blows on", () => {
    const readings = [...hourly(0, 29), shed(30, 15)];
    expect(ahead(readings, 30).intervals.every(({ filmWM2K }) => filmWM2K === 15)).toBe(true);
  });

  test("the last step is cut at the end asked for", () => {
    const { intervals } = forecastAir({
      readings: [shed(0)],
      nowMs: 0,
      untilMs: 2_000_000,
      stepS: 900,
      pressurePa,
    });
    expect(intervals.map(({ durationS }) => durationS)).toEqual([900, 900, 200]);
  });

  test("any weather gives air that can be dried in, whatever the order of its readings", () =>
    fc.assert(
      fc.property(
        fc.array(
          fc.record({
            atMs: fc.integer({ min: 0, max: 48 }).map((h) => h * hourMs),
            tempC: fc.double({ min: -40, max: 90, noNaN: true }),
            rh: fc.double({ min: 0, max: 1, noNaN: true }),
            filmWM2K: fc.constantFrom(4, 15),
          }),
          { minLength: 1, maxLength: 40 },
        ),
        (readings) => {
          const forecast = ahead(readings, 48);
          expect(ahead(readings.toReversed(), 48)).toEqual(forecast);
          expect(forecast.basis).not.toBeNull();
          const walked = dryThrough({ coat, filmWM2K: 4, pocketSM: 0, intervals: forecast.intervals });
          expect(walked.waterKgM2).toBeLessThanOrEqual(coat.waterKgM2);
          expect(walked.points).toHaveLength(192);
        },
      ),
    ));

  test("nonsense is refused", () => {
    expect(() => forecastAir({ readings: [], nowMs: 5, untilMs: 4, stepS: 900, pressurePa })).toThrow(
      /untilMs/,
    );
    expect(() => forecastAir({ readings: [], nowMs: 0, untilMs: 4, stepS: 0, pressurePa })).toThrow(/stepS/);
  });
});
