import * as fc from "fast-check";
import { expect, test } from "vitest";
import { fixedOffsetMs, zoneClock } from "./zoneTime.ts";

const clockOf = (zone: string) => {
  const clock = zoneClock(zone);
  if (clock === null) throw new Error(`no zone ${zone}`);
  return clock;
};
const shown = (zone: string, local: string): readonly string[] =>
  clockOf(zone)(Date.parse(`${local}Z`)).map((atMs) => new Date(atMs).toISOString().slice(0, 16));

test("clocks of places show the moments their laws say", () => {
  expect(shown("Europe/Berlin", "2025-07-01T12:00")).toEqual(["2025-07-01T10:00"]);
  expect(shown("America/New_York", "2025-01-15T12:00")).toEqual(["2025-01-15T17:00"]);
  expect(shown("Asia/Kathmandu", "2025-01-15T12:00")).toEqual(["2025-01-15T06:15"]);
  expect(shown("Australia/Lord_Howe", "2025-01-15T12:00")).toEqual(["2025-01-15T01:00"]);
  expect(shown("UTC", "2025-01-15T12:00")).toEqual(["2025-01-15T12:00"]);
  expect(shown("-03:30", "2025-01-15T12:00")).toEqual(["2025-01-15T15:30"]);
});

test("an hour that comes twice has two moments, one that is left out has none", () => {
  expect(shown("Europe/Berlin", "2025-10-26T02:30")).toEqual(["2025-10-26T00:30", "2025-10-26T01:30"]);
  expect(shown("Europe/Berlin", "2025-03-30T02:30")).toEqual([]);
  expect(shown("Europe/Berlin", "2025-03-30T03:00")).toEqual(["2025-03-30T01:00"]);
  expect(shown("Europe/Berlin", "2025-03-30T01:59")).toEqual(["2025-03-30T00:59"]);
  // Lord Howe moves by half an hour.
  expect(shown("Australia/Lord_Howe", "2025-04-06T01:45")).toHaveLength(2);
  expect(shown("Australia/Lord_Howe", "2025-10-05T02:15")).toEqual([]);
});

test("offsets are read in the ways they are written, and nothing else is", () => {
  expect(["Z", "utc", "+0", "-00:00"].map(fixedOffsetMs)).toEqual([0, 0, 0, -0]);
  expect(
    ["+2", "+02", "+0200", "+02:00", "GMT+2", "UTC +02:00"].map(
      (one) => (fixedOffsetMs(one) ?? 0) / 3_600_000,
    ),
  ).toEqual(Array.from({ length: 6 }, () => 2));
  expect(["", "+15:00", "+02:75", "Berlin", "2"].map(fixedOffsetMs)).toEqual(
    Array.from({ length: 5 }, () => null),
  );
  expect(zoneClock("Nowhere/Land")).toBeNull();
});

test("what a zone's clock shows at any moment leads back to that moment", () => {
  const zones = ["Europe/Lisbon", "America/Santiago", "Africa/Casablanca", "Asia/Kolkata", "Pacific/Apia"];
  const formats = new Map(
    zones.map((timeZone) => [
      timeZone,
      new Intl.DateTimeFormat("sv-SE", { timeZone, dateStyle: "short", timeStyle: "medium" }),
    ]),
  );
  fc.assert(
    fc.property(
      fc.constantFrom(...zones),
      fc.integer({ min: 1_262_304_000, max: 1_893_456_000 }),
      (zone, atS) => {
        const local = (formats.get(zone)?.format(atS * 1000) ?? "").replace(" ", "T");
        expect(clockOf(zone)(Date.parse(`${local}Z`))).toContain(atS * 1000);
      },
    ),
    { numRuns: 200 },
  );
});
