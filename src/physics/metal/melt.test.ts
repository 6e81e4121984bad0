import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import truth from "../../../tests/truth/metal.json" with { type: "json" };
import { brimByNumberMl, brimBySandMl, brimNeededMl, crucibleFill, meltMl } from "./crucible.ts";
import { learnFurnace, learnLoss } from "../heat/furnace.ts";
import { burnerW, chargeParts, fuelKg, meltEnergyJ, meltPowerW, meltTimeS, shownEfficiency } from "./melt.ts";

const chargeKg = (asked: Parameters<typeof chargeParts>[0]): number => chargeParts(asked).chargeKg;

const off = (found: number, wanted: number): number => Math.abs(found / wanted - 1);
const bronze = { fromC: 20, liquidusC: 1000, solidJKgK: 430, latentJKg: 195_000, liquidJKgK: 490 };

describe("heat of a melt", () => {
  test.each(truth.meltEnergy)("$source takes $energyMJ MJ", ({ energyMJ, within, ...asked }) => {
    expect(off(meltEnergyJ(asked), energyMJ * 1e6)).toBeLessThan(within);
  });

  test("that bronze in half an hour wants 1.5 kW in the metal and 0.6 kg of propane at a tenth", () => {
    const { energyJ, timeS, powerW, efficiency, heatingJKg, propaneKg, within } = truth.furnace;
    expect(off(meltPowerW({ energyJ, timeS }), powerW)).toBeLessThan(within);
    expect(off(fuelKg({ energyJ, efficiency, heatingJKg }), propaneKg)).toBeLessThan(within);
    expect(meltTimeS({ energyJ, usefulW: powerW, holdS: 0 })).toBeCloseTo(timeS, -1);
    expect(meltTimeS({ energyJ, usefulW: powerW }) - timeS).toBeCloseTo(420, -1);
    expect(burnerW({ fuelKgH: 1, heatingJKg })).toBeCloseTo(12_889, 0);
    expect(shownEfficiency({ energyJ, spentJ: propaneKg * heatingJKg })).toBeCloseTo(0.1, 4);
  });

  test("heat goes with mass, and more superheat takes more by the liquid's own heat", () =>
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 100, noNaN: true }),
        fc.double({ min: 0, max: 200, noNaN: true }),
        fc.double({ min: 1, max: 100, noNaN: true }),
        (massKg, superheatK, moreK) => {
          const at = (kg: number, k: number) => meltEnergyJ({ ...bronze, massKg: kg, pourC: 1000 + k });
          expect(off(at(3 * massKg, superheatK), 3 * at(massKg, superheatK))).toBeLessThan(1e-9);
          const more = at(massKg, superheatK + moreK) - at(massKg, superheatK);
          expect(off(more, massKg * 490 * moreK)).toBeLessThan(1e-6);
        },
      ),
    ));

  test("metal comes from a room of 20 °C where nothing else is said", () => {
    const { fromC: _, ...cold } = bronze;
    expect(meltEnergyJ({ ...cold, massKg: 4, pourC: 1150 })).toBeCloseTo(2_759_600, 6);
  });

  test("metal poured below its liquidus, percents and kilojoules are refused", () => {
    expect(() => meltEnergyJ({ ...bronze, massKg: 4, pourC: 990 })).toThrow(/pourC must be 1000/);
    expect(() => meltEnergyJ({ ...bronze, massKg: 4, pourC: 1100, latentJKg: 195 })).toThrow(/not kJ/);
    expect(() => fuelKg({ energyJ: 1e6, efficiency: 15, heatingJKg: 46.4e6 })).toThrow(/not percent/);
    expect(() => fuelKg({ energyJ: 1e6, efficiency: 0.15, heatingJKg: 46.4 })).toThrow(/not MJ/);
  });
});

