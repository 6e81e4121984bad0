import fc from "fast-check";
import { expect, test } from "vitest";
import { backHour, backQuarter, lastTimeClockShowed } from "./clockSteps.ts";

const minute = 60_000;
const moments = fc.integer({ min: Date.UTC(2024, 0, 1), max: Date.UTC(2030, 0, 1) });

test("from two past two, a quarter back is two o'clock and then a quarter to", () => {
  const at = Date.UTC(2026, 2, 4, 14, 2);
  expect(backQuarter(at)).toBe(Date.UTC(2026, 2, 4, 14, 0));
  expect(backQuarter(backQuarter(at))).toBe(Date.UTC(2026, 2, 4, 13, 45));
});

test("a quarter back is always earlier, by a quarter of an hour at most, and on a quarter", () =>
  fc.assert(
    fc.property(moments, (at) => {
      const back = backQuarter(at);
      expect(at - back).toBeGreaterThan(0);
      expect(at - back).toBeLessThanOrEqual(15 * minute);
      expect(back % (15 * minute)).toBe(0);
    }),
  ));

test("an hour back is an hour", () => {
  expect(backHour(Date.UTC(2026, 2, 4, 6))).toBe(Date.UTC(2026, 2, 4, 5));
});

test("a clock time not yet reached today was yesterday's", () => {
  const now = new Date(2026, 2, 4, 8, 30).getTime();
  expect(lastTimeClockShowed("06:00", now)).toBe(new Date(2026, 2, 4, 6, 0).getTime());
  expect(lastTimeClockShowed("08:30", now)).toBe(now);
  expect(lastTimeClockShowed("22:15", now)).toBe(new Date(2026, 2, 3, 22, 15).getTime());
});

test.each(["", "6", "24:00", "12:60", "noon", "-1:00"])("%j is no clock time", (text) => {
  expect(lastTimeClockShowed(text, 0)).toBeNull();
});

test("no clock time is ever put in the future, or more than a day back", () =>
  fc.assert(
    fc.property(moments, fc.nat({ max: 23 }), fc.nat({ max: 59 }), (now, hour, min) => {
      const text = `${String(hour).padStart(2, "0")}:${String(min).padStart(2, "0")}`;
      const at = lastTimeClockShowed(text, now) ?? Number.NaN;
      expect(at).toBeLessThanOrEqual(now);
      // A day may be an hour longer where clocks are put back.
      expect(now - at).toBeLessThanOrEqual(25 * 60 * minute);
    }),
  ));
