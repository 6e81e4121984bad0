import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import truth from "../../tests/truth/wall.json" with { type: "json" };
import type { WallPart } from "./wall.ts";
import {
  coatBuildMm,
  coatsToAdd,
  flatFactor,
  headPressurePa,
  loadIndexMPa,
  requiredWallBandMm,
  requiredWallMm,
  safetyBand,
  safetyReached,
} from "./wall.ts";

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

  test.each(truth.flats)("$name: needs $requiredMm mm, reaches $reached, $band", (row) => {
    const part: WallPart = { kind: "flat", widthMm: row.widthMm, lengthMm: row.lengthMm };
    const pressurePa = headPressurePa(row);
    const required = requiredWallMm({ pressurePa, morMPa: row.morMPa, safetyFactor: 3, part });
    const reached = safetyReached({ pressurePa, morMPa: row.morMPa, wallMm: row.haveMm, part });
    expect(Math.abs(required - row.requiredMm)).toBeLessThan(0.05);
    expect(Math.abs(reached - row.reached)).toBeLessThan(0.01);
    expect(safetyBand(reached)).toBe(row.band);
    expect(coatsToAdd({ requiredMm: required, haveMm: 1.283, coatMm: 1.23 })).toBe(row.coatsFromFixed);
  });

  test("a tube of 120 mm needs 4.13 mm, and the floor of handling wins", () => {
    const { requiredMm, within, floorMm, safetyFactor, morMPa, diameterMm } = truth.round;
    const of = {
      pressurePa: headPressurePa(truth.round),
      morMPa,
      safetyFactor,
      part: { kind: "round", diameterMm },
    } as const;
    expect(Math.abs(requiredWallMm(of) - requiredMm)).toBeLessThan(within);
    expect(requiredWallMm({ ...of, floorMm })).toBe(floorMm);
  });

  test.each(truth.required.rows)("$densityKgM3 kg/m³, $headM m, $part: $mm mm", ({ mm, ...row }) => {
    const of = { pressurePa: headPressurePa(row), morMPa: 4, safetyFactor: 3, part: partOf(row.part) };
    expect(Math.abs(requiredWallMm(of) - mm)).toBeLessThan(0.06);
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

describe("bands and coats", () => {
  test.each([
    [3, "carries"],
    [2.99, "marginal"],
    [2, "marginal"],
    [1.99, "thin"],
    [1.2, "thin"],
    [1.19, "fails"],
    [0, "fails"],
    [Infinity, "carries"],
  ])("a factor of %d: %s", (factor, band) => expect(safetyBand(factor)).toBe(band));

  test("a wall that is there to the last digit asks for no coat, a hair less for one", () => {
    expect(coatsToAdd({ requiredMm: 0.1 + 0.2, haveMm: 0.3, coatMm: 1 })).toBe(0);
    expect(coatsToAdd({ requiredMm: 3.01, haveMm: 3, coatMm: 1 })).toBe(1);
    expect(coatsToAdd({ requiredMm: 2, haveMm: 3, coatMm: 1 })).toBe(0);
    expect(coatsToAdd({ requiredMm: 12.69, haveMm: 1.283, coatMm: 1.23 })).toBe(10);
  });

  test("strength known to × or ÷ 1.7 makes the needed wall of a flat × or ÷ 1.3", () => {
    const of = {
      pressurePa: 30_607,
      morMPa: 4,
      safetyFactor: 3,
      part: { kind: "flat", widthMm: 180, lengthMm: 120 },
    } as const;
    const { lowMm, likelyMm, highMm } = requiredWallBandMm(of);
    expect(highMm / likelyMm).toBeCloseTo(1.304, 3);
    expect(likelyMm / lowMm).toBeCloseTo(1.304, 3);
    expect(requiredWallBandMm({ ...of, floorMm: 12 }).lowMm).toBe(12);
  });

  test("no head carries anything; units mixed up are refused", () => {
    const part: WallPart = { kind: "flat", widthMm: 100, lengthMm: 100 };
    expect(safetyReached({ pressurePa: 0, morMPa: 4, wallMm: 5, part })).toBe(Infinity);
    expect(() => headPressurePa({ densityKgM3: 7.8, headM: 0.4 })).toThrow(/not g\/cm³/);
    expect(() => headPressurePa({ densityKgM3: 7800, headM: 400 })).toThrow(/not mm/);
    expect(() => safetyReached({ pressurePa: 1e4, morMPa: 4, wallMm: 0, part })).toThrow(/wallMm/);
    expect(() => requiredWallMm({ pressurePa: 1e4, morMPa: 0, safetyFactor: 3, part })).toThrow(/morMPa/);
    expect(() => flatFactor(0)).toThrow(/aspect/);
    expect(() => flatFactor(NaN)).toThrow(/aspect/);
    expect(() => safetyBand(NaN)).toThrow(/safetyFactor/);
  });
});

const of = fc.record({
  pressurePa: fc.double({ min: 500, max: 90_000, noNaN: true }),
  morMPa: fc.double({ min: 0.5, max: 12, noNaN: true }),
  safetyFactor: fc.double({ min: 1, max: 5, noNaN: true }),
});
const side = fc.double({ min: 10, max: 600, noNaN: true });

describe("laws of the wall", () => {
  test("a flat's wall goes with the root of the head and of one over strength, and with the span", () =>
    fc.assert(
      fc.property(of, side, side, (at, widthMm, lengthMm) => {
        const part: WallPart = { kind: "flat", widthMm, lengthMm };
        const wall = requiredWallMm({ ...at, part });
        expect(requiredWallMm({ ...at, pressurePa: at.pressurePa * 4, part }) / wall).toBeCloseTo(2, 9);
        expect(requiredWallMm({ ...at, morMPa: at.morMPa * 4, part }) / wall).toBeCloseTo(0.5, 9);
        const double: WallPart = { kind: "flat", widthMm: 2 * widthMm, lengthMm: 2 * lengthMm };
        expect(requiredWallMm({ ...at, part: double }) / wall).toBeCloseTo(2, 9);
        expect(
          requiredWallMm({ ...at, part: { kind: "flat", widthMm: lengthMm, lengthMm: widthMm } }),
        ).toBeCloseTo(wall, 9);
      }),
    ));

  test("a round's wall goes with head and diameter", () =>
    fc.assert(
      fc.property(of, side, (at, diameterMm) => {
        const wall = requiredWallMm({ ...at, part: { kind: "round", diameterMm } });
        expect(
          requiredWallMm({ ...at, part: { kind: "round", diameterMm: 2 * diameterMm } }) / wall,
        ).toBeCloseTo(2, 9);
        expect(
          requiredWallMm({ ...at, pressurePa: 3 * at.pressurePa, part: { kind: "round", diameterMm } }) /
            wall,
        ).toBeCloseTo(3, 9);
      }),
    ));

  test("the wall that is needed reaches the factor that was asked", () =>
    fc.assert(
      fc.property(of, side, side, fc.boolean(), (at, widthMm, lengthMm, round) => {
        const part: WallPart = round
          ? { kind: "round", diameterMm: widthMm }
          : { kind: "flat", widthMm, lengthMm };
        const wallMm = requiredWallMm({ ...at, part });
        // As thick as the sum of the factor takes a wall.
        fc.pre(wallMm <= 500);
        expect(safetyReached({ ...at, wallMm, part }) / at.safetyFactor).toBeCloseTo(1, 9);
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
