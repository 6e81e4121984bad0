import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { givenPiece } from "../../../tests/givenPiece.ts";
import { alloyOf } from "../../trade/metals/alloys.ts";
import type { PatternMaterial } from "../../trade/patternMaterials.ts";
import type { PiecePlan } from "../entries/pieceBodies.ts";
import { patternMass, type PatternSaid } from "./patternMass.ts";

const bronze = alloyOf("c87300");
const massOf = (plan: Partial<PiecePlan>, said?: PatternSaid) =>
  patternMass(givenPiece(plan).standing(1).piece, { alloy: bronze, said });

describe("the mass of a pattern", () => {
  test.each([
    // Half a litre; densities in kg/m³: the table of Sci. Rep. 2022 s41598-022-22520-6 for PLA, the others as the tables say.
    ["wax", 0.465],
    ["pla", 0.62],
    ["pvb", 0.55],
    ["resin", 0.575],
    ["foam", 0.0125],
  ] as const)("of half a litre of %s is %d kg, an estimate", (material, massKg) => {
    const mass = massOf({ material, metalLitre: 0.5 });
    expect(mass?.source).toBe("metal-volume");
    expect(mass?.massKg).toBeCloseTo(massKg, 9);
  });

  test("is told by the metal's mass where the plan has no litres: 6 kg of bronze in PLA are 0.9 kg", () => {
    const mass = massOf({ material: "pla", metalKg: 6, alloyId: "c87300" });
    // 6 kg over some 8.5 kg/L and 1.24: about the factor 6.8 between such a bronze and PLA.
    expect(mass?.massKg).toBeCloseTo((6 / (bronze?.solidKgM3.value ?? 0)) * 1240, 9);
    expect(mass?.massKg).toBeGreaterThan(0.85);
    expect(mass?.massKg).toBeLessThan(0.95);
  });

  test("is not known without a material, or for one whose density is not", () => {
    expect(massOf({ metalLitre: 0.5 })).toBeNull();
    expect(massOf({ material: "other", metalLitre: 0.5 })).toBeNull();
    expect(massOf({ material: "wax", metalLitre: 0.5 }, { material: "pu-foam" })).toBeNull();
    expect(massOf({ material: "wax" })).toBeNull();
    expect(massOf({ metalLitre: 0.5 }, { material: "pla" })?.massKg).toBeCloseTo(0.62, 9);
  });

  test("of a print counts skin and infill, where both and its surface are given", () => {
    const plan = { material: "pla", metalLitre: 0.5, areaM2: 0.05 } as const;
    // 500 cm², 1 mm of skin: 50 cm³; a tenth of the other 450 cm³: 95 cm³ of 1.24 g.
    expect(massOf(plan, { skinMm: 1, infill: 0.1 })).toEqual({
      massKg: expect.closeTo(0.1178, 9),
      source: "printed",
    });
    expect(massOf(plan, { infill: 0.1 })?.source).toBe("metal-volume");
    expect(massOf({ material: "pla", metalLitre: 0.5 }, { skinMm: 1, infill: 0.1 })?.source).toBe(
      "metal-volume",
    );
    expect(massOf(plan, { skinMm: 1, infill: 1.2 })?.source).toBe("metal-volume");
  });

  test("property: a print is never heavier than solid, and grows with its infill", () => {
    const material = fc.constantFrom<PatternMaterial>("pla", "pvb", "resin");
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    const skin = fc.double({ min: 0, max: 20, noNaN: true });
    fc.assert(
      fc.property(material, skin, share, share, (of, skinMm, a, b) => {
        const plan = { material: of, metalLitre: 0.5, areaM2: 0.05 } as const;
        const kg = (infill: number): number => massOf(plan, { skinMm, infill })?.massKg ?? NaN;
        const solid = massOf(plan)?.massKg ?? NaN;
        expect(kg(Math.max(a, b))).toBeLessThanOrEqual(solid * (1 + 1e-12));
        expect(kg(Math.min(a, b))).toBeLessThanOrEqual(kg(Math.max(a, b)) * (1 + 1e-12));
      }),
      { numRuns: 40 },
    );
  });
});
