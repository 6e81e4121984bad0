import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import truth from "../../../tests/truth/dryEvidence.json" with { type: "json" };
import type { DryingPair } from "./calibration.ts";
import { lnPair, logPairLikelihood, pairWeights } from "./calibration.ts";
import type { GroupedPair } from "./shopLearning.ts";
import { factorOf, learnShop } from "./shopLearning.ts";
import { fitFactor } from "../../../tests/sums/fitFactor.ts";

const pair = (predictedH: number, wetAtH: number | null, dryAtH: number | null, weight = 1): DryingPair => ({
  predictedS: predictedH * 3600,
  wetAtS: wetAtH === null ? null : wetAtH * 3600,
  dryAtS: dryAtH === null ? null : dryAtH * 3600,
  weight,
});
const exact = truth.exactPairs.hours.map(([predicted, seen]) =>
  pair(predicted ?? NaN, seen ?? NaN, seen ?? NaN),
);
const censored = truth.censoredPairs.hours.map(([predicted, wet, dry]) =>
  pair(predicted ?? NaN, wet ?? null, dry ?? null),
);

describe("one factor", () => {
  test.each(truth.exactPairs.after)("after $pairs exact times is $factor", (row) => {
    const learned = fitFactor(exact.slice(0, row.pairs));
    expect(Math.abs(learned.factor - row.factor)).toBeLessThan(0.005);
    expect(Math.abs(learned.lnMean - row.lnMean)).toBeLessThan(1e-4);
    expect(Math.abs(learned.lnSd - row.lnSd)).toBeLessThan(6e-4);
    expect(Math.abs(learned.safeMultiplier - row.safe)).toBeLessThan(0.006);
  });

  test("from bounds only, of four coats", () => {
    const learned = fitFactor(censored);
    expect(Math.abs(learned.factor - truth.censoredPairs.factor)).toBeLessThan(0.002);
    expect(Math.abs(learned.lnMean - truth.censoredPairs.lnMean)).toBeLessThan(0.001);
    expect(Math.abs(learned.lnSd - truth.censoredPairs.lnSd)).toBeLessThan(0.001);
  });

  test("is the same as on a naive grid of −2…2 by 0.01", () => {
    const weights = censored.map((one, i) => ({
      ...one,
      weight: [pairWeights.weighing, pairWeights.bag, pairWeights.resistance][i] ?? 1,
    }));
    const learned = fitFactor(weights);
    const bell = (z: number): number => {
      let sum = 0;
      const step = (z + 9) / 4000;
      if (step <= 0) return 0;
      for (let i = 0; i < 4000; i++) sum += Math.exp(-0.5 * (-9 + (i + 0.5) * step) ** 2) * step;
      return sum / Math.sqrt(2 * Math.PI);
    };
    let total = 0;
    let first = 0;
    for (let b = -2; b < 2; b += 0.05) {
      const height = weights.reduce(
        (product, { predictedS, wetAtS, dryAtS, weight }) => {
          const at = (s: number | null, none: number) =>
            s === null ? none : bell((Math.log(s / predictedS) - b) / 0.25);
          return product * Math.max(0, at(dryAtS, 1) - at(wetAtS, 0)) ** weight;
        },
        Math.exp(-0.5 * (b / 0.4) ** 2),
      );
      total += height;
      first += height * b;
    }
    expect(Math.abs(learned.lnMean - first / total)).toBeLessThan(2e-4);
  });

  test("found dry next morning never makes a shop slow: it only bounds from above", () => {
    const mornings = Array.from({ length: 12 }, () => pair(3, null, 14));
    expect(fitFactor(mornings).factor).toBeLessThan(1.001);
    expect(fitFactor(Array.from({ length: 12 }, () => pair(3, 14, 14))).factor).toBe(3);
  });

  test("stays within 0.33 and 3, and says that it was asked for more", () => {
    const slow = fitFactor(Array.from({ length: 30 }, () => pair(1, 6, 7)));
    expect(slow).toMatchObject({ factor: 3, limited: true });
    expect(fitFactor(Array.from({ length: 30 }, () => pair(7, 1, 1.1)))).toMatchObject({
      factor: 0.33,
      limited: true,
    });
    expect(fitFactor(exact).limited).toBe(false);
  });

  test("a pair that says nothing, or is dry before wet, is refused", () => {
    expect(() => fitFactor([pair(2, null, null)])).toThrow(/neither/);
    expect(() => fitFactor([pair(2, 5, 3)])).toThrow(/wetAtS/);
    expect(() => fitFactor([pair(NaN, 1, 2)])).toThrow(/predictedS/);
  });

  test("wet and dry seen a rounding apart teach what one moment teaches", () => {
    const moment: DryingPair = { predictedS: 3600, wetAtS: 3600, dryAtS: 3600, weight: 1 };
    const quick: DryingPair = {
      predictedS: 3600,
      wetAtS: 555.8521850645539,
      dryAtS: 555.8521850645539,
      weight: 1,
    };
    for (const apartS of [1e-12, 1e-9, 1e-7]) {
      const { factor, lnSd } = fitFactor([{ ...moment, dryAtS: 3600 + apartS }, quick]);
      const once = fitFactor([moment, quick]);
      expect(factor).toBeCloseTo(once.factor, 9);
      expect(lnSd).toBeCloseTo(once.lnSd, 9);
    }
  });

  test("an absurd pair far in the tail still gives numbers", () => {
    const learned = fitFactor([pair(1, 400, 500), pair(1000, 0.01, 0.02)]);
    expect(Number.isFinite(learned.lnMean)).toBe(true);
    expect(learned.lnSd).toBeGreaterThan(0);
  });

  test("more weight never leaves it less sure, and order never matters", () =>
    fc.assert(
      fc.property(
        fc.array(
          fc.tuple(
            fc.double({ min: -0.8, max: 0.8, noNaN: true }),
            fc.double({ min: 0.05, max: 0.8, noNaN: true }),
          ),
          {
            minLength: 1,
            maxLength: 6,
          },
        ),
        (bounds) => {
          const pairs = bounds.map(([low, width]) => pair(1, Math.exp(low), Math.exp(low + width)));
          const learned = fitFactor(pairs);
          expect(learned.lnSd).toBeLessThanOrEqual(
            fitFactor(pairs.map((one) => ({ ...one, weight: 0.5 }))).lnSd + 1e-6,
          );
          expect(fitFactor(pairs.toReversed()).lnMean).toBeCloseTo(learned.lnMean, 9);
        },
      ),
      { numRuns: 60 },
    ));
});

