import { millisecondsInDay as dayMs, millisecondsInHour as hourMs } from "date-fns/constants";
import { describe, expect, test } from "vitest";
import { forecastError } from "../../physics/drying/forecastError.ts";
import { makeFormat } from "../../ui/base/format/units.ts";
import { dayOf, midnight, dayPointAt, spellsOver } from "./dayAir.ts";
import { dayWords, errorWords, spellWords } from "../../ui/air/rooms/day/dayWords.ts";

const metric = makeFormat("metric", "en-GB");
const today = midnight(new Date(2026, 2, 4, 12).getTime());
const now = today + 15 * hourMs;
const hourly = (days: number, rhOf: (atMs: number) => number = () => 0.5) =>
  Array.from({ length: days * 24 + 16 }, (_, i) => {
    const atMs = today - days * dayMs + i * hourMs;
    return { atMs, tempC: 15 + 5 * Math.sin((atMs / dayMs) * 2 * Math.PI), rh: rhOf(atMs), filmWM2K: 4 };
  });

describe("a day of a room", () => {
  test("that is today goes on for 24 hours, foretold from now; a past one ends at its midnight, foretelling nothing", () => {
    const day = dayOf(hourly(3), { from: today, now });
    expect(day.to).toBe(now + dayMs);
    expect(day.ahead?.basis).toBe("repeat-yesterday");
    const past = dayOf(hourly(3), { from: midnight(today, -1), now });
    expect(past).toMatchObject({ to: today, ahead: null });
    expect(past.view.knownShare).toBe(1);
  });

  test("nothing is foretold from a reading over a day old, nor from none", () => {
    const old = hourly(3).filter(({ atMs }) => atMs < now - 30 * hourMs);
    expect(dayOf(old, { from: today, now }).ahead).toBeNull();
    expect(dayOf([], { from: today, now })).toMatchObject({ ahead: null, lastAt: null });
  });

  test("a moment is looked up where it was read, else where it is foretold, and is nothing in a hole", () => {
    const holed = hourly(3).filter(({ atMs }) => atMs < today + 2 * hourMs || atMs > today + 8 * hourMs);
    const day = dayOf(holed, { from: today, now });
    expect(dayPointAt(day, today + hourMs)).toMatchObject({ isForetold: false });
    expect(dayPointAt(day, today + 5 * hourMs)).toBeNull();
    expect(dayPointAt(day, now + 6 * hourMs)).toMatchObject({ isForetold: true });
  });
});

describe("damp hours", () => {
  const damp = (atMs: number): number =>
    atMs >= today - 2 * hourMs && atMs <= today + 5 * hourMs ? 0.86 : 0.5;

  test("are told with when they began, ended, and the worst of them", () => {
    const [spell, ...others] = spellsOver(dayOf(hourly(3, damp), { from: today, now }).view.points, 0.7);
    expect(others).toEqual([]);
    expect(spell?.from).toBe(today);
    expect(spell?.most).toBeCloseTo(0.86, 2);
    expect(spell && spellWords(spell, metric)).toMatch(
      /^Damp: over 70% from 00:00 to 05:\d0, at most 86%\.$/,
    );
  });

  test("a hole ends them, as nobody knows what was in it", () => {
    const holed = hourly(3, damp).filter(({ atMs }) => atMs < today + hourMs || atMs > today + 3 * hourMs);
    expect(spellsOver(dayOf(holed, { from: today, now }).view.points, 0.7)).toHaveLength(2);
  });

  test("there are none in dry air or without readings", () => {
    expect(spellsOver(dayOf(hourly(3), { from: today, now }).view.points, 0.7)).toEqual([]);
    expect(spellsOver([null, null], 0.7)).toEqual([]);
  });
});

describe("in words", () => {
  test("a day has its lowest and highest of each, and what it takes up on average", () => {
    const { view } = dayOf(hourly(3), { from: today, now });
    expect(dayWords(view, 15, metric)).toMatch(
      /^1\d(\.\d)? to 20\u00a0°C, 50 to 50%, dew point .* takes up .*, \d(\.\d)?\u00a0g\/m³ on average\.$/,
    );
    expect(dayWords(dayOf([], { from: today, now }).view, 15, metric)).toBeNull();
  });

  test("a forecast is told with its error over past days, or that there are too few of them", () => {
    const long = forecastError({ readings: hourly(12), nowMs: now });
    expect(errorWords(long, "repeat-yesterday", metric)).toMatch(
      /off by a median of 0\u00a0°C, 0% humidity.* \(\d+ days\)/,
    );
    const short = forecastError({ readings: hourly(2), nowMs: now });
    expect(errorWords(short, "repeat-yesterday", metric)).toMatch(
      /Its error is not known yet: \d days? of 3 compared/,
    );
    expect(errorWords(long, "hold-last", metric)).toMatch(/the last reading is held/);
  });
});
