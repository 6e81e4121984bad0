import { expect, test } from "vitest";
import { makeFormat } from "../../base/format/units.ts";
import { rulerTicks } from "./rulerTicks.ts";

test("a ruler of 120 mm is marked every 50, with the unit once", () => {
  expect(rulerTicks(120, makeFormat("metric", "en-GB")).map(({ label }) => label)).toEqual([
    "0",
    "50",
    "100\u00a0mm",
  ]);
});

test("in inches it is marked at whole inches, which lie 25.4 mm apart", () => {
  const ticks = rulerTicks(120, makeFormat("us", "en-US"));
  expect(ticks.map(({ label }) => label)).toEqual(["0", "1", "2", "3", "4\u00a0in"]);
  expect(ticks[4]?.aboveMm).toBeCloseTo(101.6);
});

test("a piece of no height has no ruler", () => {
  expect(rulerTicks(0, makeFormat("metric", "en-GB"))).toEqual([]);
});