/** A random shop: repeatable throws, bell-shaped by Box and Muller. */
function shopDice(seed: number) {
  let state = (seed * 2_654_435_761 + 12_345) % 2_147_483_647 || 1;
  for (let i = 0; i < 5; i++) state = (state * 48_271) % 2_147_483_647;
  const dice = () => (state = (state * 48_271) % 2_147_483_647) / 2_147_483_647;
  return { dice, bell: () => Math.sqrt(-2 * Math.log(dice())) * Math.cos(2 * Math.PI * dice()) };
}

/** One coat of true time `t` = predicted·e^y, seen only when the maker happened to look. */
function lookedAt(y: number, dice: () => number): DryingPair {
  const visits = Array.from({ length: 2 + Math.floor(4 * dice()) }, () => Math.exp(-1.3 + 2.6 * dice()));
  const t = Math.exp(y);
  const wet = Math.max(...visits.filter((at) => at < t), 0);
  const dry = Math.min(...visits.filter((at) => at >= t), Infinity);
  return pair(1, wet === 0 ? null : wet, dry === Infinity ? null : dry);
}

describe("a thousand shops that only looked now and then", () => {
  test("their factor lies in its 90 % interval in 90 % ± 3 % of them", () => {
    let held = 0;
    for (let seed = 1; seed <= 1000; seed++) {
      const { dice, bell } = shopDice(seed);
      const b = 0.4 * bell();
      const pairs = Array.from({ length: 1 + (seed % 9) }, () => lookedAt(b + 0.25 * bell(), dice));
      const { low, high } = fitFactor(pairs);
      if (low <= Math.exp(b) && Math.exp(b) <= high) held++;
    }
    expect(held).toBeGreaterThan(870);
    expect(held).toBeLessThan(930);
  });

  test("so do, in 400 of them, shop and groups fitted together, scatter pooled from eight on", () => {
    let shops = 0;
    let groups = 0;
    let unseen = 0;
    for (let seed = 1; seed <= 400; seed++) {
      const { dice, bell } = shopDice(seed + 5000);
      const b = 0.4 * bell();
      const own = [0.2 * bell(), 0.2 * bell(), 0.2 * bell()];
      const pairs = Array.from({ length: 3 + (seed % 10) }, (_, i): GroupedPair => {
        const group = i % 2;
        return { ...lookedAt(b + (own[group] ?? 0) + 0.25 * bell(), dice), group: `${group}` };
      });
      const learned = learnShop(pairs);
      const holds = ({ low, high }: { low: number; high: number }, ln: number) =>
        low <= Math.exp(ln) && Math.exp(ln) <= high;
      if (holds(learned.shop, b)) shops++;
      if (holds(factorOf(learned, "0"), b + (own[0] ?? 0))) groups++;
      if (holds(factorOf(learned, "never"), b + (own[2] ?? 0))) unseen++;
    }
    for (const held of [shops, groups, unseen]) {
      expect(held).toBeGreaterThan(0.86 * 400);
      expect(held).toBeLessThan(0.94 * 400);
    }
  });
});

