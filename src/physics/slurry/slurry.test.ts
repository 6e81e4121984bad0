import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import truth from "../../../tests/truth/slurry.json" with { type: "json" };
import { liquorSilica, solDensityGCm3 } from "./sol.ts";
import {
  cupSeconds,
  cupViscosityMm2S,
  firstMix,
  flourToLift,
  makeUpWaterL,
  solidsFromDensity,
} from "./slurry.ts";
import { viscosityCups } from "./viscosityCups.ts";

const runs = { numRuns: 200 };
const okOf = <T extends { readonly ok: boolean }>(result: T): Extract<T, { readonly ok: true }> => {
  if (!result.ok) throw new Error(`refused: ${JSON.stringify(result)}`);
  return result as Extract<T, { readonly ok: true }>;
};
const span = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe("cups", () => {
  test.each(truth.cups)("$cup $seconds s is $mm2S mm²/s, $range its range", (row) => {
    const { viscosityMm2S, range } = okOf(cupViscosityMm2S(row));
    expect(Math.abs(viscosityMm2S - row.mm2S)).toBeLessThanOrEqual(row.within + 1e-9);
    expect(range).toBe(row.range);
    const back = okOf(cupSeconds({ cup: row.cup, viscosityMm2S: row.mm2S }));
    expect(Math.abs(back.seconds - row.seconds)).toBeLessThan(0.01);
    expect(back.range).toBe(row.range);
  });

  test.each(truth.standardLiquids.rows)(
    "a standard liquid of $mm2S mm²/s leaves $cup in $seconds s",
    ({ cup, mm2S, seconds }) => {
      const back = okOf(cupSeconds({ cup, viscosityMm2S: mm2S }));
      expect(Math.abs(back.seconds - seconds)).toBeLessThan(truth.standardLiquids.withinS);
    },
  );

  test.each(truth.cupEnds.rows)("$cup spans $low–$high mm²/s", ({ cup, low, high }) => {
    const { lowS, highS } = okOf(cupSeconds({ cup, viscosityMm2S: 100 }));
    const ends = [lowS, highS].map((seconds) => okOf(cupViscosityMm2S({ cup, seconds })).viscosityMm2S);
    expect(Math.abs((ends[0] ?? 0) / low - 1)).toBeLessThan(0.002);
    expect(Math.abs((ends[1] ?? 0) / high - 1)).toBeLessThan(0.002);
  });

  test("every cup is in that list, and each can be turned round without loss", () => {
    expect(truth.cupEnds.rows.map(({ cup }) => cup)).toEqual(Object.keys(viscosityCups));
    fc.assert(
      fc.property(fc.constantFrom(...Object.keys(viscosityCups)), span(0.5, 3000), (cup, viscosityMm2S) => {
        const { seconds, range } = okOf(cupSeconds({ cup, viscosityMm2S }));
        const back = okOf(cupViscosityMm2S({ cup, seconds }));
        expect(Math.abs(back.viscosityMm2S / viscosityMm2S - 1)).toBeLessThan(1e-9);
        expect(back.range).toBe(range);
      }),
      runs,
    );
  });

  test("longer seconds are never a thinner slurry", () =>
    fc.assert(
      fc.property(
        fc.constantFrom(...Object.keys(viscosityCups)),
        span(36, 200),
        span(0.1, 50),
        (cup, s, more) => {
          const [one, other] = [s, s + more].map((seconds) => okOf(cupViscosityMm2S({ cup, seconds })));
          expect(other?.viscosityMm2S).toBeGreaterThan(one?.viscosityMm2S ?? Infinity);
        },
      ),
      runs,
    ));

  test("the ends of a range belong to it", () => {
    expect(cupViscosityMm2S({ cup: "zahn-4", seconds: 20 })).toMatchObject({ range: "within" });
    expect(cupViscosityMm2S({ cup: "zahn-4", seconds: 80 })).toMatchObject({ range: "within" });
    expect(cupViscosityMm2S({ cup: "zahn-4", seconds: 80.2 })).toMatchObject({ range: "above" });
  });

  test("a cup nobody knows, and a time no liquid makes, are told as such", () => {
    expect(cupViscosityMm2S({ cup: "zahn-9", seconds: 20 })).toMatchObject({ code: "unknown-cup" });
    expect(cupSeconds({ cup: "toString", viscosityMm2S: 20 })).toMatchObject({ code: "unknown-cup" });
    expect(cupViscosityMm2S({ cup: "zahn-4", seconds: 4.8 })).toMatchObject({
      code: "viscosity-not-positive",
      zeroS: 5,
    });
    expect(cupViscosityMm2S({ cup: "iso-4", seconds: 12 })).toMatchObject({ ok: false });
    expect(cupSeconds({ cup: "ford-4", viscosityMm2S: 0 })).toMatchObject({ code: "viscosity-not-positive" });
    expect(() => cupViscosityMm2S({ cup: "zahn-4", seconds: NaN })).toThrow(RangeError);
    expect(() => cupSeconds({ cup: "zahn-4", viscosityMm2S: NaN })).toThrow(RangeError);
  });
});