describe("the charge", () => {
  const { chargeKg: wantedKg, within, meltKg, liquidKgM3, fillShare, ...asked } = truth.charge;

  test("4.3 kg with 5 % margin, 0.3 kg of heel and 2 % loss asks 4.913 kg and a crucible of 762 mL", () => {
    expect(off(chargeKg(asked), wantedKg)).toBeLessThan(within);
    expect(off(chargeParts(asked).meltKg, meltKg)).toBeLessThan(within);
    expect(off(meltMl({ meltKg, liquidKgM3 }), truth.charge.meltMl)).toBeLessThan(within);
    expect(off(brimNeededMl({ meltKg, liquidKgM3, fillShare }), truth.charge.brimMl)).toBeLessThan(within);
  });

  test("the parts of a charge add up to it, and the charge is never less than the pour", () =>
    fc.assert(
      fc.property(
        fc.double({ min: 0.05, max: 50, noNaN: true }),
        fc.double({ min: 0, max: 50, noNaN: true }),
        fc.double({ min: 0, max: 0.5, noNaN: true }),
        fc.double({ min: 0, max: 5, noNaN: true }),
        fc.double({ min: 0, max: 0.5, noNaN: true }),
        (castingKg, gatingKg, marginShare, heelKg, lossShare) => {
          const parts = chargeParts({ castingKg, gatingKg, marginShare, heelKg, lossShare });
          const sum = castingKg + gatingKg + parts.marginKg + heelKg + parts.lossKg;
          expect(off(sum, parts.chargeKg)).toBeLessThan(1e-12);
          expect(parts.chargeKg).toBeGreaterThan(castingKg + gatingKg);
          expect(parts.marginKg).toBeGreaterThanOrEqual(0.2);
          expect(parts.lossKg).toBeGreaterThanOrEqual(0);
          expect(off(parts.chargeKg * (1 - lossShare), parts.meltKg)).toBeLessThan(1e-12);
        },
      ),
    ));

  test("a casting weighed with its gating needs no gating said", () => {
    expect(chargeKg({ castingKg: 4.3, marginShare: 0.05, heelKg: 0.3, lossShare: 0.02 })).toBeCloseTo(
      4.9133,
      4,
    );
  });

  test("a margin of nothing is refused, a small one is lifted to 0.2 kg", () => {
    const small = { castingKg: 1, gatingKg: 0.5, marginShare: 0.05, lossShare: 0.02 };
    expect(chargeParts(small).marginKg).toBe(0.2);
    expect(() => chargeKg({ ...small, marginShare: 0, leastMarginKg: 0 })).toThrow(/margin/);
    expect(() => chargeKg({ ...small, lossShare: 2 })).toThrow(/not percent/);
  });

  test("a crucible over its fill share doesn't fit and says what it may hold", () => {
    const fill = crucibleFill({ meltKg: 5, liquidKgM3: 7900, brimMl: 700, fillShare: 0.8 });
    expect(fill.fits).toBe(false);
    expect(fill.share).toBeCloseTo(0.904, 3);
    expect(
      crucibleFill({ meltKg: fill.mostKg * 0.999, liquidKgM3: 7900, brimMl: 700, fillShare: 0.8 }).fits,
    ).toBe(true);
  });

  test("a number six crucible is about 1.1 L; sand measures it better", () => {
    expect(brimByNumberMl(6)).toBeCloseTo(1134, 0);
    expect(brimBySandMl({ sandG: 1600, bulkKgM3: 1600 })).toBe(1000);
  });
});

describe("what the furnace has shown", () => {
  const melt = (watts: number, isHotStart: boolean) => ({ energyJ: watts * 1000, timeS: 1000, isHotStart });

  test("cold and hot starts have medians of their own; one odd melt doesn't move them", () => {
    const seen = [melt(1500, true), melt(9000, true), melt(1600, true), melt(700, false), melt(900, false)];
    expect(learnFurnace(seen)).toEqual({
      hot: { medianW: 1600, melts: 3 },
      cold: { medianW: 800, melts: 2 },
    });
    expect(learnFurnace([])).toEqual({ hot: null, cold: null });
  });

  test("loss is what all melts lost of all metal, not the mean of their losses", () => {
    const learned = learnLoss([
      { inKg: 10, outKg: 9.9 },
      { inKg: 1, outKg: 0.9 },
    ]);
    expect(learned).toMatchObject({ kind: "learned", melts: 2 });
    expect(learned.kind === "learned" ? learned.lossShare : NaN).toBeCloseTo(0.2 / 11, 12);
    expect(learnLoss([])).toEqual({ kind: "nothing-weighed" });
    expect(learnLoss([{ inKg: 3, outKg: 3.1 }])).toEqual({ kind: "more-out-than-in", inKg: 3, outKg: 3.1 });
  });
});
