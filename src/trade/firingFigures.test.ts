import { describe, expect, test } from "vitest";
import truth from "../../tests/truth/heat.json" with { type: "json" };
import { checkSchedule } from "../physics/heat/checkSchedule.ts";
import { planFiring } from "../physics/heat/firingSchedule.ts";
import { rampLimitKPerH, wallCooling } from "../physics/heat/heat.ts";
import { planPour } from "../physics/metal/pourDay.ts";
import { burningPatternOf, firingShellOf } from "./firingFigures.ts";
import { fumeLimits, limitsOfGases } from "./fumeLimits.ts";
import type { BurnoutMaterial } from "./patternBurnout.ts";
import { patternBurnout, stoichAirKgKg } from "./patternBurnout.ts";
import { pourTracks } from "./pourTracks.ts";
import { shellPreheat } from "./shellPreheat.ts";
import type { StuccoFamily } from "./shellThermal.ts";
import { coolingHeatOf, shellThermal } from "./shellThermal.ts";

const families: readonly StuccoFamily[] = ["fused-silica", "aluminosilicate", "zircon", "quartz"];
const materials: readonly BurnoutMaterial[] = ["wax", "pla", "pvb", "resin", "foam", "pu-foam", "other"];

test.each(truth.air.rows)("$name wants $airKgKg kg of air a kilogram", ({ airKgKg, ...atoms }) => {
  expect(Math.abs(stoichAirKgKg(atoms) / airKgKg - 1)).toBeLessThan(truth.air.within);
});

test("carbon alone wants 11.5 kg of air, hydrogen 34.3", () => {
  expect(stoichAirKgKg({ carbon: 1, hydrogen: 0 })).toBeCloseTo(11.51, 2);
  expect(stoichAirKgKg({ carbon: 0, hydrogen: 2 })).toBeCloseTo(34.3, 1);
  expect(() => stoichAirKgKg({ carbon: 0, hydrogen: 0 })).toThrow(/atoms must be/);
});

describe("shells", () => {
  test("every figure lies within its own range", () => {
    for (const family of families)
      for (const figure of Object.values(shellThermal[family])) {
        if (typeof figure === "string") continue;
        expect(figure.low).toBeLessThanOrEqual(figure.value);
        expect(figure.high).toBeGreaterThanOrEqual(figure.value);
        expect(figure.source).not.toBe("");
      }
  });

  test("a porous fused-silica shell conducts as dense silica at a quarter of pores would", () => {
    // exp(−1.5·φ/(1 − φ)) of 1.4 W/(m·K): Xu, Lekakh & Richards 2016, eq. 1.
    const reckoned = 1.4 * Math.exp((-1.5 * 0.25) / 0.75);
    const { low, high } = shellThermal["fused-silica"].conductivityWMK;
    expect(reckoned).toBeGreaterThan(low);
    expect(reckoned).toBeLessThan(high);
  });

  test("quartz bears the least ramp and fused silica the most, until it has turned to cristobalite", () => {
    const limit = (family: StuccoFamily, seenAbove1100 = false): number =>
      rampLimitKPerH(firingShellOf(family, { wallMm: 10, seenAbove1100 }));
    expect(limit("fused-silica")).toBeGreaterThan(4 * limit("aluminosilicate"));
    expect(limit("aluminosilicate")).toBeGreaterThan(limit("quartz"));
    expect(limit("fused-silica", true)).toBeLessThan(limit("fused-silica") / 3);
  });

  test("10 mm of fused silica is above 330 °C on its inner face five minutes out of the kiln at 540", () => {
    const of = {
      ...coolingHeatOf("fused-silica", 540),
      wallMm: 10,
      startC: 540,
      airC: 20,
      minutes: 5,
      outside: "air",
    } as const;
    expect(wallCooling(of).at(-1)?.cavityFaceC).toBeGreaterThan(330);
  });
});