describe("first mix", () => {
  test("twenty litres of fused silica prime", () => {
    const mix = okOf(
      firstMix({ volumeL: 20, ratio: 1.7, flourGCm3: 2.2, binderGCm3: 1.2, binderSilica: 0.3 }),
    );
    const told = truth.twentyLitres;
    expect(mix.solKg).toBeCloseTo(told.solKg, 3);
    expect(mix.solL).toBeCloseTo(told.solL, 2);
    expect(mix.flourKg).toBeCloseTo(told.flourKg, 2);
    expect(mix.densityGCm3).toBeCloseTo(told.gCm3, 4);
    expect(mix.solids).toBeCloseTo(told.solids, 4);
    expect(mix.flourVolumeFraction).toBeCloseTo(told.fraction, 4);
    expect([mix.silicaKg, mix.waterKg].map((kg) => Math.round(1000 * kg) / 1000)).toEqual([3.736, 8.717]);
    expect(mix.firstFlourKg / mix.flourKg).toBeCloseTo(0.9, 9);
  });

  test.each(truth.mixes.rows)("a litre of $name", (row) => {
    const mix = okOf(firstMix({ volumeL: 1, binderGCm3: 1.2, binderSilica: 0.3, ...row }));
    expect(mix.solKg).toBeCloseTo(row.solKg, 4);
    expect(mix.flourKg).toBeCloseTo(row.flourKg, 3);
    expect(mix.densityGCm3).toBeCloseTo(row.gCm3, 3);
    expect(Math.abs(mix.solids - row.solids)).toBeLessThan(0.0006);
    expect(Math.abs(mix.flourVolumeFraction - row.fraction)).toBeLessThan(0.0006);
  });

  test("a mix by the flour's share of volume is the mix by its ratio, and weighs what went in", () =>
    fc.assert(
      fc.property(span(0.1, 0.6), span(2, 5), span(1, 500), (flourVolumeFraction, flourGCm3, volumeL) => {
        const of = { volumeL, flourGCm3, binderGCm3: 1.2, binderSilica: 0.3 };
        const mix = okOf(firstMix({ ...of, flourVolumeFraction }));
        const same = okOf(firstMix({ ...of, ratio: mix.ratio }));
        expect(same.flourKg / mix.flourKg).toBeCloseTo(1, 9);
        expect(mix.densityGCm3 * volumeL).toBeCloseTo(mix.flourKg + mix.silicaKg + mix.waterKg, 6);
        expect(mix.flourKg / flourGCm3 + mix.solL).toBeCloseTo(volumeL, 6);
      }),
      runs,
    ));

  test("grains packed until nothing flows are refused", () =>
    expect(
      firstMix({ volumeL: 1, ratio: 10, flourGCm3: 2.2, binderGCm3: 1.2, binderSilica: 0.3 }),
    ).toMatchObject({ code: "cannot-flow", limit: 0.62 }));
});

