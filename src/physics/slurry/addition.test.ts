import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import truth from "../../../tests/truth/metal.json" with { type: "json" };
import { correctMelt, diluteKg } from "./addition.ts";
import { mixCharge, type ChargeItem, type Contents, type Element } from "../metal/scrap.ts";

const off = (found: number, wanted: number): number => Math.abs(found / wanted - 1);
const item = (massKg: number, contents: Contents): ChargeItem => ({
  name: "scrap",
  massKg,
  contents,
  isBerylliumSuspect: false,
});
const exactly = (share: number) => ({ low: share, high: share });

describe("putting a melt right", () => {
  const pure = (element: Element, through: number) => ({
    name: element,
    shares: { [element]: 1 },
    recovery: { [element]: through },
  });

  test("the thinned silicon bronze wants 0.176 kg of silicon and 0.049 kg of manganese", () => {
    const { siliconShare, manganeseShare, siliconKg, manganeseKg } = truth.scrap;
    const correction = correctMelt({
      meltKg: 10,
      shares: { si: siliconShare, mn: manganeseShare },
      targets: { si: 0.04, mn: 0.011 },
      additives: [pure("si", 0.96), pure("mn", 0.95)],
    });
    if (correction.kind !== "add") throw new Error(correction.kind);
    const [silicon, manganese] = correction.additions;
    expect(off(silicon?.inMeltKg ?? NaN, siliconKg)).toBeLessThan(1e-3);
    expect(off(manganese?.inMeltKg ?? NaN, manganeseKg)).toBeLessThan(1e-3);
    expect(off(silicon?.addKg ?? NaN, truth.scrap.siliconWeighedKg)).toBeLessThan(1e-3);
    expect(off(manganese?.addKg ?? NaN, truth.scrap.manganeseWeighedKg)).toBeLessThan(1e-3);
    expect(correction.meltKg).toBeCloseTo(10.215, 3);
  });

  test("1 % of lead in 10 kg wants 23.3 kg of clean metal to come to 0.30 %", () => {
    const found = diluteKg({ meltKg: 10, share: 0.01, targetShare: 0.003, diluentShare: 0 });
    expect(off(found.kind === "add" ? found.addKg : NaN, truth.scrap.leadDilutionKg)).toBeLessThan(1e-4);
    expect(diluteKg({ meltKg: 10, share: 0.01, targetShare: 0.003, diluentShare: 0.003 }).kind).toBe(
      "cannot-reach",
    );
    expect(diluteKg({ meltKg: 10, share: 0.001, targetShare: 0.003, diluentShare: 0 }).kind).toBe(
      "not-needed",
    );
  });

  test("a thinned melt has exactly its target, whatever it is thinned with", () =>
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 100, noNaN: true }),
        fc.double({ min: 0.011, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 0.009, noNaN: true }),
        (meltKg, share, diluentShare) => {
          const found = diluteKg({ meltKg, share, targetShare: 0.01, diluentShare });
          const addKg = found.kind === "add" ? found.addKg : NaN;
          expect((meltKg * share + addKg * diluentShare) / (meltKg + addKg)).toBeCloseTo(0.01, 9);
        },
      ),
    ));

  test("several elements come to their targets together, recomputed as a charge", () =>
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 50, noNaN: true }),
        fc.double({ min: 0, max: 0.03, noNaN: true }),
        fc.double({ min: 0, max: 0.009, noNaN: true }),
        (meltKg, si, mn) => {
          const targets = { si: 0.04, mn: 0.011 };
          const additives = [
            { name: "silicon copper", shares: { cu: 0.7, si: 0.3 }, recovery: { si: 0.96 } },
            pure("mn", 0.95),
          ];
          const correction = correctMelt({ meltKg, shares: { si, mn }, targets, additives });
          if (correction.kind !== "add") throw new Error(correction.kind);
          const [siliconCopper, manganese] = correction.additions;
          const mix = mixCharge({
            items: [
              item(meltKg, { cu: exactly(1 - si - mn), si: exactly(si), mn: exactly(mn) }),
              // What reaches the melt, as an item of its own.
              item(siliconCopper?.inMeltKg ?? 0, {
                cu: exactly(0.7 / 0.988),
                si: exactly(0.288 / 0.988),
              }),
              item(manganese?.inMeltKg ?? 0, { mn: exactly(1) }),
            ],
            recovery: {},
          });
          if (!mix.ok) throw new Error(mix.code);
          expect(Math.abs((mix.shares.si?.likely ?? NaN) - 0.04)).toBeLessThan(1e-9);
          expect(Math.abs((mix.shares.mn?.likely ?? NaN) - 0.011)).toBeLessThan(1e-9);
          expect(mix.meltKg.likely).toBeCloseTo(correction.meltKg, 9);
        },
      ),
      { numRuns: 50 },
    ));

  test("nothing can be taken out of a melt, and two of a kind settle nothing", () => {
    const from = { meltKg: 10, shares: { si: 0.05 }, targets: { si: 0.04 } };
    expect(correctMelt({ ...from, additives: [pure("si", 1)] })).toEqual({
      kind: "cannot-reach",
      names: ["si"],
    });
    const thinned = correctMelt({ ...from, additives: [pure("cu", 1)] });
    expect(thinned.kind === "add" ? thinned.additions[0]?.addKg : NaN).toBeCloseTo(2.5, 12);
    const both = { ...from, targets: { si: 0.04, mn: 0.011 }, shares: {} };
    expect(correctMelt({ ...both, additives: [pure("si", 1), pure("si", 1)] }).kind).toBe("not-determined");
    expect(correctMelt({ ...both, additives: [pure("si", 1)] }).kind).toBe("not-determined");
  });
});
