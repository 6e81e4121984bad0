import { describe, expect, test } from "vitest";
import { readKilnCsv } from "./kilnCsv.ts";

const startMs = Date.parse("2026-03-04T08:00:00Z");
const of = { zone: "UTC", startMs, endMs: startMs + 6 * 3_600_000, unit: "C" } as const;
const s = (iso: string): number => Date.parse(iso) / 1000;

describe("a kiln logger's file", () => {
  test("dates, semicolons and decimal commas; the set value is not the temperature; outside the run is left out", () => {
    const text = [
      "Zeit;Sollwert °C;Temperatur °C",
      "04.03.2026 07:59:00;20;19,5",
      "04.03.2026 08:01:00;22,5;21,5",
      "04.03.2026 08:01:05;22,6;21,7",
      "04.03.2026 08:02:00;25;error",
      "04.03.2026 08:03:00;27;25,25",
      "04.03.2026 15:00:00;20;400",
    ].join("\r\n");
    expect(readKilnCsv(text, of)).toEqual({
      ok: true,
      column: "Temperatur °C",
      unit: "C",
      isUnitTold: true,
      clock: "date",
      atS: [s("2026-03-04T08:01:00Z"), s("2026-03-04T08:03:00Z")],
      kilnC: [21.5, 25.3],
      outside: 2,
      unread: 1,
    });
  });

  test("what the kiln was set to is no reading, even where nothing else is a number", () => {
    const text = "Time,Set C,Temp C\n08:01,20,err\n08:05,50,err\n08:09,80,err\n";
    expect(readKilnCsv(text, of)).toEqual({ ok: false, why: "no-temperature" });
  });

  test("of 3/4 and 4/3 the day of the run is meant; °F in the head is told as °C", () => {
    const text = "time,temp (F)\n03/04/2026 08:10,212\n03/04/2026 08:20,392\n";
    expect(readKilnCsv(text, of)).toMatchObject({ unit: "F", kilnC: [100, 200], outside: 0 });
  });

  test("minutes without a date count from the start; an unknown unit is taken as asked", () => {
    const text = "elapsed min,pv,sp\n0,20,20\n5,70,80\n10,118,140\n";
    const read = readKilnCsv(text, { ...of, unit: "F" });
    expect(read).toMatchObject({ clock: "elapsed", column: "pv", isUnitTold: false, unit: "F" });
    expect(read.ok && read.atS).toEqual([0, 300, 600].map((add) => startMs / 1000 + add));
    expect(read.ok && read.kilnC[1]).toBeCloseTo(21.1, 1);
  });

  test("a clock without a date is the day of the run, and goes over midnight", () => {
    const late = Date.parse("2026-03-04T22:30:00Z");
    const text = "time,temp\n22:40,100\n23:50,300\n00:30,420\n";
    const read = readKilnCsv(text, { ...of, startMs: late, endMs: late + 6 * 3_600_000 });
    expect(read).toMatchObject({ clock: "time-of-day", kilnC: [100, 300, 420] });
    expect(read.ok && read.atS[2]).toBe(s("2026-03-05T00:30:00Z"));
  });

  test("what can't be read says why", () => {
    expect(readKilnCsv("", of)).toEqual({ ok: false, why: "no-rows" });
    expect(readKilnCsv("a,b\n1,2\n3,1\n", of)).toEqual({ ok: false, why: "no-time" });
    expect(readKilnCsv("time,note\n2026-03-04 08:10,warm\n2026-03-04 08:20,hot\n", of)).toEqual({
      ok: false,
      why: "no-temperature",
    });
    expect(readKilnCsv("time,temp\n2025-03-04 08:10,20\n2025-03-04 08:20,30\n", of)).toEqual({
      ok: false,
      why: "none-in-run",
    });
  });
});