describe("solids from density", () => {
  test("zircon at 2.80 in fresh sol", () => {
    const known = okOf(
      solidsFromDensity({ densityGCm3: 2.8, flourGCm3: 4.6, liquidGCm3: 1.2, silicaInLiquid: 0.3 }),
    );
    expect(known.flourVolumeFraction).toBeCloseTo(0.4706, 4);
    expect(known.ratio).toBeCloseTo(3.407, 3);
    expect(known.solids).toBeCloseTo(0.8412, 4);
  });

  test("zircon by the oven; fused silica by the oven is refused and asks for the liquor's density", () => {
    const of = { densityGCm3: 2.84131, ovenSolids: 0.847826 };
    const known = okOf(solidsFromDensity({ ...of, flourGCm3: 4.6 }));
    expect(Math.abs(known.ratio / 3.6 - 1)).toBeLessThan(0.005);
    expect(Math.abs(known.silicaInLiquid / 0.3 - 1)).toBeLessThan(0.005);
    const refused = { code: "liquor-density-needed", because: "flour-like-silica" };
    expect(solidsFromDensity({ ...of, flourGCm3: 2.2 })).toMatchObject(refused);
    const like = solidsFromDensity({ densityGCm3: 1.68, ovenSolids: 0.741, flourGCm3: 2.2 });
    expect(like).toMatchObject(refused);
    if (!like.ok && like.code === "liquor-density-needed") expect(like.solids).toBeCloseTo(0.742, 3);
  });

  test("with neither liquor nor oven one measurement is short", () =>
    expect(solidsFromDensity({ densityGCm3: 2.8, flourGCm3: 4.6 })).toMatchObject({
      code: "liquor-density-needed",
      because: "one-measurement-short",
      solids: null,
    }));

  test("a density outside flour and liquid, and an oven that contradicts it, are refused", () => {
    expect(solidsFromDensity({ densityGCm3: 1.1, flourGCm3: 4.6, liquidGCm3: 1.2 })).toMatchObject({
      code: "density-not-between",
    });
    expect(solidsFromDensity({ densityGCm3: 4.7, flourGCm3: 4.6, ovenSolids: 0.8 })).toMatchObject({
      code: "density-not-between",
    });
    expect(solidsFromDensity({ densityGCm3: 2.8, flourGCm3: 4.6, ovenSolids: 0.3 })).toMatchObject({
      code: "oven-and-density-disagree",
    });
    expect(solidsFromDensity({ densityGCm3: 2.8, flourGCm3: 4.6, liquidGCm3: 1.9 })).toMatchObject({
      code: "liquor-not-a-sol",
    });
    expect(() => solidsFromDensity({ densityGCm3: 1680, flourGCm3: 2.2 })).toThrow(/not kg/);
  });

  test("whatever was mixed is found again, by liquor and by oven", () =>
    fc.assert(
      fc.property(span(0.2, 0.6), span(2.45, 5), span(0.1, 0.45), (fraction, flourGCm3, silica) => {
        const mix = okOf(
          firstMix({
            volumeL: 1,
            flourVolumeFraction: fraction,
            flourGCm3,
            binderGCm3: solDensityGCm3({ silica }),
            binderSilica: silica,
          }),
        );
        const { densityGCm3 } = mix;
        const byLiquor = okOf(
          solidsFromDensity({ densityGCm3, flourGCm3, liquidGCm3: solDensityGCm3({ silica }) }),
        );
        const byOven = okOf(solidsFromDensity({ densityGCm3, flourGCm3, ovenSolids: mix.solids }));
        for (const known of [byLiquor, byOven]) {
          expect(known.ratio / mix.ratio).toBeCloseTo(1, 6);
          expect(known.silicaInLiquid).toBeCloseTo(silica, 6);
          expect(known.solids).toBeCloseTo(mix.solids, 6);
          expect(known.flourVolumeFraction).toBeCloseTo(fraction, 6);
        }
      }),
      runs,
    ));
});

