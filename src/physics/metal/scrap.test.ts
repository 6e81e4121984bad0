import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import truth from "../../../tests/truth/metal.json" with { type: "json" };
import { judgeCharge, judgeShare } from "./chargeVerdict.ts";
import { mixCharge, readyCharge, shareOfSet, type ChargeItem, type Contents, type Element } from "./scrap.ts";

const item = (massKg: number, contents: Contents, more: Partial<ChargeItem> = {}): ChargeItem => ({
  name: "scrap",
  massKg,
  contents,
  isBerylliumSuspect: false,
  ...more,
});
const exactly = (share: number) => ({ low: share, high: share });
const rest = { low: 0, high: 1 };
const siliconBronze = { cu: exactly(0.949), si: exactly(0.04), mn: exactly(0.011) };
const sure = (share: number) => ({ low: share, likely: share, high: share });

describe("what a charge is made of", () => {
  test("silicon bronze thinned with copper pipe fails on silicon", () => {
    const items = [item(6, siliconBronze), item(4, { cu: exactly(1) })];
    const mix = mixCharge({ items, recovery: {} });
    const shares = mix.ok ? mix.shares : {};
    expect(shares.si?.likely).toBeCloseTo(truth.scrap.siliconShare, 12);
    expect(shares.mn?.likely).toBeCloseTo(truth.scrap.manganeseShare, 12);
    expect(shares.cu?.low).toBeCloseTo(shares.cu?.high ?? NaN, 12);
    const limits = [{ of: ["si"], min: 0.035, max: 0.045 }] as const;
    expect(judgeCharge({ items, recovery: {}, limits })).toMatchObject({ ok: true, verdict: "fail" });
  });

  test("what burns off makes the rest richer", () => {
    const brass = item(10, { cu: exactly(0.7), zn: exactly(0.3) });
    const mix = mixCharge({ items: [brass], recovery: { zn: { low: 0.9, likely: 0.95, high: 0.98 } } });
    if (!mix.ok) throw new Error(mix.code);
    expect(mix.meltKg.low).toBeCloseTo(7 + 2.7, 12);
    expect(mix.meltKg.high).toBeCloseTo(7 + 2.94, 12);
    expect(mix.shares.zn?.likely).toBeCloseTo(2.85 / 9.85, 12);
    expect(mix.shares.zn?.low).toBeCloseTo(2.7 / 9.7, 12);
    expect(mix.shares.cu?.high).toBeCloseTo(7 / 9.7, 12);
  });

  test("a range clear of its limits passes, one beyond fails, one that straddles wants an assay", () => {
    const limit = { of: ["pb"], max: 0.003 } as const;
    expect(judgeShare({ low: 0, likely: 0.001, high: 0.003 }, limit)).toBe("pass");
    expect(judgeShare({ low: 0.0031, likely: 0.004, high: 0.005 }, limit)).toBe("fail");
    expect(judgeShare({ low: 0, likely: 0.001, high: 0.0031 }, limit)).toBe("assay");
  });

  test("unknown scrap in a clean charge wants an assay, and enough clean metal clears it", () => {
    const unknown = { cu: rest, pb: { low: 0, high: 0.05 }, sn: { low: 0, high: 0.1 } };
    const limits = [{ of: ["pb"], max: 0.003 }] as const;
    const at = (massKg: number) =>
      judgeCharge({ items: [item(1, unknown), item(massKg, { cu: exactly(1) })], recovery: {}, limits });
    expect(at(5)).toMatchObject({ verdict: "assay" });
    expect(at(20)).toMatchObject({ verdict: "pass" });
  });

  test("springs and tools that don't spark are never melted", () => {
    const bad = item(1, { cu: rest }, { name: "contact strip", isBerylliumSuspect: true });
    const traced = item(1, { cu: rest, be: { low: 0, high: 0.02 } }, { name: "bar end" });
    expect(mixCharge({ items: [item(5, siliconBronze), bad, traced], recovery: {} })).toEqual({
      ok: false,
      code: "beryllium-suspect",
      names: ["contact strip", "bar end"],
    });
  });

  test("contents that can't make a whole are told by name, and so is an empty charge", () => {
    const short = item(1, { cu: exactly(0.5), sn: exactly(0.1) }, { name: "short" });
    const long = item(1, { cu: exactly(0.95), sn: exactly(0.1) }, { name: "long" });
    expect(mixCharge({ items: [short, long], recovery: {} })).toMatchObject({
      code: "does-not-add-up",
      names: ["short", "long"],
    });
    expect(mixCharge({ items: [], recovery: {} })).toMatchObject({ ok: false, code: "empty" });
    expect(() => mixCharge({ items: [item(1, { cu: exactly(94.9) })], recovery: {} })).toThrow(RangeError);
  });

  test("a sum of elements is held closer than its parts", () => {
    const ready = readyCharge({
      items: [item(2, { cu: { low: 0.8, high: 0.9 }, sn: { low: 0.1, high: 0.2 } })],
      recovery: {},
    });
    if (!ready.ok) throw new Error(ready.code);
    expect(shareOfSet(ready, ["cu", "sn"])).toEqual(sure(1));
    expect(shareOfSet(ready, ["cu"]).high - shareOfSet(ready, ["cu"]).low).toBeCloseTo(0.1, 12);
  });

  test("copper and tin together are what zinc can't be", () => {
    const contents = { cu: rest, sn: { low: 0, high: 0.1 }, zn: { low: 0, high: 0.05 } };
    const ready = readyCharge({ items: [item(2, contents)], recovery: {} });
    if (!ready.ok) throw new Error(ready.code);
    expect(shareOfSet(ready, ["cu", "sn"]).low).toBeCloseTo(0.95, 12);
    expect(shareOfSet(ready, ["cu", "sn"]).high).toBeCloseTo(1, 12);
  });

  test("where nothing is lost a melt weighs what went in, whatever it is", () => {
    const unknown = item(3, {
      cu: { low: 0.8, high: 0.9 },
      sn: { low: 0, high: 0.1 },
      zn: { low: 0, high: 0.1 },
    });
    const mix = mixCharge({ items: [unknown, item(2, siliconBronze)], recovery: {} });
    for (const kg of mix.ok ? [mix.inKg, ...Object.values(mix.meltKg)] : [NaN]) expect(kg).toBeCloseTo(5, 12);
  });

  const some: readonly Element[] = ["cu", "sn", "zn", "pb"];
  const mixture = fc
    .array(fc.double({ min: 0.01, max: 1, noNaN: true }), { minLength: 4, maxLength: 4 })
    .map((parts) => parts.map((part) => part / parts.reduce((sum, x) => sum + x, 0)));
  const scrap = fc.record({
    massKg: fc.double({ min: 0.1, max: 20, noNaN: true }),
    truth: mixture,
    below: fc.array(fc.double({ min: 0, max: 0.3, noNaN: true }), { minLength: 4, maxLength: 4 }),
    above: fc.array(fc.double({ min: 0, max: 0.3, noNaN: true }), { minLength: 4, maxLength: 4 }),
  });

  test("whatever the scrap truly is, the melt lies in its interval, and so does the likely value", () =>
    fc.assert(
      fc.property(
        fc.array(scrap, { minLength: 1, maxLength: 4 }),
        fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 4, maxLength: 4 }),
        (scraps, along) => {
          const through = { sn: [0.98, 1], zn: [0.9, 0.98], pb: [0.99, 0.99], cu: [0.995, 1] } as const;
          const real = some.map((e, j) => {
            const [low, high] = through[e as keyof typeof through];
            return low + (along[j] ?? 0) * (high - low);
          });
          const recovery = Object.fromEntries(
            Object.entries(through).map(([e, [low, high]]) => [e, { low, likely: (low + high) / 2, high }]),
          );
          const items = scraps.map((one) =>
            item(
              one.massKg,
              Object.fromEntries(
                some.map((e, j) => [
                  e,
                  {
                    low: Math.max(0, (one.truth[j] ?? 0) - (one.below[j] ?? 0)),
                    high: Math.min(1, (one.truth[j] ?? 0) + (one.above[j] ?? 0)),
                  },
                ]),
              ),
            ),
          );
          const mix = mixCharge({ items, recovery });
          if (!mix.ok) throw new Error(mix.code);
          const kg = some.map((_, j) =>
            scraps.reduce((sum, one) => sum + one.massKg * (one.truth[j] ?? 0) * (real[j] ?? 0), 0),
          );
          const total = kg.reduce((sum, x) => sum + x, 0);
          for (const [j, e] of some.entries()) {
            const seen = mix.shares[e];
            const is = (kg[j] ?? 0) / total;
            expect(seen?.low).toBeLessThanOrEqual(is + 1e-9);
            expect(seen?.high).toBeGreaterThanOrEqual(is - 1e-9);
            expect(seen?.low).toBeLessThanOrEqual((seen?.likely ?? NaN) + 1e-9);
            expect(seen?.high).toBeGreaterThanOrEqual((seen?.likely ?? NaN) - 1e-9);
          }
          expect(mix.meltKg.low).toBeLessThanOrEqual(total + 1e-9);
          expect(mix.meltKg.high).toBeGreaterThanOrEqual(total - 1e-9);
          const sum = some.reduce((all, e) => all + (mix.shares[e]?.likely ?? 0), 0);
          expect(sum).toBeCloseTo(1, 9);
        },
      ),
      { numRuns: 150 },
    ));

  test("the ends of an interval are reached, so that it is no wider than it must be", () => {
    const unknown = item(3, {
      cu: { low: 0.8, high: 0.95 },
      sn: { low: 0, high: 0.1 },
      zn: { low: 0, high: 0.2 },
    });
    const recovery = { zn: { low: 0.9, likely: 0.95, high: 0.98 } };
    const mix = mixCharge({ items: [unknown], recovery });
    // Most tin and most copper: all else is zinc lost at its worst. Least copper: zinc at its best.
    expect(mix.ok ? mix.shares.sn?.high : NaN).toBeCloseTo(0.1 / (0.1 + 0.8 + 0.1 * 0.9), 12);
    expect(mix.ok ? mix.shares.cu?.high : NaN).toBeCloseTo(0.95 / (0.95 + 0.05 * 0.9), 12);
    expect(mix.ok ? mix.shares.cu?.low : NaN).toBeCloseTo(0.8 / (0.8 + 0.1 + 0.1 * 0.98), 12);
  });
});
