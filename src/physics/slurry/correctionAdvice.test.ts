import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { CorrectionStep, CorrectionCase } from "./correctionAdvice.ts";
import { correctionAdvice } from "./correctionAdvice.ts";
import { predictionMet } from "./correctionPredicted.ts";

/** Twenty litres of fused silica prime in its band, at its target. */
const good: CorrectionCase = {
  cup: "zahn-4",
  seconds: 25,
  slurryC: 25,
  referenceC: 25,
  bandS: { lowS: 22, highS: 28 },
  densityGCm3: 1.6811,
  target: { densityGCm3: 1.6811, plusMinusGCm3: 0.01 },
  volumeL: 20,
  flourGCm3: 2.2,
  liquidGCm3: 1.2,
  composition: null,
  stirred: false,
};
const adviceFor = (changes: Partial<CorrectionCase>): readonly CorrectionStep[] => {
  const told = correctionAdvice({ ...good, ...changes });
  if (!told.ok) throw new Error("refused");
  return told.advice;
};
const codes = (changes: Partial<CorrectionCase>): readonly string[] =>
  adviceFor(changes).map(({ code }) => code);
const dense = { densityGCm3: 1.717, volumeL: 19 };
const light = { densityGCm3: 1.65 };
const thick = { seconds: 34 };
const thin = { seconds: 18 };

describe("temperature, then density, then seconds", () => {
  test("all in its place: leave it alone", () => expect(codes({})).toEqual(["leave-alone"]));

  test("thick and dense: water, and how much", () => {
    const [step, ...rest] = adviceFor({ ...dense, ...thick });
    expect(rest).toEqual([]);
    if (step?.code !== "add-water") throw new Error(step?.code);
    expect(step.waterL).toBeCloseTo(1.001, 2);
    expect(step.predicted.densityGCm3).toBeCloseTo(1.6811, 9);
  });

  test("thick at the right density is never thinned: gel test", () =>
    expect(codes(thick)).toEqual(["do-not-thin", "gel-test"]));

  test("light and thin: stir and read again first, then flour and binder", () => {
    expect(codes({ ...light, ...thin })).toEqual(["stir-and-read-again"]);
    const [first, second] = adviceFor({ ...light, ...thin, stirred: true });
    expect(first?.code).toBe("weigh-liquor");
    if (second?.code !== "add-flour-and-binder") throw new Error(second?.code);
    // By hand: 20·(1.6811 − 1.65)·2.2/(2.2 − 1.6811).
    expect(second.flourKg).toBeCloseTo(2.637, 2);
    expect(second.solKg).toBeNull();
    expect(second.predicted?.densityGCm3).toBeCloseTo(1.6811, 9);
  });

  test("light but not thin: air, or gelling; thick as well: and don't thin it", () => {
    expect(codes(light)).toEqual(["let-air-out-and-weigh-again", "gel-test"]);
    expect(codes({ ...light, ...thick })).toEqual(["let-air-out-and-weigh-again", "do-not-thin", "gel-test"]);
  });

  test("dense yet thin contradicts itself: read again before anything goes in", () =>
    expect(codes({ ...dense, ...thin })).toEqual(["stir-and-read-again", "clean-and-check-cup"]));

  test("thin at the right density: look at the cup", () =>
    expect(codes(thin)).toEqual(["clean-and-check-cup"]));

  test("dense at the right seconds: water may be it, the liquor tells", () =>
    expect(codes(dense)).toEqual(["add-water", "weigh-liquor"]));

  test("out of its band and never weighed: weigh before adding anything", () => {
    expect(codes({ ...thick, densityGCm3: null })).toEqual(["weigh-density"]);
    expect(codes({ densityGCm3: null })).toEqual(["leave-alone"]);
  });

  test("cold slurry only looks thick: it is judged by what it would read at the reference", () => {
    const told = correctionAdvice({ ...good, seconds: 29, slurryC: 17 });
    if (!told.ok) throw new Error("refused");
    expect(told.seconds).toBe("right");
    expect(told.advice.map(({ code }) => code)).toEqual(["bring-to-temperature", "leave-alone"]);
    expect(codes({ seconds: 29, slurryC: 24 })[0]).not.toBe("leave-alone");
  });

  test("a kept composition names flour, sol and water; over-watered with no stronger sol must dry off", () => {
    const composition = {
      now: { flourKg: 21.17, silicaKg: 3.736, waterKg: 9.717 },
      ratio: 1.7,
      startSilica: 0.3,
      addedSilica: 0.4,
    };
    const bad = { ...light, ...thin, stirred: true };
    const [step] = adviceFor({ ...bad, composition });
    if (step?.code !== "add-flour-and-binder") throw new Error(step?.code);
    expect(step.solKg).toBeCloseTo(3, 2);
    expect(step.flourKg).toBeGreaterThan(0);
    expect(adviceFor({ ...bad, composition: { ...composition, addedSilica: 0.3 } })[0]?.code).toBe(
      "let-water-dry-off",
    );
  });

  test("a time no liquid makes is refused", () =>
    expect(correctionAdvice({ ...good, seconds: 4 })).toMatchObject({ code: "viscosity-not-positive" }));

  test("water is never advised unless the slurry is denser than its target", () =>
    fc.assert(
      fc.property(
        fc.double({ min: 8, max: 60, noNaN: true }),
        fc.double({ min: 1.5, max: 1.85, noNaN: true }),
        fc.boolean(),
        (seconds, densityGCm3, stirred) => {
          const steps = adviceFor({ seconds, densityGCm3, stirred });
          expect(steps.length).toBeGreaterThan(0);
          const water = steps.find((step) => step.code === "add-water");
          if (water) expect(densityGCm3).toBeGreaterThan(1.6911 - 1e-8);
          if (steps.some(({ code }) => code === "do-not-thin")) expect(water).toBeUndefined();
        },
      ),
      { numRuns: 200 },
    ));
});