describe("shop and groups", () => {
  const grouped = (pairs: readonly DryingPair[], group: string): readonly GroupedPair[] =>
    pairs.map((one) => ({ ...one, group }));

  test("a shop that has seen nothing has the starting spread for any coat", () => {
    const learned = learnShop([]);
    expect(learned.shop).toMatchObject({ pairs: 0 });
    expect(factorOf(learned, "backup/still").safeMultiplier).toBeCloseTo(1.83, 2);
  });

  test("a group that differs has its own factor; one never seen has the shop's, less surely", () => {
    const slow = grouped(
      Array.from({ length: 6 }, () => pair(2, 3, 3.4)),
      "backup/still",
    );
    const quick = grouped(
      Array.from({ length: 6 }, () => pair(2, 1.9, 2.1)),
      "prime/still",
    );
    const learned = learnShop([...slow, ...quick]);
    expect(factorOf(learned, "backup/still").factor).toBeGreaterThan(1.35);
    expect(factorOf(learned, "prime/still").factor).toBeLessThan(1.15);
    expect(learned.shop.factor).toBeGreaterThan(1.1);
    expect(learned.shop.factor).toBeLessThan(1.4);
    const never = factorOf(learned, "seal/still");
    expect(never.factor).toBeCloseTo(learned.shop.factor, 3);
    expect(never.lnSd).toBeGreaterThan(learned.shop.lnSd);
  });

  test("one exact time is split between shop and group by the closed form", () => {
    const one = learnShop(grouped([pair(1, 1.5, 1.5)], "x"));
    const variance = 1 / (1 / 0.16 + 1 / 0.1025);
    expect(one.shop.lnSd).toBeCloseTo(Math.sqrt(variance), 4);
    expect(one.shop.lnMean).toBeCloseTo((variance * Math.log(1.5)) / 0.1025, 4);
    const own = 1 / (1 / 0.2 + 1 / 0.0625);
    expect(factorOf(one, "x").lnSd).toBeCloseTo(Math.sqrt(own), 4);
    expect(factorOf(one, "x").lnMean).toBeCloseTo((own * Math.log(1.5)) / 0.0625, 4);
  });

  test("bounds in two groups give what a plain sum over shop and both deviations gives", () => {
    const a = [pair(2, 2.2, 3), pair(2, null, 3, 0.3)];
    const b = [pair(3, 2.4, null), pair(3, 2, 4, 0.7), pair(3, 3, 3)];
    const learned = learnShop([...grouped(a, "a"), ...grouped(b, "b")]);
    const likelihood = (pairs: readonly DryingPair[], ln: number) =>
      Math.exp(pairs.reduce((sum, one) => sum + logPairLikelihood(lnPair(one), ln, 0.25), 0));
    const grid = Array.from({ length: 201 }, (_, i) => -2 + i / 50);
    const bell = (x: number, variance: number) => Math.exp((-0.5 * x * x) / variance);
    const said = (pairs: readonly DryingPair[]) => grid.map((ln) => likelihood(pairs, ln));
    const [ofA, ofB] = [said(a), said(b)];
    const smear = (of: readonly number[], shop: number) =>
      grid.reduce((sum, ln, i) => sum + bell(ln - shop, 0.04) * (of[i] ?? 0), 0);
    const [toA, toB] = [ofA, ofB].map((of) => grid.map((shop) => smear(of, shop)));
    const mean = (heights: readonly number[]) =>
      grid.reduce((sum, ln, i) => sum + ln * (heights[i] ?? 0), 0) /
      heights.reduce((sum, one) => sum + one, 0);
    const shop = grid.map((ln, i) => bell(ln, 0.16) * (toA?.[i] ?? 0) * (toB?.[i] ?? 0));
    const groupA = grid.map((ln, i) => {
      const through = grid.reduce(
        (sum, one, k) => sum + bell(ln - one, 0.04) * bell(one, 0.16) * (toB?.[k] ?? 0),
        0,
      );
      return (ofA[i] ?? 0) * through;
    });
    expect(learned.shop.lnMean).toBeCloseTo(mean(shop), 4);
    expect(factorOf(learned, "a").lnMean).toBeCloseTo(mean(groupA), 4);
  });

  test("from eight pairs on a tidy shop's scatter shrinks and an untidy one's grows", () => {
    const tidy = grouped(
      Array.from({ length: 20 }, () => pair(1, 1.2, 1.2)),
      "x",
    );
    const untidy = grouped(
      Array.from({ length: 20 }, (_, i) => pair(1, i % 2 ? 0.6 : 1.8, i % 2 ? 0.6 : 1.8)),
      "x",
    );
    expect(learnShop(tidy.slice(0, 7)).scatter).toBe(0.25);
    expect(learnShop(tidy).scatter).toBeCloseTo(Math.sqrt((8 * 0.0625) / 28), 1);
    expect(learnShop(untidy).scatter).toBeGreaterThan(0.4);
  });

  test("tight bounds on both sides shrink it as exact times do", () => {
    const bounds = grouped(
      Array.from({ length: 20 }, () => pair(1, 1.15, 1.25)),
      "x",
    );
    const times = grouped(
      Array.from({ length: 20 }, () => pair(1, 1.2, 1.2)),
      "x",
    );
    expect(Math.abs(learnShop(bounds).scatter - learnShop(times).scatter)).toBeLessThan(0.005);
  });

  test("pairs that only bound say little of the scatter and leave it near the start", () => {
    const mornings = grouped(
      Array.from({ length: 40 }, () => pair(3, null, 14)),
      "x",
    );
    expect(Math.abs(learnShop(mornings).scatter - 0.25)).toBeLessThan(0.02);
  });
});
