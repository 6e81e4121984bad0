import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import truth from "../../../tests/truth/wall.json" with { type: "json" };
import type { WallPart } from "./wall.ts";
import {
  coatBuildMm,
  coatsToAdd,
  flatFactor,
  headPressurePa,
  loadIndexMPa,
  strengthOverLoad,
} from "./wall.ts";
import { headNeeds } from "./wallVerdict.ts";

/** The wall at which strength is so many times the load: with a standard deviation of 1 the index is its logarithm. */
const wallAt = (load: { pressurePa: number; morMPa: number; part: WallPart }, times: number): number =>
  headNeeds({ ...load, spreads: { strength: Math.exp(1.645), wall: 1, head: 1 } }, { least: Math.log(times) })
    .exactMm;

const partOf = (part: (typeof truth.required.rows)[number]["part"]): WallPart =>
  "diameterMm" in part && part.diameterMm !== undefined
    ? { kind: "round", diameterMm: part.diameterMm }
    : { kind: "flat", widthMm: part.widthMm ?? NaN, lengthMm: part.lengthMm ?? NaN };

describe("published and hand-computed walls", () => {
  test.each(truth.headPressure)("$headM m of $densityKgM3 kg/m³ press with $pa Pa", ({ pa, ...of }) => {
    expect(Math.abs(headPressurePa(of) / pa - 1)).toBeLessThan(0.001);
  });

  test.each(truth.flatFactor)("a flat of aspect $aspect has the factor $beta", ({ aspect, beta }) => {
    expect(Math.abs(flatFactor(aspect) - beta)).toBeLessThan(0.0005);
  });

  test("an endless flat has three quarters", () => expect(flatFactor(Infinity)).toBe(0.75));

  test("a clamped square of 150 mm and 10 mm sees 2.12 MPa at its edge", () => {
    const { spanMm, wallMm, pressurePa, stressMPa, within } = truth.clampedSquare;
    const part: WallPart = { kind: "flat", widthMm: spanMm, lengthMm: spanMm };
    expect(Math.abs(loadIndexMPa({ pressurePa, wallMm, part }) / stressMPa - 1)).toBeLessThan(within);
  });

  test.each(truth.flats)("$name: $requiredMm mm for three times the load, reaches $reached", (row) => {
    const part: WallPart = { kind: "flat", widthMm: row.widthMm, lengthMm: row.lengthMm };
    const pressurePa = headPressurePa(row);
    const required = wallAt({ pressurePa, morMPa: row.morMPa, part }, 3);
    const reached = strengthOverLoad({ pressurePa, morMPa: row.morMPa, wallMm: row.haveMm, part });
    expect(Math.abs(required - row.requiredMm)).toBeLessThan(0.05);
    expect(Math.abs(reached - row.reached)).toBeLessThan(0.01);
    expect(coatsToAdd({ requiredMm: required, haveMm: 1.283, coatMm: 1.23 })).toBe(row.coatsFromFixed);
  });

  test("a tube of 120 mm has three times the load's strength at 4.13 mm", () => {
    const { requiredMm, within, safetyFactor, morMPa, diameterMm } = truth.round;
    const of = {
      pressurePa: headPressurePa(truth.round),
      morMPa,
      part: { kind: "round", diameterMm },
    } as const;
    expect(Math.abs(wallAt(of, safetyFactor) - requiredMm)).toBeLessThan(within);
  });

  test.each(truth.required.rows)("$densityKgM3 kg/m³, $headM m, $part: $mm mm", ({ mm, ...row }) => {
    const of = { pressurePa: headPressurePa(row), morMPa: 4, part: partOf(row.part) };
    expect(Math.abs(wallAt(of, 3) - mm)).toBeLessThan(0.06);
  });

  test("the thin-wall tube reads low against Lamé by what is told, half of wall over radius", () => {
    const { radiusMm, wallMm, pressurePa, thinMPa, innerMPa } = truth.lame;
    // Half the bending strength carries the hoop, so the index is twice the hoop stress.
    const hoop = loadIndexMPa({ pressurePa, wallMm, part: { kind: "round", diameterMm: 2 * radiusMm } }) / 2;
    expect(Math.abs(hoop - thinMPa)).toBeLessThan(1e-4);
    expect(innerMPa / hoop).toBeCloseTo(1.11, 2);
  });

  test.each(truth.build)(
    "grains of $fineMm–$coarseMm mm with a film of $filmMm build $coatMm mm",
    ({ coatMm, ...of }) => {
      expect(Math.abs(coatBuildMm(of) - coatMm)).toBeLessThan(0.005);
    },
  );

  test("two primes, an intermediate, five backups and a seal build 7.43 mm", () => {
    const [prime, second, backup, , , , seal] = truth.build.map(coatBuildMm);
    expect(2 * (prime ?? NaN) + (second ?? NaN) + 5 * (backup ?? NaN) + (seal ?? NaN)).toBeCloseTo(7.43, 1);
  });
});

