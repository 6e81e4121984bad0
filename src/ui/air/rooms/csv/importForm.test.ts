import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { AirCsvPlan } from "../../../../workers/airCsv/airCsvPlan.ts";
import type { BadLine } from "../../../../workers/airCsv/airCsvRow.ts";
import type { PackedAir } from "../../../../workers/airCsv/packAir.ts";
import { makeFormat } from "../../../base/format/units.ts";
import { badLineWords } from "./badLineWords.ts";
import { fileDays, thinned } from "./fileSeries.ts";
import { mergedWords, spanWords } from "./importWords.ts";
import { columnOptions, planFacts, withTimeColumn, withTimeKind, zoneOptions } from "./planChoices.ts";

const metric = makeFormat("metric", "en-GB");
const us = makeFormat("us", "en-US");
const now = Date.UTC(2026, 2, 4, 12);
const plan: AirCsvPlan = {
  encoding: "utf-8",
  delimiter: ";",
  decimal: ",",
  firstLine: 2,
  names: ["Zeit", "", "RH"],
  time: { kind: "text", columns: [0], order: "dmy", zone: "Europe/Berlin" },
  temp: { column: 1, unit: "F" },
  rh: { column: 2, unit: "percent" },
  dew: null,
  pressure: null,
};
const bad = (changes: Partial<BadLine>): BadLine => ({
  line: 4003,
  field: "temp",
  why: "not-a-number",
  found: "---",
  low: null,
  high: null,
  ...changes,
});

describe("a bad line", () => {
  test("is told by its number in the file, with what stands there and what was wanted", () => {
    expect(badLineWords(bad({}), metric, now)).toBe(
      "Line 4003, temperature: found “---”, expected a number.",
    );
    expect(badLineWords(bad({ field: "rh", why: "missing", found: "" }), metric, now)).toBe(
      "Line 4003, humidity: found nothing, expected a number.",
    );
  });

  test("tells a range in the person's own units", () => {
    const far = bad({ why: "out-of-range", found: "888", low: -30, high: 60 });
    expect(badLineWords(far, metric, now)).toMatch(/expected -30\u00a0°C to 60\u00a0°C\.$/);
    expect(badLineWords(far, us, now)).toMatch(/expected -22\u00a0°F to 140\u00a0°F\.$/);
    const old = bad({ field: "time", why: "out-of-range", low: Date.UTC(2000, 0) / 1000, high: null });
    expect(badLineWords(old, metric, now)).toMatch(/1 January 2000 .* or more\.$/);
  });
});

describe("how a file is read", () => {
  test("is said in a few plain sentences, columns without a name by their number", () => {
    expect(planFacts(plan)).toEqual([
      "Time: “Zeit”, day, month, year, clock of Europe/Berlin",
      "Temperature: “column 2”, in °F",
      "Humidity: “RH”, in % (0 to 100)",
      "Columns separated by a semicolon, decimal comma",
    ]);
  });

  test("columns are offered by name with what stands in them", () => {
    expect(columnOptions(plan, ["26.10.2026", "70,1", "48", "x"]).map(({ label }) => label)).toEqual([
      "Zeit (26.10.2026)",
      "Column 2 (70,1)",
      "RH (48)",
      "Column 4 (x)",
    ]);
  });

  test("the device's own zone is offered first, the file's next, and none twice", () => {
    const values = zoneOptions("Europe/Berlin", "+01:00").map(({ value }) => value);
    expect(values.slice(0, 2)).toEqual(["Europe/Berlin", "+01:00"]);
    expect(new Set(values).size).toBe(values.length);
    expect(values).toContain("America/New_York");
  });

  test("seconds since 1970 and a date take one another's column, and columns of a date come and go from the end", () => {
    expect(withTimeKind(plan.time, "s", "UTC")).toEqual({ kind: "epoch", column: 0, unit: "s" });
    expect(withTimeKind({ kind: "epoch", column: 3, unit: "ms" }, "text", "UTC")).toMatchObject({
      columns: [3],
      zone: "UTC",
    });
    expect(withTimeColumn([0], 1, 4)).toEqual([0, 4]);
    expect(withTimeColumn([0, 4, 5], 1, null)).toEqual([0]);
    expect(withTimeColumn([0, 4], 0, 2)).toEqual([2, 4]);
  });
});

describe("what was left out", () => {
  test("is said only where something was", () => {
    expect(mergedWords({ inFile: 0, differing: 0, stored: 0, wasInOrder: true }, metric)).toEqual([]);
    expect(mergedWords({ inFile: 2, differing: 1, stored: 1200, wasInOrder: false }, metric)).toEqual([
      "1,200 readings are in the log already and stay as they are.",
      "2 lines repeat the time of an earlier line; the first counts.",
      "1 of these differs from the first by more than 0.2\u00a0°C or 2%.",
      "The lines were not in time order and have been sorted.",
    ]);
  });

  test("and what came in with its first and last hour", () => {
    const from = new Date(2026, 2, 4, 8).getTime();
    expect(spanWords({ count: 1, from, to: from }, metric, from)).toBe("1 reading, today 08:00");
  });
});

const air = (seconds: readonly number[], airC: readonly number[]): PackedAir => ({
  count: seconds.length,
  atS: Float64Array.from(seconds),
  airC: Float64Array.from(airC),
  rh: Float64Array.from(seconds, () => 0.5),
  pressurePa: null,
  hasPressure: null,
});

describe("the plot of a file", () => {
  test("keeps the lowest and the highest of what falls on one spot, in their order, and leaves holes open", () => {
    const seconds = [0, 300, 600, 900, 20_000, 20_300];
    const points = thinned(
      air(seconds, [10, 14, 6, 9, 12, 13]),
      Float64Array.from([10, 14, 6, 9, 12, 13]),
      2,
    );
    expect(points).toEqual([
      { at: 300_000, value: 14 },
      { at: 600_000, value: 6 },
      null,
      { at: 20_000_000, value: 12 },
      { at: 20_300_000, value: 13 },
    ]);
  });

  test("loses no extreme and is never longer than the plot is wide, whatever the file", () =>
    fc.assert(
      fc.property(fc.array(fc.integer({ min: -20, max: 50 }), { minLength: 1, maxLength: 500 }), (temps) => {
        const file = air(
          temps.map((_, i) => i * 300),
          temps,
        );
        const values = thinned(file, file.airC, 40).flatMap((point) => point?.value ?? []);
        expect(Math.max(...values)).toBe(Math.max(...temps));
        expect(Math.min(...values)).toBe(Math.min(...temps));
        expect(values.length).toBeLessThanOrEqual(2 * 41);
      }),
    ));

  test("has each day's lowest and highest in its table, and every reading in one day", () => {
    const noon = new Date(2026, 0, 12, 12).getTime() / 1000;
    const days = fileDays(air([noon, noon + 3600, noon + 86_400], [5, 7, 9]));
    expect(days.map(({ count, temp }) => ({ count, temp }))).toEqual([
      { count: 2, temp: { low: 5, high: 7 } },
      { count: 1, temp: { low: 9, high: 9 } },
    ]);
  });
});
