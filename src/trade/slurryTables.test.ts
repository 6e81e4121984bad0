import { describe, expect, test } from "vitest";
import truth from "../../tests/truth/slurry.json" with { type: "json" };
import { cupViscosityMm2S, firstMix } from "../physics/slurry/slurry.ts";
import { solDensityGCm3 } from "../physics/slurry/sol.ts";
import { viscosityCups } from "../physics/slurry/viscosityCups.ts";
import { binderOf, binders, solShelfMonths } from "./binders.ts";
import { bucketLimitSources, bucketLimitsFor, checkEveryDays, mixingH } from "./bucketLimits.ts";
import { cupOf, cupRepeatability, cups } from "./cups.ts";
import { dipSteps, lookOverBefore, readAgainAfter } from "./dipSteps.ts";
import { flourOf, flours } from "./flours.ts";
import { materialLoss, pickups } from "./pickup.ts";
import { flourVolumeFractions, secondsTargets, slurryStarts } from "./slurryTargets.ts";

describe("cups", () => {
  test("every cup of the sums has its row, in order, with a source for each figure", () => {
    expect(cups.map(({ id }) => id)).toEqual(Object.keys(viscosityCups));
    for (const { orificeMm, formula, seconds, referenceC } of cups)
      for (const { source } of [orificeMm, formula, seconds, referenceC])
        expect(source).toMatch(/ASTM D4212|ASTM D1200|ISO 2431/);
    expect(cupOf("zahn-9")).toBeNull();
  });

  test("the formula as written gives the number as reckoned", () => {
    const written = (formula: string, t: number): number => {
      const line = /^ν = ([\d.]+) \(t − ([\d.]+)\)$/.exec(formula);
      if (line) return Number(line[1]) * (t - Number(line[2]));
      const root = /^ν = ([\d.]+) t(?: − ([\d.]+)\/t)?$/.exec(formula);
      return Number(root?.[1]) * t - Number(root?.[2] ?? 0) / t;
    };
    for (const { id, formula } of cups)
      expect(cupViscosityMm2S({ cup: id, seconds: 70 })).toMatchObject({
        viscosityMm2S: expect.closeTo(written(formula.value, 70), 9) as number,
      });
  });

  test("a larger orifice is a later number of its family", () => {
    for (const [i, cup] of cups.entries()) {
      const before = cups[i - 1];
      if (before && before.id.slice(0, 3) === cup.id.slice(0, 3))
        expect(cup.orificeMm.value).toBeGreaterThan(before.orificeMm.value);
    }
    expect(cupOf("ford-4")?.orificeMm.value).toBe(4.12);
    expect(cupRepeatability.suspect.value).toBeGreaterThan(cupRepeatability.within.value);
  });
});

describe("mixes", () => {
  test("each starting mix is one of the hand-computed ones, and lies at a usual share of flour", () => {
    const sol = binderOf("sol-30");
    expect(slurryStarts).toHaveLength(truth.mixes.rows.length);
    for (const [i, start] of slurryStarts.entries()) {
      const row = truth.mixes.rows[i];
      const flourGCm3 = flourOf(start.flourId)?.densityGCm3.value ?? NaN;
      expect({ ratio: start.ratio.value, flourGCm3 }).toEqual({
        ratio: row?.ratio,
        flourGCm3: row?.flourGCm3,
      });
      const mix = firstMix({
        volumeL: 1,
        ratio: start.ratio.value,
        flourGCm3,
        binderGCm3: sol?.densityGCm3.value ?? NaN,
        binderSilica: sol?.silica.value ?? NaN,
      });
      if (!mix.ok) throw new Error("refused");
      const seed = flourVolumeFractions[start.use === "prime" ? "prime" : "backup"].value;
      expect(Math.abs(mix.flourVolumeFraction - seed)).toBeLessThan(0.02);
    }
  });

  test("half and half by volume is two thirds of zircon by mass", () => {
    const [silica, zircon, half] = ["fused-silica", "zircon", "zircon-fused-silica"].map(
      (id) => flourOf(id)?.densityGCm3.value ?? NaN,
    );
    expect(half).toBeCloseTo(((silica ?? 0) + (zircon ?? 0)) / 2, 9);
    expect((zircon ?? 0) / ((silica ?? 0) + (zircon ?? 0))).toBeCloseTo(0.676, 3);
    for (const { densityGCm3, low, high } of flours) {
      expect(densityGCm3.value).toBeGreaterThanOrEqual(low);
      expect(densityGCm3.value).toBeLessThanOrEqual(high);
    }
    expect(flourOf("sand")).toBeNull();
  });

  test("a sol's density and its silica agree within a label's rounding", () => {
    for (const { silica, densityGCm3 } of binders)
      expect(Math.abs(densityGCm3.value - solDensityGCm3({ silica: silica.value }))).toBeLessThan(0.006);
    expect(binderOf("water")).toBeNull();
    expect(solShelfMonths.value).toBe(6);
  });

  test("a Zahn 5 reads about half of a Zahn 4, and targets run low to high", () => {
    for (const { zahn4S, zahn5S } of secondsTargets) {
      expect(zahn4S.low).toBeLessThan(zahn4S.high);
      if (zahn5S === null) continue;
      expect(zahn5S.low / zahn4S.low).toBeGreaterThan(0.45);
      expect(zahn5S.high / zahn4S.high).toBeLessThan(0.65);
    }
  });
});

