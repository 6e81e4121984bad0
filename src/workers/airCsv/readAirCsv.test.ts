import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { ranges } from "../../logbook/entries/ranges.ts";
import type { AirCsvPlan } from "./airCsvPlan.ts";
import { airCsvLimits } from "./airCsvRow.ts";
import type { AirCsvOptions, AirCsvResult } from "./readAirCsv.ts";
import { readAirCsv } from "./readAirCsv.ts";

const plan: AirCsvPlan = {
  encoding: "utf-8",
  delimiter: ",",
  decimal: ".",
  firstLine: 2,
  names: ["time", "temp", "rh"],
  time: { kind: "text", columns: [0], order: "dmy", zone: "UTC" },
  temp: { column: 1, unit: "C" },
  rh: { column: 2, unit: "percent" },
  dew: null,
  pressure: null,
};
const nowMs = Date.UTC(2026, 5, 1);
const read = (
  rows: readonly string[],
  change: Partial<AirCsvPlan> = {},
  options: Partial<AirCsvOptions> = {},
): Promise<AirCsvResult> =>
  readAirCsv(
    new Blob([["time,temp,rh", ...rows].join("\n")]),
    { ...plan, ...change },
    { onBad: "skip", nowMs, ...options },
  );
async function good(...from: Parameters<typeof read>) {
  const result = await read(...from);
  if (!result.ok) throw new Error(JSON.stringify(result));
  return result;
}
const timesOf = (result: AirCsvResult): readonly string[] =>
  result.ok ? Array.from(result.air.atS, (atS) => new Date(atS * 1000).toISOString().slice(11, 16)) : [];

describe("a bad line", () => {
  const cases = [
    ["31/02/2025 08:00,22,50", { field: "time", why: "no-such-date", found: "31/02/2025 08:00" }],
    ["soon,22,50", { field: "time", why: "not-a-time", found: "soon" }],
    [",22,50", { field: "time", why: "missing", found: "" }],
    ["01/06/2025 25:00,22,50", { field: "time", why: "not-a-time" }],
    ["01/01/1970 00:00,22,50", { field: "time", why: "out-of-range" }],
    ["01/07/2026 00:00,22,50", { field: "time", why: "in-the-future" }],
    ["01/06/2025 08:00,warm,50", { field: "temp", why: "not-a-number", found: "warm" }],
    ["01/06/2025 08:00,-127,50", { field: "temp", why: "out-of-range", found: "-127", low: -30, high: 60 }],
    ["01/06/2025 08:00,22,", { field: "rh", why: "missing" }],
    ["01/06/2025 08:00,22", { field: "rh", why: "missing" }],
    ["01/06/2025 08:00,22,120", { field: "rh", why: "out-of-range", low: 0, high: 1 }],
    ["01/06/2025 08:00,22,-1", { field: "rh", why: "out-of-range" }],
  ] as const;

  test.each(cases)("%s is named by its number, with what stands there", async (row, bad) => {
    const result = await good(["01/06/2025 07:00,22,50", "", row, "01/06/2025 09:00,22,50"]);
    expect(result.air.count).toBe(2);
    expect(result.lines).toBe(3);
    expect(result.bad.count).toBe(1);
    expect(result.bad.first[0]).toMatchObject({ line: 4, ...bad });
  });

  test("refuses the whole file if that is asked, and all of them are told", async () => {
    const rows = ["01/06/2025 07:00,22,50", "01/06/2025 08:00,x,50", "01/06/2025 09:00,22,y"];
    const result = await read(rows, {}, { onBad: "refuse" });
    expect(result).toMatchObject({
      ok: false,
      why: "bad-lines",
      bad: { count: 2, first: [{ line: 3 }, { line: 4 }] },
    });
  });

  test("is counted on past the thousand that are told", async () => {
    const rows = ["01/06/2025 07:00,22,50", ...Array.from({ length: 1500 }, () => "x,y,z")];
    const { bad } = await good(rows);
    expect([bad.count, bad.first.length]).toEqual([1500, 1000]);
  });

  test("with a stray quote spoils no other line", async () => {
    const result = await good([
      '01/06/2025 07:00,"22,50',
      "01/06/2025 08:00,22,50",
      '01/06/2025 09:00,22,"50"',
    ]);
    expect(timesOf(result)).toEqual(["08:00", "09:00"]);
    expect(result.bad.first).toMatchObject([{ line: 2 }]);
  });

  test("behind a quoted line break still has its own number", async () => {
    const { bad } = await good(
      ['01/06/2025 07:00,22,50,"door\nopen"', "01/06/2025 08:00,x,50"],
      {},
      { pieceBytes: 40 },
    );
    expect(bad.first).toMatchObject([{ line: 4 }]);
  });

  test("of a humidity a little over full counts as full, as wet sensors say so", async () => {
    const { air } = await good(["01/06/2025 07:00,22,102.5"]);
    expect([...air.rh]).toEqual([1]);
  });

  test("has the same limits of temperature as the log", () => {
    expect(airCsvLimits.airC).toEqual(ranges.airC);
    expect(airCsvLimits.rh).toEqual(ranges.rh);
  });

  test("of a dew point above the air is told", async () => {
    const result = await read(["01/06/2025 07:00,22,23"], { rh: null, dew: { column: 2, unit: "C" } });
    expect(result).toMatchObject({
      ok: false,
      why: "no-readings",
      bad: { first: [{ field: "dew", why: "above-air" }] },
    });
  });
});

