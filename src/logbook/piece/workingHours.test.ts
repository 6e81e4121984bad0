import fc from "fast-check";
import { expect, test } from "vitest";
import { workingHours } from "./workingHours.ts";

const zone = "Europe/Rome";
/** In April Rome is two hours ahead of Greenwich (IANA time zone database: CEST). */
const at = (day: number, hour: number, minute = 0): number => Date.UTC(2026, 3, day, hour - 2, minute);

test.each([
  ["nine to noon of one day", at(6, 9), at(6, 12), 3],
  [
    "six in the evening to eight the next morning: an hour on either side of the night",
    at(6, 18),
    at(7, 8),
    2,
  ],
  ["the whole night", at(6, 19), at(7, 7), 0],
  ["from before the day to after it", at(6, 3), at(6, 23), 12],
  ["three days", at(6, 12), at(9, 12), 36],
  ["half hours", at(6, 18, 30), at(7, 7, 30), 1],
])("%s", (_, from, to, hours) => expect(workingHours({ from, to, zone })).toBeCloseTo(hours, 9));

test("the wall clock of the zone counts, not Greenwich", () => {
  const from = Date.UTC(2026, 3, 6, 0);
  const to = Date.UTC(2026, 3, 6, 6);
  expect(workingHours({ from, to, zone: "Asia/Kolkata" })).toBeCloseTo(4.5, 9);
  expect(workingHours({ from, to, zone: "Europe/London" })).toBe(0);
});

test("without a zone, or with one nobody knows, every hour counts", () => {
  for (const zoneName of [undefined, "Nowhere/Here"])
    expect(workingHours({ from: at(6, 18), to: at(7, 8), zone: zoneName })).toBeCloseTo(14, 9);
});

test("never more than the hours that passed, never below nought, and two spans add up", () => {
  const time = fc.integer({ min: at(1, 0), max: at(29, 0) });
  fc.assert(
    fc.property(time, time, time, (...times) => {
      const [a, b, c] = times.toSorted((x, y) => x - y) as [number, number, number];
      const hours = (from: number, to: number): number => workingHours({ from, to, zone });
      expect(hours(a, c)).toBeLessThanOrEqual((c - a) / 3_600_000 + 1e-9);
      expect(hours(c, a)).toBe(0);
      expect(hours(a, b) + hours(b, c)).toBeCloseTo(hours(a, c), 6);
    }),
  );
});
