import { millisecondsInHour as hourMs } from "date-fns/constants";
import fc from "fast-check";
import { expect, test } from "vitest";
import type { AirReading } from "../../../logbook/piece/piece.ts";
import { makeFormat } from "../../base/format/units.ts";
import { fromStart, niceRange, recentReadings } from "../../../logbook/air/airSeries.ts";
import { airClassOptions, readingWords, thirstWords } from "./airWords.ts";
import { prefill, readingOf, tempStepC } from "./prefill.ts";

const now = Date.UTC(2026, 2, 4, 12);
const metric = makeFormat("metric", "en-GB");
const us = makeFormat("us", "en-US");
const read = (hoursAgo: number, airC = 20.3, rh = 0.5): AirReading => ({
  id: `r${hoursAgo}`,
  at: now - hoursAgo * hourMs,
  airC,
  rh,
  air: "room-fan",
});

test("the next reading starts from the last one, on the steppers' own marks", () => {
  expect(prefill(read(1), metric)).toEqual({ airC: 20.5, rh: 0.5, air: "room-fan" });
  const inUs = prefill(read(1), us);
  expect(us.toShown("temp", inUs.airC ?? NaN)).toBeCloseTo(69, 9);
  expect(us.show("temp", (inUs.airC ?? NaN) + tempStepC(us))).toBe("70\u00a0°F");
  expect(tempStepC(makeFormat("mixed", "en-GB"))).toBeCloseTo(5 / 9, 12);
});

test("before the first reading nothing is filled in, and the form says what is missing", () => {
  const empty = prefill(null, metric);
  expect(empty).toEqual({ airC: null, rh: null, air: null });
  expect(readingOf(empty)).toEqual({
    ok: false,
    missing: "Set the temperature, humidity and air movement first.",
  });
  expect(readingOf({ ...empty, airC: 20 })).toMatchObject({
    missing: "Set the humidity and air movement first.",
  });
  expect(readingOf({ airC: 20, rh: 0.5, air: null })).toMatchObject({
    missing: "Set the air movement first.",
  });
  const whole = { airC: 20, rh: 0.5, air: "still" } as const;
  expect(readingOf(whole)).toEqual({ ok: true, reading: whole });
});

test("all six classes of moving air are told apart in words", () => {
  expect(airClassOptions).toHaveLength(6);
  expect(new Set(airClassOptions.map(({ hint }) => hint)).size).toBe(6);
});

test("a reading is said with its dew point and what the air can still take up", () => {
  expect(readingWords(read(0, 20, 0.5), metric)).toBe("20\u00a0°C, 50%, fan on the room");
  // 20 °C and 50 %: dew point 9.3 °C and half of 17.3 g/m³, psychrometric tables of ASHRAE Fundamentals 2017 ch. 1.
  expect(thirstWords({ airC: 20, rh: 0.5 }, metric)).toBe(
    "dew point 9.3\u00a0°C; takes up 8.6\u00a0g/m³ of water",
  );
});

test("the chart holds two days and the reading that was in force when they began", () => {
  const readings = [read(1), read(30), read(50), read(80)];
  expect(recentReadings(readings, now).map(({ id }) => id)).toEqual(["r50", "r30", "r1"]);
  expect(recentReadings([read(80), read(90)], now).map(({ id }) => id)).toEqual(["r80"]);
  expect(recentReadings([read(-2)], now)).toEqual([]);
});

test("a line that began before the chart enters it where it crosses the edge", () => {
  const points = [
    { at: 0, value: 10 },
    { at: 100, value: 20 },
  ];
  expect(fromStart(points, 50)).toEqual([{ at: 50, value: 15 }, points[1]]);
  expect(fromStart(points.slice(0, 1), 50)).toEqual([{ at: 50, value: 10 }]);
  expect(fromStart(points, -5)).toBe(points);
});

test("a chart's range holds every value and is never flat", () =>
  fc.assert(
    fc.property(fc.array(fc.integer({ min: -400, max: 900 }).map((tenths) => tenths / 10)), (values) => {
      const { low, high } = niceRange(values, 5);
      expect(high).toBeGreaterThan(low);
      for (const value of values) expect(value >= low && value <= high).toBe(true);
    }),
  ));