describe("coats and units", () => {
  test("a wall that is there to the last digit asks for no coat, a hair less for one", () => {
    expect(coatsToAdd({ requiredMm: 0.1 + 0.2, haveMm: 0.3, coatMm: 1 })).toBe(0);
    expect(coatsToAdd({ requiredMm: 3.01, haveMm: 3, coatMm: 1 })).toBe(1);
    expect(coatsToAdd({ requiredMm: 2, haveMm: 3, coatMm: 1 })).toBe(0);
    expect(coatsToAdd({ requiredMm: 12.69, haveMm: 1.283, coatMm: 1.23 })).toBe(10);
  });

  test("no head carries anything; units mixed up are refused", () => {
    const part: WallPart = { kind: "flat", widthMm: 100, lengthMm: 100 };
    expect(strengthOverLoad({ pressurePa: 0, morMPa: 4, wallMm: 5, part })).toBe(Infinity);
    expect(() => headPressurePa({ densityKgM3: 7.8, headM: 0.4 })).toThrow(/not g\/cm³/);
    expect(() => headPressurePa({ densityKgM3: 7800, headM: 400 })).toThrow(/not mm/);
    expect(() => strengthOverLoad({ pressurePa: 1e4, morMPa: 4, wallMm: 0, part })).toThrow(/wallMm/);
    expect(() => strengthOverLoad({ pressurePa: 1e4, morMPa: 0, wallMm: 5, part })).toThrow(/morMPa/);
    expect(() => flatFactor(0)).toThrow(/aspect/);
    expect(() => flatFactor(NaN)).toThrow(/aspect/);
  });
});

const of = fc.record({
  pressurePa: fc.double({ min: 500, max: 90_000, noNaN: true }),
  morMPa: fc.double({ min: 0.5, max: 12, noNaN: true }),
});
const side = fc.double({ min: 10, max: 600, noNaN: true });
const wallOf = fc.double({ min: 1, max: 60, noNaN: true });

describe("laws of the wall", () => {
  test("a flat's load goes with the head, the square of the span and one over the square of the wall", () =>
    fc.assert(
      fc.property(of, side, side, wallOf, (at, widthMm, lengthMm, wallMm) => {
        const part: WallPart = { kind: "flat", widthMm, lengthMm };
        const ratio = strengthOverLoad({ ...at, part, wallMm });
        const times = (more: Partial<Parameters<typeof strengthOverLoad>[0]>): number =>
          strengthOverLoad({ ...at, part, wallMm, ...more }) / ratio;
        expect(times({ pressurePa: at.pressurePa * 3 })).toBeCloseTo(1 / 3, 9);
        expect(times({ morMPa: at.morMPa * 3 })).toBeCloseTo(3, 9);
        expect(times({ wallMm: wallMm / 2 })).toBeCloseTo(1 / 4, 9);
        expect(times({ part: { kind: "flat", widthMm: 2 * widthMm, lengthMm: 2 * lengthMm } })).toBeCloseTo(
          1 / 4,
          9,
        );
        expect(times({ part: { kind: "flat", widthMm: lengthMm, lengthMm: widthMm } })).toBeCloseTo(1, 9);
      }),
    ));

  test("a round's load goes with head and diameter and one over the wall", () =>
    fc.assert(
      fc.property(of, side, wallOf, (at, diameterMm, wallMm) => {
        const part: WallPart = { kind: "round", diameterMm };
        const ratio = strengthOverLoad({ ...at, part, wallMm });
        const times = (more: Partial<Parameters<typeof strengthOverLoad>[0]>): number =>
          strengthOverLoad({ ...at, part, wallMm, ...more }) / ratio;
        expect(times({ pressurePa: 3 * at.pressurePa })).toBeCloseTo(1 / 3, 9);
        expect(times({ part: { kind: "round", diameterMm: 2 * diameterMm } })).toBeCloseTo(0.5, 9);
        expect(times({ wallMm: wallMm / 2 })).toBeCloseTo(0.5, 9);
      }),
    ));

  test("a longer flat never has the smaller factor, and none passes three quarters", () =>
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 50, noNaN: true }),
        fc.double({ min: 1.001, max: 3, noNaN: true }),
        (aspect, more) => {
          expect(flatFactor(aspect * more)).toBeGreaterThan(flatFactor(aspect));
          expect(flatFactor(aspect * more)).toBeLessThan(0.75);
          expect(flatFactor(1 / aspect)).toBeCloseTo(flatFactor(aspect), 9);
        },
      ),
    ));
});
