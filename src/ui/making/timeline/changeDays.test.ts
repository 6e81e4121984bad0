import { afterEach, describe, expect, test } from "vitest";
import { midnight } from "../../../logbook/air/dayAir.ts";
import { fileDays } from "../../air/rooms/csv/fileSeries.ts";
import { plotTicks } from "../../air/rooms/plotTicks.ts";
import { timeTicks } from "../../base/charts/timeTicks.ts";
import { clockTime, dayTime } from "../../base/format/time.ts";
import { localText } from "../../base/parts/localTime.ts";
import { lastTimeClockShowed } from "../dip/clockSteps.ts";
import { workingHours } from "../../../logbook/piece/workingHours.ts";
import { bucketSpans } from "./bucketSpans.ts";
import { clockOrDay } from "./timelineWords.ts";

const utc = (text: string): number => Date.parse(`${text}Z`);
const iso = (at: number): string => new Date(at).toISOString().slice(0, 16);
const machineZone = process.env["TZ"];

afterEach(() => {
  if (machineZone === undefined) delete process.env["TZ"];
  else process.env["TZ"] = machineZone;
});

/**
 * The days the clocks change, with their midnights in UTC. Europe: directive 2000/84/EC, the last Sundays of March and
 * October at 01:00 UTC. United States: Energy Policy Act of 2005, section 110, the second Sunday of March and the
 * first of November at two in the morning.
 */
const days = [
  { zone: "Europe/Berlin", day: "2026-03-29", from: "2026-03-28T23:00", to: "2026-03-29T22:00", hours: 23 },
  { zone: "Europe/Berlin", day: "2026-10-25", from: "2026-10-24T22:00", to: "2026-10-25T23:00", hours: 25 },
  {
    zone: "America/New_York",
    day: "2026-03-08",
    from: "2026-03-08T05:00",
    to: "2026-03-09T04:00",
    hours: 23,
  },
  {
    zone: "America/New_York",
    day: "2026-11-01",
    from: "2026-11-01T04:00",
    to: "2026-11-02T05:00",
    hours: 25,
  },
] as const;

describe.each(days)("$day in $zone", ({ zone, day, from, to, hours }) => {
  const start = utc(from);
  const end = utc(to);
  const hourMs = 3_600_000;
  const eightAt = end - 16 * hourMs;
  const here = (): void => {
    process.env["TZ"] = zone;
  };

  test("is as long as the law says, by the device's clock", () => {
    here();
    expect(end - start).toBe(hours * hourMs);
    for (const at of [start, start + 6 * hourMs, end - 1]) {
      expect(iso(midnight(at))).toBe(from);
      expect(iso(midnight(at, 1))).toBe(to);
      expect(localText(at).slice(0, 10)).toBe(day);
    }
    expect(localText(eightAt)).toBe(`${day}T08:00`);
    expect(localText(end)).not.toContain(day);
  });

  test("is told as one day, on the device and for a named zone", () => {
    const tells = (named?: string): void => {
      expect(dayTime(end - 60_000, start, "en-GB", named)).toBe("today 23:59");
      expect(dayTime(end, start, "en-GB", named)).toBe("tomorrow 00:00");
      expect(dayTime(start - 60_000, end - 60_000, "en-GB", named)).toBe("yesterday 23:59");
      expect(dayTime(start, end, "en-GB", named)).toBe("yesterday 00:00");
    };
    process.env["TZ"] = "Asia/Tokyo";
    expect(clockTime(eightAt, "en-GB", zone)).toBe("08:00");
    tells(zone);
    here();
    expect(clockTime(eightAt, "en-GB")).toBe("08:00");
    expect(clockOrDay(end - 60_000, start, "en-GB")).toBe("23:59");
    expect(clockOrDay(end, start, "en-GB")).toBe("Mon 00:00");
    tells();
  });

  test("keeps eight at eight: hours at the bucket and the last time the clock showed it", () => {
    here();
    const morning = [{ fromMin: 480, toMin: 600 }];
    const spans = bucketSpans(morning, { from: start, to: end });
    expect(spans).toEqual([{ from: eightAt, to: eightAt + 2 * hourMs }]);
    expect(lastTimeClockShowed("08:00", end - 1)).toBe(eightAt);
    expect(lastTimeClockShowed("08:00", eightAt - 1)).toBe(start - 16 * hourMs);
    expect(lastTimeClockShowed("00:00", eightAt)).toBe(start);
  });

  test("is a day of a plot and of a table, whose marks stand at its midnights", () => {
    here();
    const marks = plotTicks(start - 48 * hourMs, end + 72 * hourMs, { most: 9, locale: "en-GB" });
    expect(marks.map(({ at }) => at)).toEqual(expect.arrayContaining([start, end]));
    expect(marks.every(({ at }) => localText(at).endsWith("T00:00"))).toBe(true);
    expect(timeTicks(start + 1, end, 30)[0]).toBe(start + hourMs);
    const atS = Float64Array.from({ length: 49 }, (_, i) => (start - 12 * hourMs + i * hourMs) / 1000);
    const column = new Float64Array(49);
    const counts = fileDays({
      count: 49,
      atS,
      airC: column,
      rh: column,
      pressurePa: null,
      hasPressure: null,
    }).map(({ count }) => count);
    expect(counts).toEqual([12, hours, 37 - hours]);
  });

  test("has twelve working hours on the wall clock, an hour either way where the clocks change", () => {
    const worked = workingHours({ from: start, to: end, zone });
    expect(Math.abs(worked - 12)).toBeLessThanOrEqual(1);
    expect(workingHours({ from: eightAt, to: eightAt + 11 * hourMs, zone })).toBe(11);
  });
});

test("a device that comes into another zone is shown that zone's clock", () => {
  const noon = utc("2026-07-01T12:00");
  process.env["TZ"] = "Europe/Berlin";
  expect(clockTime(noon, "en-GB")).toBe("14:00");
  process.env["TZ"] = "America/New_York";
  expect(clockTime(noon, "en-GB")).toBe("08:00");
  process.env["TZ"] = "America/Phoenix";
  expect(clockTime(noon, "en-GB")).toBe("05:00");
});
