import * as fc from "fast-check";
import { expect, test } from "vitest";
import type { Composition } from "./bucketMix.ts";
import { drawn, evaporated, massKg, mixed, restore, solAs, volumeOfL } from "./bucketMix.ts";
import { airBubbleEffect, weighedDensity } from "./weighedDensity.ts";

const made: Composition = { flourKg: 21.17, silicaKg: 3.736, waterKg: 8.717 };
const start = { ratio: 1.7, startSilica: 0.3, addedSilica: 0.3 };
const span = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const anyBucket = fc.record({ flourKg: span(1, 100), silicaKg: span(1, 30), waterKg: span(1, 60) });
const runs = { numRuns: 200 };

test("a kilogram of water dried off is asked back to the gram", () => {
  const now = { silicaKg: 3.736, waterKg: 7.717, flourKg: 21.17 };
  const back = restore({ now, ...start });
  if (!back.ok) throw new Error("refused");
  expect(now.silicaKg / (now.silicaKg + now.waterKg)).toBeCloseTo(0.3262, 4);
  expect(Math.abs(back.waterKg - 1)).toBeLessThan(0.005);
  expect(back.solKg).toBe(0);
  expect(back.flourKg).toBeCloseTo(0, 2);
});

test("dipping takes all three alike and asks nothing back; drying takes water alone", () => {
  const dipped = drawn(made, 5);
  expect(massKg(dipped)).toBeCloseTo(massKg(made) - 5, 9);
  expect(dipped.flourKg / dipped.waterKg).toBeCloseTo(made.flourKg / made.waterKg, 9);
  expect(evaporated(made, 1)).toEqual({ ...made, waterKg: made.waterKg - 1 });
  expect(evaporated(made, 99).waterKg).toBe(0);
  expect(massKg(drawn(made, 99))).toBe(0);
  expect(drawn({ flourKg: 0, silicaKg: 0, waterKg: 0 }, 1)).toEqual({ flourKg: 0, silicaKg: 0, waterKg: 0 });
});

test("twenty litres by the label are 0.2 % more by their parts", () =>
  expect(volumeOfL(made, { flourGCm3: 2.2 }) / 20).toBeCloseTo(1.002, 3));

test("over-watered: stronger sol and flour mend it, sol of the same strength can't", () => {
  const now = { ...made, waterKg: made.waterKg + 1 };
  expect(restore({ now, ...start })).toMatchObject({ code: "over-watered", addedSilica: 0.3 });
  const back = restore({ now, ...start, addedSilica: 0.4 });
  if (!back.ok) throw new Error("refused");
  // By hand: (0.3·(3.736 + 9.717) − 3.736)/0.1.
  expect(back.solKg).toBeCloseTo(3.0, 2);
  expect(back.waterKg).toBe(0);
  expect(back.flourKg).toBeGreaterThan(0);
});

test("too much flour, as when stucco falls in, is met with liquid of the start's strength", () => {
  const now = { ...made, flourKg: made.flourKg + 1.7 };
  const back = restore({ now, ...start, addedSilica: 0.4 });
  if (!back.ok) throw new Error("refused");
  expect(back.solKg * 0.4).toBeCloseTo(0.3 * (back.solKg + back.waterKg), 2);
  expect(back.solKg + back.waterKg).toBeCloseTo(1, 2);
});

test("a restored bucket has its ratio and its silica again, and weighs what went in", () =>
  fc.assert(
    fc.property(anyBucket, span(0.5, 4), span(0.2, 0.35), (now, ratio, startSilica) => {
      const back = restore({ now, ratio, startSilica, addedSilica: 0.4 });
      if (!back.ok) throw new Error("refused");
      const { after, waterKg, solKg, flourKg } = back;
      expect(after.flourKg / (after.silicaKg + after.waterKg) / ratio).toBeCloseTo(1, 6);
      expect(after.silicaKg / (after.silicaKg + after.waterKg)).toBeCloseTo(startSilica, 6);
      expect(massKg(after)).toBeCloseTo(massKg(now) + waterKg + solKg + flourKg, 6);
      expect(Math.min(waterKg, solKg, flourKg)).toBeGreaterThanOrEqual(0);
    }),
    runs,
  ));

test("mixing conserves every kind of mass, and its volume, in any order", () =>
  fc.assert(
    fc.property(anyBucket, anyBucket, span(0, 20), (one, other, solKg) => {
      const sol = solAs({ solKg, silica: 0.3 });
      expect(massKg(sol)).toBeCloseTo(solKg, 9);
      const all = mixed(mixed(one, other), sol);
      expect(massKg(all)).toBeCloseTo(massKg(one) + massKg(other) + solKg, 6);
      expect(massKg(mixed(one, mixed(sol, other)))).toBeCloseTo(massKg(all), 6);
      const flour = { flourGCm3: 2.65 };
      expect(volumeOfL(all, flour)).toBeCloseTo(
        volumeOfL(one, flour) + volumeOfL(other, flour) + volumeOfL(sol, flour),
        6,
      );
    }),
    runs,
  ));

test("a negative lot is refused", () =>
  expect(() => mixed(made, { flourKg: -1, silicaKg: 0, waterKg: 0 })).toThrow(RangeError));

test("a hundred millilitres on a scale of 0.1 g are good to 0.003, ten are not", () => {
  const good = weighedDensity({ fullG: 268, emptyG: 100, volumeMl: 100 });
  expect(good.densityGCm3).toBeCloseTo(1.68, 9);
  expect(good.enough).toBe(true);
  expect(good.plusMinusGCm3).toBeCloseTo(0.00268, 9);
  expect(good.leastMl).toBeLessThan(100);
  const poor = weighedDensity({ fullG: 116.8, emptyG: 100, volumeMl: 10 });
  expect(poor.enough).toBe(false);
  const kitchen = weighedDensity({ fullG: 268, emptyG: 100, volumeMl: 100, scaleG: 1 });
  expect(kitchen.enough).toBe(false);
  expect(kitchen.leastMl).toBeGreaterThan(300);
  expect(() => weighedDensity({ fullG: 50, emptyG: 100, volumeMl: 100 })).toThrow(RangeError);
});

test("one per cent of air hides 0.017 and looks like half a litre of water in twenty", () => {
  const air = airBubbleEffect({ densityGCm3: 1.68, volumeL: 20, airFraction: 0.01 });
  expect(air.dropGCm3).toBeCloseTo(0.0168, 9);
  // By hand: 20·0.0168/0.6632.
  expect(air.looksLikeWaterL).toBeCloseTo(0.5066, 3);
  expect(airBubbleEffect({ densityGCm3: 1.68, volumeL: 20, airFraction: 0.5 }).looksLikeWaterL).toBeNull();
  expect(() => airBubbleEffect({ densityGCm3: 1.68, volumeL: 20, airFraction: 1.5 })).toThrow(RangeError);
});
