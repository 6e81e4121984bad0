import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import truth from "../../../tests/truth/heat.json" with { type: "json" };
import type { CastingFor } from "./castingCooling.ts";
import { castingCooling } from "./castingCooling.ts";

const { casting } = truth;
const { c90300 } = casting.metals;
const metalOf = (name: string) => casting.metals[name as keyof typeof casting.metals];
const base: CastingFor = {
  metal: c90300,
  modulusMm: 3,
  pourC: 1150,
  shellMm: 8,
  shellC: 600,
  conductivityWMK: 1,
  shellKgM3: 1900,
  shellJKgK: 1100,
  emissivity: 0.9,
  // The reference rows were worked out with this contact.
  contactWM2K: 1500,
  airC: 20,
  around: "air",
  knockoutC: 300,
};
const times = (of: Partial<CastingFor>) => castingCooling({ ...base, ...of });
const off = (found: number | null, wanted: number): number => Math.abs((found ?? Infinity) / wanted - 1);

describe("freezing in a hot shell", () => {
  test.each(casting.rows)(
    "$metal, $sectionMm mm in a shell of $shellC °C: solid after $airS s in air, $sandS s in sand",
    (row) => {
      const of = {
        metal: metalOf(row.metal),
        modulusMm: row.sectionMm / 2,
        pourC: row.pourC,
        shellC: row.shellC,
      };
      // Printed to whole seconds: half a second and 3 %.
      const allowed = casting.within + 0.5 / row.airS;
      expect(off(times({ ...of, around: "air" }).solidusS, row.airS)).toBeLessThan(allowed);
      expect(off(times({ ...of, around: "sand" }).solidusS, row.sandS)).toBeLessThan(allowed);
    },
  );

  test("6 mm of tin bronze: liquidus at 11 s, below 300 °C after 18 min in air and 40 in sand", () => {
    const { liquidusS, airBelow300S, sandBelow300S } = casting.case21;
    const air = times({});
    const sand = times({ around: "sand" });
    expect(off(air.liquidusS, liquidusS)).toBeLessThan(casting.within);
    expect(off(air.coldS, airBelow300S)).toBeLessThan(casting.within);
    expect(off(sand.coldS, sandBelow300S)).toBeLessThan(casting.within);
  });

  test("a small bronze in sand may be broken out after about an hour", () => {
    const minutes = (times({ around: "sand", modulusMm: 4 }).knockoutS ?? 0) / 60;
    expect(minutes).toBeGreaterThan(40);
    expect(minutes).toBeLessThan(90);
  });

  test("nothing is broken out before ten times its freezing", () => {
    const { knockoutS, coldS, solidusS } = times({ modulusMm: 12 });
    expect(knockoutS).toBeCloseTo(10 * (solidusS ?? 0), 6);
    expect(coldS).toBeLessThan(knockoutS ?? 0);
  });

  test("a pure metal stands at its melting point until its latent heat is gone", () => {
    const pure = { ...c90300, solidusC: 1000, liquidusC: 1000 };
    const { liquidusS, solidusS } = times({ metal: pure });
    expect(solidusS ?? 0).toBeGreaterThan((liquidusS ?? Infinity) + 20);
    const nearly = times({ metal: { ...pure, solidusC: 999.9 } });
    expect(off(solidusS, nearly.solidusS ?? 0)).toBeLessThan(0.01);
  });

  test("a knockout that the air itself is too warm for is refused", () => {
    expect(() => times({ knockoutC: 20 })).toThrow(/knockoutC must be 25–1500/);
  });
});

describe("laws of freezing", () => {
  const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  const around = fc.constantFrom("air", "sand");

  test("mesh and step: 24 and 96 cells agree within 1 %", () =>
    fc.assert(
      fc.property(within(1, 12), within(20, 850), around, (modulusMm, shellC, where) => {
        const of = { modulusMm, shellC, around: where };
        return off(times({ ...of, cells: 24 }).solidusS, times({ ...of, cells: 96 }).solidusS ?? 0) < 0.01;
      }),
      { numRuns: 15 },
    ));

  test("a thicker section, a hotter shell and hotter metal all freeze later", () =>
    fc.assert(
      fc.property(within(1, 12), within(20, 800), around, (modulusMm, shellC, where) => {
        const of = { modulusMm, shellC, around: where };
        const solid = times(of).solidusS ?? 0;
        return (
          (times({ ...of, modulusMm: modulusMm * 1.1 }).solidusS ?? 0) > solid &&
          (times({ ...of, shellC: shellC + 20 }).solidusS ?? 0) > solid &&
          (times({ ...of, pourC: 1200 }).solidusS ?? 0) > solid
        );
      }),
      { numRuns: 15 },
    ));

  test("liquidus, solidus and knockout follow one another", () =>
    fc.assert(
      fc.property(within(1, 20), within(20, 800), around, (modulusMm, shellC, where) => {
        const { liquidusS, solidusS, knockoutS } = times({ modulusMm, shellC, around: where });
        return (
          liquidusS !== null &&
          solidusS !== null &&
          knockoutS !== null &&
          liquidusS < solidusS &&
          solidusS < knockoutS
        );
      }),
      { numRuns: 20 },
    ));
});