describe("make-up", () => {
  test("a litre of water went from twenty, and a litre brings it back", () => {
    const water = okOf(makeUpWaterL({ volumeL: 19, densityGCm3: 1.717, targetGCm3: 1.6811 }));
    expect(Math.abs(water.waterL - 1.001)).toBeLessThan(0.005);
    const zircon = okOf(makeUpWaterL({ volumeL: 15, densityGCm3: 2.92, targetGCm3: 2.85 }));
    expect(zircon.waterL).toBeCloseTo(0.568, 3);
  });

  test("water is refused where it would lower a density already too low", () => {
    expect(makeUpWaterL({ volumeL: 19, densityGCm3: 1.66, targetGCm3: 1.6811 })).toMatchObject({
      code: "water-lowers-density",
    });
    expect(makeUpWaterL({ volumeL: 19, densityGCm3: 1.66, targetGCm3: 0.99 })).toMatchObject({
      code: "target-out-of-reach",
    });
    expect(makeUpWaterL({ volumeL: 19, densityGCm3: 1.68, targetGCm3: 1.68 })).toMatchObject({ waterL: 0 });
  });

  test("eighteen litres at 1.640 want 3.046 kg of flour, fifteen of zircon at 2.75 want 3.943", () => {
    const silica = okOf(flourToLift({ volumeL: 18, densityGCm3: 1.64, targetGCm3: 1.68, flourGCm3: 2.2 }));
    expect(Math.abs(silica.flourKg - 3.046)).toBeLessThan(0.005);
    expect(Math.abs(silica.newVolumeL - 19.385)).toBeLessThan(0.005);
    const zircon = okOf(flourToLift({ volumeL: 15, densityGCm3: 2.75, targetGCm3: 2.85, flourGCm3: 4.6 }));
    expect(zircon.flourKg).toBeCloseTo(3.943, 3);
    const over = { volumeL: 18, densityGCm3: 1.7, targetGCm3: 1.68, flourGCm3: 2.2 };
    expect(flourToLift(over)).toMatchObject({ code: "flour-raises-density" });
    expect(flourToLift({ ...over, targetGCm3: 2.3 })).toMatchObject({ code: "target-out-of-reach" });
  });

  test("what is proposed brings the density to the target, by weight over volume", () =>
    fc.assert(
      fc.property(
        span(1, 500),
        span(1.3, 2.1),
        span(0, 0.8),
        span(2.95, 5),
        (volumeL, low, rise, flourGCm3) => {
          const high = low + rise;
          const water = okOf(makeUpWaterL({ volumeL, densityGCm3: high, targetGCm3: low }));
          const watered = (volumeL * high + water.waterKg) / (volumeL + water.waterL);
          expect(Math.abs(watered - low)).toBeLessThan(1e-9);
          const flour = okOf(flourToLift({ volumeL, densityGCm3: low, targetGCm3: high, flourGCm3 }));
          const lifted = (volumeL * low + flour.flourKg) / (volumeL + flour.flourKg / flourGCm3);
          expect(Math.abs(lifted - high)).toBeLessThan(1e-9);
        },
      ),
      runs,
    ));

  test("a hundredth of density is 294 mL of water in 20 L of fused silica, 108 mL in zircon", () => {
    const silica = okOf(makeUpWaterL({ volumeL: 20, densityGCm3: 1.69, targetGCm3: 1.68 }));
    const zircon = okOf(makeUpWaterL({ volumeL: 20, densityGCm3: 2.86, targetGCm3: 2.85 }));
    expect(silica.waterL).toBeCloseTo(0.294, 3);
    expect(zircon.waterL).toBeCloseTo(0.108, 3);
  });
});

describe("sol", () => {
  test.each(truth.sols.rows)("a sol of $silica weighs $gCm3", ({ silica, gCm3 }) => {
    expect(Math.abs(solDensityGCm3({ silica }) - gCm3)).toBeLessThan(6e-5);
    expect(Math.abs(okOf(liquorSilica({ liquorGCm3: gCm3 })).silica - silica)).toBeLessThan(1e-4);
  });

  test("liquor of 1.215 holds 32.44 %, the label's 1.20 holds 30.6 %", () => {
    expect(okOf(liquorSilica({ liquorGCm3: 1.215 })).silica).toBeCloseTo(0.3244, 4);
    expect(okOf(liquorSilica({ liquorGCm3: 1.2 })).silica).toBeCloseTo(0.306, 3);
  });

  test("a liquor lighter than water is no sol", () =>
    expect(liquorSilica({ liquorGCm3: 0.99 })).toMatchObject({ code: "liquor-not-a-sol" }));
});
