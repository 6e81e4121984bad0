import { expect, test } from "vitest";
import { ago, clockTime, dayTime, duration, pickLocale, soonTime } from "./time.ts";

const zone = "Europe/Vienna";
const at = (text: string): number => Date.parse(text);
const now = at("2026-03-04T17:40:00Z");

test("the clock is told as the locale tells it", () => {
  expect(clockTime(now, "en-GB", zone)).toBe("18:40");
  expect(clockTime(now, "en-US", zone)).toMatch(/^0?6:40.PM$/);
});

test.each([
  ["2026-03-04T22:50:00Z", "today 23:50"],
  ["2026-03-04T23:10:00Z", "tomorrow 00:10"],
  ["2026-03-03T08:00:00Z", "yesterday 09:00"],
  ["2026-03-07T08:00:00Z", "Saturday 09:00"],
  ["2026-03-20T08:00:00Z", "20 March 09:00"],
  ["2025-12-24T08:00:00Z", "24 December 2025 09:00"],
])("%s is %s, by the calendar of the zone and not by hours", (moment, text) => {
  expect(dayTime(at(moment), now, "en-GB", zone)).toBe(text);
});

test("a time of today needs no day", () => {
  expect(soonTime(at("2026-03-04T20:00:00Z"), now, "en-GB", zone)).toBe("21:00");
  expect(soonTime(at("2026-03-05T05:10:00Z"), now, "en-GB", zone)).toBe("tomorrow 06:10");
});

test("days are counted right across the change to summer time", () => {
  const saturday = at("2026-03-28T22:30:00Z");
  expect(dayTime(at("2026-03-29T21:30:00Z"), saturday, "en-GB", zone)).toBe("tomorrow 23:30");
});

test.each([
  [20_000, "20 s"],
  [12 * 60_000, "12 min"],
  [200 * 60_000, "3 h 20 min"],
  [2 * 3_600_000, "2 h"],
  [59.7 * 60_000, "1 h"],
  [23.999 * 3_600_000, "1 day"],
  [52 * 3_600_000, "2 days 4 h"],
  [24 * 3_600_000, "1 day"],
  [30 * 86_400_000 + 3_600_000, "30 days"],
])("%d ms is %s", (ms, text) => {
  expect(duration(ms)).toBe(text);
});

test("what was and what comes are told apart", () => {
  expect(ago(now - 12 * 60_000, now)).toBe("12 min ago");
  expect(ago(now + 90 * 60_000, now)).toBe("in 1 h 30 min");
  expect(ago(now - 10_000, now)).toBe("just now");
});

test("a reader of another language gets British dates, an American their own", () => {
  expect(pickLocale(["de-AT", "de"])).toBe("en-GB");
  expect(pickLocale(["de-AT", "en-US"])).toBe("en-US");
  expect(pickLocale([])).toBe("en-GB");
});
