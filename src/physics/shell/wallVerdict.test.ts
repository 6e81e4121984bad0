import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { WallPart } from "./wall.ts";
import { headNeeds, lnSdOf, wallIndex, wallVerdict, type WallLoad, type WallWord } from "./wallVerdict.ts";

const limits = { carries: 1.2, marginal: 0.8, thin: 0.4 };
const usual = { strength: 2, wall: 1.25, head: 1.1 };
const square: WallPart = { kind: "flat", widthMm: 100, lengthMm: 100 };
/** 0.4 m of silicon bronze. */
const load: WallLoad = { pressurePa: 30_607, part: square, morMPa: 4, spreads: usual };
const judge = (wallMm: number, more: Partial<Parameters<typeof wallVerdict>[0]> = {}) =>
  wallVerdict({ ...load, wallMm, limits, floorMm: 0, coatMm: 1.23, ...more });

/** Abramowitz & Stegun, Handbook of Mathematical Functions, 26.2.17: the normal distribution to 7.5e-8. */
function normal(x: number): number {
  if (x < 0) return 1 - normal(-x);
  const t = 1 / (1 + 0.2316419 * x);
  const b = [0.31938153, -0.356563782, 1.781477937, -1.821255978, 1.330274429];
  const sum = b.reduce((all, each, i) => all + each * t ** (i + 1), 0);
  return 1 - (Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI)) * sum;
}

describe("the index", () => {
  test("by hand: a square of 100 mm under 0.4 m of bronze in 8 mm", () => {
    // Load 0.3078·0.030607·100²/8² = 1.472 MPa; ln(4/1.472) = 0.9997.
    // Spreads: ln 2/1.645 = 0.42137, twice ln 1.25/1.645 = 0.27130, ln 1.1/1.645 = 0.05794; together 0.50449.
    expect(wallIndex({ ...load, wallMm: 8 })).toBeCloseTo(0.9997 / 0.50449, 3);
  });

  test("by hand: a round bears with its wall, not with the square of it", () => {
    // 0.5·4·6/(0.030607·50) = 7.841; spreads 0.42137, 0.13565, 0.05794: 0.44643.
    const part: WallPart = { kind: "round", diameterMm: 100 };
    expect(wallIndex({ ...load, part, wallMm: 6 })).toBeCloseTo(Math.log(7.841) / 0.44643, 3);
  });

  test("a spread holds the middle nine in ten", () => {
    // Between the likely figure divided by and times the spread lie ± 1.645 standard deviations.
    const reach = Math.log(2) / lnSdOf(2);
    expect(normal(reach) - normal(-reach)).toBeCloseTo(0.9, 4);
  });

  test("is what drawing shells at random gives: as many break as the normal distribution says", () => {
    // Box and Muller on a fixed multiplicative sequence: strength, wall and head drawn apart.
    let seed = 12_345;
    const uniform = (): number => (seed = (seed * 48_271) % 2_147_483_647) / 2_147_483_647;
    const draw = (): number => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
    for (const wallMm of [5, 7]) {
      let broken = 0;
      const shells = 200_000;
      for (let i = 0; i < shells; i += 1) {
        const strength = 4 * 2 ** (draw() / 1.645);
        const wall = wallMm * 1.25 ** (draw() / 1.645);
        const pressure = 0.030607 * 1.1 ** (draw() / 1.645);
        if (strength < (0.3078 * pressure * 100 ** 2) / wall ** 2) broken += 1;
      }
      expect(broken / shells).toBeCloseTo(normal(-wallIndex({ ...load, wallMm })), 2);
    }
  });

  test("where nothing presses there is nothing to break", () => {
    expect(judge(1, { pressurePa: 0 })).toMatchObject({ word: "carries", index: Infinity, neededMm: 0 });
  });

  test("no wall at all fails, and figures no sum takes are refused", () => {
    expect(judge(0).word).toBe("fails");
    expect(() => judge(501)).toThrow(/wallMm/);
    expect(() => judge(5, { limits: { carries: 1, marginal: 1.1, thin: 0.4 } })).toThrow(/marginal/);
    expect(() => lnSdOf(0.9)).toThrow(/spread/);
  });
});