test("later coats pick up more, a seal no stucco; losses are shares", () => {
  expect(pickups.prime.slurryKgM2).toBeLessThan(pickups.intermediate.slurryKgM2);
  expect(pickups.intermediate.slurryKgM2).toBeLessThan(pickups.backup.slurryKgM2);
  expect(pickups.seal.stuccoKgM2).toBe(0);
  // Two, three, four and one make 6.14 kg of slurry and 8.35 of stucco a square metre.
  const { prime, intermediate, backup, seal } = pickups;
  const shell = [
    prime,
    prime,
    ...Array(3).fill(intermediate),
    ...Array(4).fill(backup),
    seal,
  ] as (typeof prime)[];
  expect(shell.reduce((sum, { slurryKgM2 }) => sum + slurryKgM2, 0)).toBeCloseTo(6.14, 9);
  expect(shell.reduce((sum, { stuccoKgM2 }) => sum + stuccoKgM2, 0)).toBeCloseTo(8.35, 9);
  expect(materialLoss.slurry.value).toBe(0.15);
});

test("limits widen from fit to watch, heavy flour takes twice the density, and every limit has its source", () => {
  for (const family of ["light", "heavy"] as const) {
    const { temperatureC, densityGCm3, pH, plateShare, bacteriaPerMl, gelH } = bucketLimitsFor(family);
    expect(temperatureC.watch.low).toBeLessThan(temperatureC.fit.low);
    expect(temperatureC.watch.high).toBeGreaterThan(temperatureC.fit.high);
    for (const { fit, watch } of [densityGCm3, plateShare, bacteriaPerMl]) expect(watch).toBeGreaterThan(fit);
    expect(gelH.watch).toBeLessThan(gelH.fit);
    expect(pH.stopBelow).toBeLessThan(pH.fit.low);
    expect(pH.meterAbove).toBeGreaterThan(pH.fit.high);
  }
  expect(bucketLimitsFor("heavy").densityGCm3.fit).toBe(2 * bucketLimitsFor("light").densityGCm3.fit);
  expect(Object.keys(bucketLimitSources).sort()).toEqual(Object.keys(bucketLimitsFor("light")).sort());
  for (const source of Object.values(bucketLimitSources)) expect(source).toMatch(/no source/);
  expect(Math.min(...Object.values(checkEveryDays))).toBe(1);
  expect(mixingH["prime-made"].value).toBeGreaterThan(mixingH["backup-made"].value);
});

describe("steps of a dip", () => {
  test("a prime coat is never prewetted, a backup is; a seal has no stucco; each ends at the clear lip, then dries", () => {
    const ids = (kind: keyof typeof dipSteps) => dipSteps[kind].map(({ id }) => id);
    expect(ids("prime")).not.toContain("prewet");
    expect(ids("backup").slice(2, 4)).toEqual(["prewet", "prewet-drain"]);
    expect(ids("seal")).not.toContain("stucco");
    for (const steps of Object.values(dipSteps)) {
      expect(steps.find(({ hold }) => hold === "bucket-fit")?.id).toBe("bucket-ready");
      expect(steps.at(-2)).toMatchObject({ id: "after", hold: "lip-clear" });
      expect(steps.at(-1)?.id).toBe("dry");
      expect(new Set(steps.map(({ id }) => id)).size).toBe(steps.length);
      for (const { seconds } of steps) if (seconds) expect(seconds.low).toBeLessThan(seconds.high);
      expect(steps.filter(({ dust }) => dust).map(({ id }) => id)).toEqual(
        steps.filter(({ id }) => id === "stucco").map(({ id }) => id),
      );
    }
    expect(dipSteps.prime.find(({ hold }) => hold === "no-bare-wax")?.id).toBe("bubbles");
    expect(dipSteps.backup.some(({ hold }) => hold === "no-bare-wax")).toBe(false);
  });

  test("a piece is looked over after two coats and half way", () => {
    const due = (coatsDone: number) => lookOverBefore({ coatsDone, coatsPlanned: 9 });
    expect([0, 1, 2, 3, 4, 5, 6].map(due)).toEqual([
      null,
      null,
      "after-second-coat",
      null,
      null,
      "mid-shell",
      null,
    ]);
    expect(lookOverBefore({ coatsDone: 2, coatsPlanned: 4 })).toBe("after-second-coat");
    expect(readAgainAfter.openMin.value).toBe(60);
  });
});
