import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import truth from "../../../tests/truth/dryEvidence.json" with { type: "json" };
import { lnPair } from "./calibration.ts";
import { factorOf, learnShop, type GroupedPair } from "./shopLearning.ts";
import { doAgree, mostUntilAgreed, trustedLearning } from "./trustedLearning.ts";

const pair = (wetH: number | null, dryH: number | null, predictedH = 1, group = "x"): GroupedPair => ({
  predictedS: predictedH * 3600,
  wetAtS: wetH === null ? null : wetH * 3600,
  dryAtS: dryH === null ? null : dryH * 3600,
  weight: 1,
  group,
});
const exact = (ratio: number, group = "x"): GroupedPair => pair(ratio, ratio, 1, group);

const anyPair = fc
  .record({
    ln: fc.double({ min: -3, max: 3, noNaN: true }),
    width: fc.double({ min: 0, max: 3, noNaN: true }),
    seen: fc.constantFrom("both", "wet", "dry"),
    group: fc.constantFrom("a", "b"),
    weight: fc.constantFrom(0.5, 0.7, 1),
  })
  .map(({ ln, width, seen, group, weight }) => ({
    ...pair(seen === "dry" ? null : Math.exp(ln), seen === "wet" ? null : Math.exp(ln + width), 1, group),
    weight,
  }));

describe("until three coats agree", () => {
  test("one coat at half the model's time moves the shop, its group and any other to 0.8, no lower", () => {
    const learned = trustedLearning([exact(0.5)]);
    expect(learned.shop.factor).toBeCloseTo(0.8, 9);
    for (const group of ["x", "never seen"]) expect(factorOf(learned, group).factor).toBeCloseTo(0.8, 6);
    expect(trustedLearning([exact(2)]).shop.factor).toBeCloseTo(1.25, 9);
  });

  test("a held factor is told no surer than the fit has it, and its interval still reaches to where the fit had it", () => {
    const pairs = [exact(0.5)];
    const [held, fitted] = [trustedLearning(pairs).shop, learnShop(pairs).shop];
    expect(held.lnSd).toBeGreaterThanOrEqual(fitted.lnSd);
    expect(held.low).toBeLessThanOrEqual(fitted.low);
    expect(held.high).toBeGreaterThan(held.factor);
    expect(held.safeMultiplier).toBeGreaterThan(fitted.safeMultiplier);
  });

  test("coats that differ, that were seen from one side, or whose bounds lie far apart do not agree", () => {
    for (const pairs of [
      [exact(0.5), exact(0.5)],
      [exact(0.3), exact(0.5), exact(0.9)],
      [exact(0.5), pair(null, 0.5), pair(null, 0.5)],
      [exact(0.5), pair(0.2, 1.2), pair(0.2, 1.2)],
    ]) {
      expect(doAgree(pairs.map(lnPair))).toBe(false);
      expect(trustedLearning(pairs).shop.factor).toBeCloseTo(0.8, 9);
    }
  });
});

describe("once three coats agree", () => {
  test("the formula holds: the handbook's three pairs and its five", () => {
    for (const count of [3, 5]) {
      const pairs = truth.exactPairs.hours
        .slice(0, count)
        .map(([predictedH = NaN, tH = NaN]) => pair(tH, tH, predictedH));
      expect(doAgree(pairs.map(lnPair))).toBe(true);
      expect(trustedLearning(pairs)).toEqual(learnShop(pairs));
    }
  });

  test("three at half the model's time are believed", () => {
    const pairs = [exact(0.48), exact(0.5), exact(0.55)];
    expect(trustedLearning(pairs)).toEqual(learnShop(pairs));
    expect(trustedLearning(pairs).shop.factor).toBeLessThan(0.65);
  });

  test("three that were still wet past 1.25 times the model's time are believed: to wait longer does no harm", () => {
    const wet = pair(2, null);
    expect(trustedLearning([wet, wet]).shop.factor).toBeLessThanOrEqual(1.25);
    expect(trustedLearning([wet, wet, wet]).shop.factor).toBeGreaterThan(1.4);
  });

  test("a group is held within × ÷ 1.25 of the shop until three of its own agree", () => {
    const shop = [exact(1.1), exact(1.15), exact(1.2)];
    const learned = trustedLearning([...shop, exact(0.3, "other")]);
    expect(factorOf(learned, "other").factor).toBeCloseTo(learned.shop.factor / mostUntilAgreed, 6);
    const own = ["a", "b", "c"].map(() => exact(0.5, "other"));
    expect(trustedLearning([...shop, ...own])).toEqual(learnShop([...shop, ...own]));
  });
});

test("whatever the pairs, a factor stays within 0.33 and 3; and near 1 until three agree", () =>
  fc.assert(
    fc.property(fc.array(anyPair, { maxLength: 7 }), (pairs) => {
      const learned = trustedLearning(pairs);
      const all = [learned.shop, ...["a", "b", "never"].map((group) => factorOf(learned, group))];
      const isHeld = !doAgree(pairs.map(lnPair));
      const slack = 1e-6;
      for (const { factor, low, high, lnSd } of all) {
        expect(factor).toBeGreaterThanOrEqual((isHeld ? 1 / mostUntilAgreed : 0.33) - slack);
        expect(factor).toBeLessThanOrEqual((isHeld ? mostUntilAgreed : 3) + slack);
        expect(low).toBeLessThan(high);
        expect(Number.isFinite(lnSd)).toBe(true);
      }
    }),
    { numRuns: 60 },
  ));