describe("the word", () => {
  // Index i at a wall of 100·√(0.3078·0.030607·e^(0.50449·i)/4) mm: 4.853·e^(0.252245·i).
  // 1.2 → 6.57 mm, asked for as 7; 0.8 → 5.94 mm; 0.4 → 5.37 mm.
  test.each<[number, WallWord]>([
    [7, "carries"],
    [6.9, "marginal"],
    [6.0, "marginal"],
    [5.9, "thin"],
    [5.4, "thin"],
    [5.3, "fails"],
  ])("%f mm: %s", (wallMm, word) => expect(judge(wallMm).word).toBe(word));

  test("needed wall and coats are one figure with the word: 7 mm, and a coat for each 1.23 mm short", () => {
    expect(headNeeds(load, { least: 1.2 })).toMatchObject({ mm: 7 });
    expect(headNeeds(load, { least: 1.2 }).exactMm).toBeCloseTo(4.853 * Math.exp(0.252245 * 1.2), 2);
    expect(judge(6.9)).toMatchObject({ neededMm: 7, coatsToAdd: 1 });
    expect(judge(4.5)).toMatchObject({ neededMm: 7, coatsToAdd: 3 });
  });

  test("a wall is judged as it is shown: 6.96 is 7.0, 6.94 is 6.9", () => {
    expect(judge(6.96)).toMatchObject({ likelyMm: 7, word: "carries", coatsToAdd: 0 });
    expect(judge(6.94)).toMatchObject({ likelyMm: 6.9, word: "marginal", coatsToAdd: 1 });
  });

  test("the least wall for handling sets what is needed, not the word", () => {
    expect(judge(8, { floorMm: 10 })).toMatchObject({ word: "carries", neededMm: 10, coatsToAdd: 2 });
  });

  test("the range of a wall is its middle nine in ten", () => {
    const { lowMm, likelyMm, highMm } = judge(8);
    expect([lowMm, likelyMm, highMm]).toEqual([6.4, 8, 10]);
  });
});

const side = fc.double({ min: 10, max: 600, noNaN: true });
const part: fc.Arbitrary<WallPart> = fc.oneof(
  fc.record({ kind: fc.constant("flat" as const), widthMm: side, lengthMm: side }),
  fc.record({ kind: fc.constant("round" as const), diameterMm: side }),
);
const spread = fc.double({ min: 1.01, max: 4, noNaN: true });
const any = fc.record({
  pressurePa: fc.double({ min: 500, max: 90_000, noNaN: true }),
  part,
  morMPa: fc.double({ min: 0.5, max: 12, noNaN: true }),
  spreads: fc.record({ strength: spread, wall: spread, head: spread }),
  wallMm: fc.double({ min: 1, max: 60, noNaN: true }),
  floorMm: fc.double({ min: 0, max: 12, noNaN: true }),
  coatMm: fc.double({ min: 0.3, max: 2, noNaN: true }),
});
const more = fc.double({ min: 1, max: 3, noNaN: true });
const ranks: Record<WallWord, number> = { fails: 0, thin: 1, marginal: 2, carries: 3 };

describe("laws of the verdict", () => {
  test("more wall, less head, more strength and less spread never make it worse", () =>
    fc.assert(
      fc.property(any, more, fc.nat({ max: 5 }), (one, by, which) => {
        const less = (of: number): number => 1 + (of - 1) / by;
        const better = {
          ...one,
          ...[
            { wallMm: Math.min(500, one.wallMm * by) },
            { pressurePa: one.pressurePa / by },
            { morMPa: one.morMPa * by },
            { spreads: { ...one.spreads, strength: less(one.spreads.strength) } },
            { spreads: { ...one.spreads, wall: less(one.spreads.wall) } },
            { spreads: { ...one.spreads, head: less(one.spreads.head) } },
          ][which],
        };
        const [before, after] = [wallVerdict({ ...one, limits }), wallVerdict({ ...better, limits })];
        expect(ranks[after.word]).toBeGreaterThanOrEqual(ranks[before.word]);
        expect(after.coatsToAdd).toBeLessThanOrEqual(before.coatsToAdd);
        expect(after.neededMm).toBeLessThanOrEqual(before.neededMm);
      }),
    ));

  test("word, needed wall and coats to add say the same", () =>
    fc.assert(
      fc.property(any, (one) => {
        const found = wallVerdict({ ...one, limits, floorMm: 0 });
        fc.pre(found.neededMm < 500);
        expect(found.word === "carries").toBe(found.likelyMm >= found.neededMm);
        expect(found.word === "carries").toBe(found.coatsToAdd === 0);
        expect(found.neededMm * 2).toBeCloseTo(Math.round(found.neededMm * 2), 9);
        // As many coats as it asks for are enough, where the sum takes a wall of so much.
        const built = found.likelyMm + found.coatsToAdd * one.coatMm;
        fc.pre(built <= 500);
        expect(wallVerdict({ ...one, limits, floorMm: 0, wallMm: built + 0.05 }).word).toBe("carries");
      }),
    ));
});
