import * as fc from "fast-check";
import { expect, test } from "vitest";
import { wallCooling } from "../heat/heat.ts";
import { latestPour } from "./latestPour.ts";

const shell = { conductivityWMK: 0.7, densityKgM3: 1800, heatJKgK: 1000, emissivity: 0.85 } as const;
const rowsOf = (startC: number) =>
  wallCooling({ ...shell, wallMm: 10, startC, airC: 20, minutes: 20, outside: "air" });

test("10 mm from 540 °C is at 368 °C after five minutes, so metal that wants 368 °C has five", () => {
  const { likelyMin, surelyMin } = latestPour({ rows: rowsOf(540), leastShellC: 368.4 });
  expect(likelyMin).toBeCloseTo(5, 1);
  expect(surelyMin ?? 0).toBeLessThan(likelyMin ?? 0);
});

test("a shell colder than wanted has no minute, and one that stays hot enough has no end yet", () => {
  expect(latestPour({ rows: rowsOf(390), leastShellC: 400 })).toMatchObject({
    likelyMin: 0,
    neverWarmEnough: true,
  });
  expect(latestPour({ rows: rowsOf(540), leastShellC: 60 })).toMatchObject({
    likelyMin: null,
    reachedMin: 20,
  });
});

test("asking for a hotter shell never gives more time", () =>
  fc.assert(
    fc.property(fc.integer({ min: 150, max: 520 }), fc.integer({ min: 1, max: 50 }), (leastShellC, more) => {
      const rows = rowsOf(540);
      const time = (c: number) => latestPour({ rows, leastShellC: c }).likelyMin ?? Infinity;
      return time(leastShellC + more) <= time(leastShellC);
    }),
    { numRuns: 60 },
  ));
