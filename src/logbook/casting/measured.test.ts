import { describe, expect, test } from "vitest";
import { dryThrough } from "../../../tests/dryThrough.ts";
import { wetFluxKgM2S } from "../../../tests/sums/moistAir.ts";
import truth from "../../../tests/truth/measured.json" with { type: "json" };
import { dryingHours } from "../../physics/drying/drying.ts";
import { castingCooling, type CastingFor } from "../../physics/heat/castingCooling.ts";
import { runSpread } from "../../physics/metal/fluidity.ts";
import { hotShellFreezeS } from "../../physics/metal/hotShell.ts";
import { alloyOf } from "../../trade/metals/alloys.ts";
import { metalToShellWM2K, mouldHeat } from "../../trade/mouldHeat.ts";
import { patternBurnout } from "../../trade/patternBurnout.ts";
import { coolingHeatOf, shellThermal } from "../../trade/shellThermal.ts";
import {
  dampLoadShare,
  dampLeaves,
  firstFireMPa,
  greenBendMPa,
  polymerStrength,
} from "../../trade/shellStrength.ts";
import { chainSum } from "./chainSum.ts";
import { emptyLink, gatingDraftOf } from "./gatingDraft.ts";

const { curve, strength, shell } = truth;
const factor = (found: number | null, measured: number): number => {
  const ratio = (found ?? NaN) / measured;
  return Math.max(ratio, 1 / ratio);
};
/** Share of the critical water that is gone when this share of the whole is left. */
const goneAt = (leftShare: number): number =>
  1 - (leftShare * curve.coat.waterKgM2) / curve.coat.criticalKgM2;

describe("a weighed backup coat (INCAST June 2020)", () => {
  const hoursTo = (leftShare: number, more: object = {}) =>
    dryingHours({ ...curve.coat, ...curve.air, dryFraction: goneAt(leftShare), ...more });

  test("m1, m2: 36.5 % of its water is left after 1 h and 11.5 % after 2", () => {
    for (const { leftShare, hours, factor: within } of [curve.m1, curve.m2])
      expect(factor(hoursTo(leftShare), hours)).toBeLessThan(within);
  });

  test("the case can fail: twice the air, or half the water, is outside", () => {
    expect(factor(hoursTo(curve.m1.leftShare, { filmWM2K: 25 }), 1)).toBeGreaterThan(curve.m1.factor);
    const half = { waterKgM2: 0.1, criticalKgM2: 0.06 };
    expect(factor(hoursTo(curve.m1.leftShare, half), 1)).toBeGreaterThan(curve.m1.factor);
  });

  test("m3: the second takes twice as long as the first", () => {
    const ratio = (hoursTo(curve.m2.leftShare) ?? NaN) / (hoursTo(curve.m1.leftShare) ?? NaN);
    expect(Math.abs(ratio - curve.m3.ratio)).toBeLessThan(curve.m3.within);
  });

  test("m4: it is ready after 2 to 4 h", () => {
    const readyH = dryingHours({ ...curve.coat, ...curve.air, dryFraction: curve.m4.dryFraction });
    expect(readyH).toBeGreaterThan(curve.m4.lowH);
    expect(readyH).toBeLessThan(curve.m4.highH);
  });

  test("m5: the fourth layer takes minutes longer than the third", () => {
    const { thirdDepthM, fourthDepthM, filmsWM2K, lowMin, highMin } = truth.m5;
    for (const filmWM2K of filmsWM2K) {
      const ready = (depthM: number) =>
        dryingHours({ ...curve.coat, ...curve.air, depthM, filmWM2K, dryFraction: 0.95 }) ?? NaN;
      const laterMin = 60 * (ready(fourthDepthM) - ready(thirdDepthM));
      expect(laterMin).toBeGreaterThan(lowMin);
      expect(laterMin).toBeLessThan(highMin);
    }
  });
});

describe("strength against time between coats (INCAST November 2020)", () => {
  const leftAfter = (hours: number): number => {
    const { filmWM2K, pocketSM, ...air } = strength.air;
    const coat = { ...curve.coat, depthM: strength.depthM, dryFraction: 0.95 };
    const intervals = [{ durationS: hours * 3600, ...air }];
    return dryThrough({ coat, filmWM2K, pocketSM, intervals }).waterKgM2 / coat.waterKgM2;
  };

  test("m6: after 4 h, where strength is flat, nothing to speak of is left", () => {
    expect(leftAfter(strength.m6.hours)).toBeLessThanOrEqual(strength.m6.mostLeft);
  });

  test("m7: after 1 h, where bars are weak, much is left", () => {
    expect(leftAfter(strength.m7.hours)).toBeGreaterThan(strength.m7.leastLeft);
  });

  test("m11: a coat put on after 1 h leaves half of the load; of a measured wall the strength alone", () => {
    const { leftShare, strengthShare, wallMm, thinnerMm, loadShare, within } = strength.m11;
    const byTable = dampLoadShare({ leftShare, isWallMeasured: false });
    expect(Math.abs(byTable - loadShare)).toBeLessThan(within);
    expect(Math.abs(byTable - strengthShare * ((wallMm - thinnerMm) / wallMm) ** 2)).toBeLessThan(within);
    expect(dampLoadShare({ leftShare, isWallMeasured: true })).toBe(strengthShare);
    expect(strengthShare).toBeCloseTo(1 / 1.55, 2);
    expect(dampLeaves.measuredWall.value).toBe(strengthShare);
  });

  test("polymer: green strength up by 60 %, hot strength down by 35 %", () => {
    const { green, hot, within } = strength.polymer;
    expect(Math.abs(polymerStrength.green.value - green)).toBeLessThan(within);
    expect(Math.abs(polymerStrength.hot.value - hot)).toBeLessThan(within);
  });

  test("the first fire is held to a quarter of the green strength that was measured, and never to more than it", () => {
    const { underDried, dried, within } = strength.greenMPa;
    expect(Math.abs(greenBendMPa.value / dried - 1)).toBeLessThan(within);
    // Half of the bending strength is what such a wall bears in tension.
    expect(firstFireMPa(1)).toBeLessThan(dried / 2);
    expect(firstFireMPa(strength.m11.strengthShare)).toBeLessThan(underDried / 2);
    expect(firstFireMPa(1)).toBeCloseTo(0.35, 9);
  });
});