describe("patterns in the fire", () => {
  test.each(materials.filter((material) => patternBurnout[material] !== null))(
    "%s: temperatures in their order",
    (material) => {
      const of = patternBurnout[material];
      const pattern = burningPatternOf(material, 0.4);
      if (of === null || pattern === null) throw new Error("no figures");
      expect(of.fivePercentLossC.value[0]).toBeLessThan(of.peakLossC.value[1]);
      expect(of.flashC.value[0]).toBeLessThanOrEqual(of.selfIgnitionC.value[1]);
      expect(of.drainC?.value[1] ?? 0).toBeLessThan(of.fivePercentLossC.value[0]);
      expect(pattern.drainC ?? 0).toBeLessThan(Math.min(pattern.burnFromC, of.flashC.value[0]));
      expect(pattern.finishC).toBeGreaterThan(550);
    },
  );

  test("only wax runs freely, and a resin must burn", () => {
    expect(materials.filter((m) => patternBurnout[m]?.drains === "freely")).toEqual(["wax"]);
    expect(burningPatternOf("resin", 1)?.drainC).toBeNull();
    expect(burningPatternOf("other", 1)).toBeNull();
  });

  test("every family and pattern gets a plan that keeps its limits", () => {
    for (const family of families)
      for (const material of materials) {
        const made = planFiring({
          purpose: material === "other" ? "fire" : "burnout",
          route: "staged",
          pattern: burningPatternOf(material, 0.5),
          shell: firingShellOf(family, { wallMm: 9, seenAbove1100: false }),
          shellKg: 2,
          damp: "dry",
          firedBefore: false,
          seenAbove1100: false,
          kiln: { powerKW: 5, maxC: 1200, volumeL: 80 },
          startC: 20,
          after: "inspect",
        });
        if (made.kind === "refused") throw new Error(made.code);
        expect(checkSchedule(made.segments, { limits: made.limits, startC: 20 })).toEqual([]);
      }
  });
});

test("polyurethane's prussic acid and styrene's smoke have their limits", () => {
  expect(limitsOfGases(patternBurnout["pu-foam"]?.gases ?? []).map(({ limit }) => limit.value)).toEqual([
    10, 0.02, 50,
  ]);
  expect(limitsOfGases(patternBurnout.foam?.gases ?? []).map(({ limit }) => limit.value)).toEqual([
    100, 1, 50,
  ]);
  expect(fumeLimits["crystalline-silica"]).toMatchObject({
    limit: { value: 0.05 },
    actionLevel: { value: 0.025 },
  });
});

describe("preheat", () => {
  test.each([
    ["bronze", 6, 854, 500, 700],
    ["bronze", 1.5, 854, 800, 804],
    ["bronze", 2, 854, 800, 804],
    ["bronze", 2.1, 854, 650, 804],
    ["bronze", 4, 971, 650, 850],
    ["bronze", 4.1, 971, 500, 700],
    ["bronze", 8, 854, 500, 700],
    ["bronze", 15, 854, 350, 550],
    ["bronze", 15.1, 854, 200, 450],
    ["aluminium", 8, 557, 150, 300],
    ["aluminium", 8.1, 557, 20, 200],
    ["brass", 20, 862, 200, 450],
    ["aluminium", 3, 557, 250, 400],
    ["silver", 1, 802, 600, 700],
  ] as const)("%s of %d mm: %d °C solidus, %d–%d °C", (metal, thinnestMm, solidusC, lowC, highC) => {
    expect(shellPreheat({ metal, thinnestMm, solidusC })).toEqual({ lowC, highC });
  });

  test("a metal of no known practice has none", () => {
    expect(shellPreheat({ metal: "other", thinnestMm: 4, solidusC: 231 })).toBeNull();
  });
});

test("a pour day for one person with sand and a melt of half an hour has no clash", () => {
  const tracks = pourTracks({ kilnMin: 180, sandMin: 45, crucibleMin: 15, meltMin: 30 });
  const plan = planPour({ pourAt: 0, tracks, now: null });
  expect(plan.clashes).toEqual([]);
  expect(plan.startsAt).toBe(-180 * 60_000);
  expect(
    pourTracks({ kilnMin: null, sandMin: null, crucibleMin: 15, meltMin: 30 }).map(({ id }) => id),
  ).toEqual(["metal", "people"]);
});