describe("the hours a clock is changed", () => {
  const berlin = { time: { kind: "text", columns: [0], order: "dmy", zone: "Europe/Berlin" } } as const;
  const row = (time: string): string => `${time},22,50`;

  test("the hour that comes twice is told apart by the lines before it", async () => {
    const clock = ["01:30", "02:00", "02:30", "02:00", "02:30", "03:00"].map((time) =>
      row(`26/10/2025 ${time}`),
    );
    expect(timesOf(await good(clock, berlin))).toEqual([
      "23:30",
      "00:00",
      "00:30",
      "01:00",
      "01:30",
      "02:00",
    ]);
    const newestFirst = await good(clock.toReversed(), berlin);
    expect(timesOf(newestFirst)).toEqual(["23:30", "00:00", "00:30", "01:00", "01:30", "02:00"]);
    expect(newestFirst.merged).toEqual({ inFile: 0, differing: 0, stored: 0, wasInOrder: true });
  });

  test("a time in the hour that is left out is a bad line", async () => {
    const result = await good(
      [row("30/03/2025 01:30"), row("30/03/2025 02:30"), row("30/03/2025 03:30")],
      berlin,
    );
    expect(timesOf(result)).toEqual(["00:30", "01:30"]);
    expect(result.bad.first).toMatchObject([{ line: 3, why: "hour-left-out" }]);
  });

  test("an offset in the text goes before the zone", async () => {
    expect(timesOf(await good(["2025-10-26T02:30:00+01:00,22,50"], berlin))).toEqual(["01:30"]);
  });

  test("a zone there is not is said, not guessed", async () => {
    const nowhere = { time: { ...berlin.time, zone: "Europe/Atlantis" } };
    expect(await read([row("30/03/2025 01:30")], nowhere)).toEqual({ ok: false, why: "unknown-zone" });
  });
});

describe("one moment told twice", () => {
  test("is kept once, the earlier line of the file", async () => {
    const rows = [
      "01/06/2025 07:00,22,50",
      "01/06/2025 08:00,23,50",
      "01/06/2025 07:00,22,50",
      "01/06/2025 08:00,28,50",
    ];
    const { air, merged } = await good(rows);
    expect([...air.airC]).toEqual([22, 23]);
    expect(merged).toEqual({ inFile: 2, differing: 1, stored: 0, wasInOrder: false });
  });

  test("is left out where it is stored already, also if that leaves nothing", async () => {
    const atS = Date.UTC(2025, 5, 1, 7) / 1000;
    const rows = ["01/06/2025 07:00,22,50", "01/06/2025 08:00,23,50"];
    const some = await good(rows, {}, { storedS: Float64Array.of(atS) });
    expect([some.air.count, some.merged.stored]).toEqual([1, 1]);
    const none = await good(rows, {}, { storedS: Float64Array.of(atS, atS + 3600) });
    expect([none.air.count, none.merged.stored]).toEqual([0, 2]);
  });
});

test("pressures are kept where they are told", async () => {
  const rows = ["01/06/2025 07:00,22,50,1013.2", "01/06/2025 08:00,23,50,"];
  const { air } = await good(rows, { pressure: { column: 3, unit: "hPa" } });
  expect([...(air.pressurePa ?? [])]).toEqual([101_320, 0]);
  expect([...(air.hasPressure ?? [])]).toEqual([1, 0]);
  expect((await good(rows)).air.pressurePa).toBeNull();
});

test("a plan with gaps is refused with what it lacks", async () => {
  const result = await read([], { time: null, temp: null, rh: null });
  expect(result).toEqual({ ok: false, why: "plan-gaps", gaps: ["time", "temp", "humidity"] });
});

test("an import is told how far it is, and stops when asked", async () => {
  const rows = Array.from(
    { length: 500 },
    (_, i) => `0${1 + (i % 9)}/06/2025 0${i % 9}:${10 + (i % 50)},22,50`,
  );
  const stop = new AbortController();
  const told: number[] = [];
  const onProgress = ({ bytesRead, bytes }: { bytesRead: number; bytes: number }): void => {
    told.push(bytesRead / bytes);
    if (told.length === 3) stop.abort();
  };
  const result = await read(rows, {}, { onProgress, signal: stop.signal, pieceBytes: 1000 });
  expect(result).toEqual({ ok: false, why: "aborted" });
  expect(told).toHaveLength(3);
  expect(told).toEqual(told.toSorted((a, b) => a - b));
});

test("where a file is cut into pieces, and the order of its lines, change nothing", () =>
  fc.assert(
    fc.asyncProperty(
      fc.uniqueArray(fc.integer({ min: 0, max: 100_000 }), { minLength: 1, maxLength: 30 }),
      fc.integer({ min: 1, max: 200 }),
      fc.constantFrom("\n", "\r\n", "\r"),
      async (minutes, pieceBytes, end) => {
        const rows = minutes.map((minute) => {
          const iso = new Date(Date.UTC(2025, 0, 1, 0, minute)).toISOString();
          return `"${iso.slice(0, 16)}","${(minute % 400) / 10}",${minute % 101},"a ""note"", with °${end}and more"`;
        });
        const of = (lines: readonly string[], pieces: number): Promise<AirCsvResult> =>
          readAirCsv(new Blob([["time,temp,rh,note", ...lines, ""].join(end)]), plan, {
            onBad: "refuse",
            nowMs,
            pieceBytes: pieces,
          });
        const whole = await of(rows, 1e6);
        expect(whole).toMatchObject({ ok: true, lines: minutes.length, air: { count: minutes.length } });
        expect(await of(rows, pieceBytes)).toEqual(whole);
        const turned = await of(rows.toReversed(), pieceBytes);
        expect(turned.ok && whole.ok && turned.air).toEqual(whole.ok && whole.air);
      },
    ),
    { numRuns: 100 },
  ));