test.each(truth.m8.rows)(
  "m8: a wet face under $filmWM2K W/m²K loses about $gM2H g/m²h",
  ({ filmWM2K, gM2H }) => {
    const found = wetFluxKgM2S({ ...truth.m8.air, filmWM2K }) * 3.6e6;
    expect(found / gM2H).toBeGreaterThan(truth.m8.lowFactor);
    expect(found / gM2H).toBeLessThan(truth.m8.highFactor);
  },
);

describe("heat of an aluminosilicate shell (J. Mater. Process. Technol. 2011)", () => {
  const { conductivityWMK, densityKgM3, hotHeatJKgK } = shellThermal.aluminosilicate;

  test("m9: conductivity, heat and diffusivity when hot", () => {
    const { m9 } = shell;
    expect(Math.abs(conductivityWMK.value / m9.conductivityWMK - 1)).toBeLessThan(m9.within);
    expect(hotHeatJKgK.value).toBe(m9.heatJKgK);
    const diffusivity = conductivityWMK.value / (densityKgM3.value * hotHeatJKgK.value);
    expect(Math.abs(diffusivity / m9.diffusivityM2S - 1)).toBeLessThan(m9.within);
    // From 1100 °C its way to 550 lies almost wholly above 600.
    const hot = coolingHeatOf("aluminosilicate", 1100).heatJKgK;
    expect(hot).toBeGreaterThanOrEqual(1130);
    expect(hot).toBeLessThanOrEqual(1150);
    expect(coolingHeatOf("aluminosilicate", 300).heatJKgK).toBeLessThan(1000);
    expect(mouldHeat.shell.value.heatJKgK).toBe(m9.heatJKgK);
  });

  test("m10: one contact of metal and shell, within what was measured, for cooling, feeding chain and fill", () => {
    const { likely } = metalToShellWM2K.value;
    expect(likely).toBeGreaterThanOrEqual(shell.m10.lowWM2K);
    expect(likely).toBeLessThanOrEqual(shell.m10.highWM2K);
    expect(runSpread.interfaceWM2K).toEqual(metalToShellWM2K.value);

    const alloy = alloyOf("c90300")!;
    const metal = {
      densityKgM3: 7860,
      solidusC: 854,
      liquidusC: 1000,
      latentJKg: 195_000,
      solidJKgK: 430,
      liquidJKgK: 490,
    };
    const cooling: CastingFor = {
      metal,
      modulusMm: 3,
      pourC: 1150,
      shellMm: 8,
      shellC: 600,
      conductivityWMK: 1,
      shellKgM3: 1900,
      shellJKgK: 1130,
      emissivity: 0.9,
      airC: 20,
      around: "air",
      knockoutC: 300,
    };
    const solidAt = (contactWM2K?: number) => castingCooling({ ...cooling, contactWM2K }).solidusS;
    expect(solidAt()).toBe(solidAt(likely));
    expect(solidAt()).toBeGreaterThan(solidAt(1500) ?? Infinity);

    const draft = {
      ...gatingDraftOf({ metalKg: 4, headM: 0.2, mesh: null, shellMm: 8 }),
      links: [{ ...emptyLink(1, "wall", "casting", "plate"), thicknessMm: 6 }],
    };
    const chain = chainSum({ draft, alloy, figures: alloy, metalC: 1150, shellC: 600 });
    const byHand = hotShellFreezeS({
      metalKgM3: alloy.liquidKgM3.value,
      metalWallMm: 6,
      latentJKg: alloy.latentJKg.value,
      liquidJKgK: alloy.liquidHeatJKgK.value,
      superheatK: 150,
      solidusC: alloy.solidusC.value,
      liquidusC: alloy.liquidusC.value,
      shell: mouldHeat.shell.value,
      shellMm: 8,
      shellC: 600,
      interfaceWM2K: likely,
      around: { kind: "air", filmWM2K: 10, emissivity: 0.9 },
      aroundC: 20,
    });
    expect(chain?.chain.links[0]?.freezeS).toBeCloseTo(byHand.likelyS, 6);
  });
});

test("m12: PLA softens from 61.8 to 66.2 °C", () => {
  const [lowC, highC] = patternBurnout.pla?.softensC?.value ?? [NaN, NaN];
  expect(lowC).toBeLessThanOrEqual(truth.m12.lowC);
  expect(highC).toBeGreaterThanOrEqual(truth.m12.highC);
  expect(highC - lowC).toBeLessThan(7);
});