describe("what the next reading should be", () => {
  const [water] = adviceFor({ ...dense, ...thick });
  if (water?.code !== "add-water") throw new Error("no water");
  const { predicted } = water;

  test("seconds fall by the rule of thickness, with its span", () => {
    const band = predicted.secondsBand;
    if (band === null) throw new Error("no seconds");
    // 34.0 s are 429.2 mm²/s; over 1.358 in viscosity, and the denser slurry counted less: 429.2·1.717/1.681/1.36.
    expect(band.likelyS).toBeGreaterThan(26);
    expect(band.likelyS).toBeLessThan(28);
    expect(band.lowS).toBeLessThan(band.likelyS);
    expect(band.likelyS).toBeLessThan(band.highS);
  });

  test("far off, the density is still foretold and the seconds are not", () => {
    const [far] = adviceFor({ densityGCm3: 1.9, seconds: 70 });
    if (far?.code !== "add-water") throw new Error("no water");
    expect(far.predicted.densityGCm3).toBeCloseTo(1.6811, 9);
    expect(far.predicted.secondsBand).toBeNull();
  });

  test("the next reading is held beside it", () => {
    const met = { predicted, plusMinusGCm3: 0.01 };
    const likely = predicted.secondsBand?.likelyS ?? NaN;
    expect(predictionMet({ ...met, densityGCm3: 1.685, secondsThere: likely })).toMatchObject({
      density: "as-expected",
      seconds: "as-expected",
    });
    expect(predictionMet({ ...met, densityGCm3: 1.66, secondsThere: 2 * likely })).toMatchObject({
      density: "lighter",
      seconds: "thicker",
    });
    expect(predictionMet({ ...met, densityGCm3: 1.7, secondsThere: likely / 2 })).toMatchObject({
      density: "denser",
      seconds: "thinner",
    });
    expect(predictionMet({ ...met, densityGCm3: null, secondsThere: null })).toEqual({
      densityOffGCm3: null,
      density: null,
      seconds: null,
    });
  });
});
