import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import truth from "../../../tests/truth/metal.json" with { type: "json" };
import { castingMassBandKg, castingMassKg, chooseVolume, metalPatternRatio } from "./castingMass.ts";
import { patternVolume } from "./patternVolume.ts";
import {
  effectiveSolidity,
  hollowMetalCm3,
  printedMassG,
  printedPolymerCm3,
} from "../shell/printSolidity.ts";
import { chainedScale, learnShrink, patternScale, volumeScale } from "./shrinkScale.ts";

const off = (found: number, wanted: number): number => Math.abs(found / wanted - 1);

describe("mass by each route", () => {
  test.each(truth.patternMass)("$name: 100 g of solid pattern asks $metalG g", (row) => {
    const volume = patternVolume({
      route: "pattern-weight",
      massG: row.patternG,
      densityKgM3: row.patternKgM3,
      fill: "solid",
    });
    const volumeCm3 = volume.ok ? volume.volumeCm3 : NaN;
    expect(off(castingMassKg({ volumeCm3, metalKgM3: row.metalKgM3 }) * 1000, row.metalG)).toBeLessThan(1e-3);
    expect(off(metalPatternRatio(row) * row.patternG, row.metalG)).toBeLessThan(1e-3);
  });

  test("a sunk pattern has one volume however it is sunk", () =>
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 5000, noNaN: true }),
        fc.double({ min: 0.2, max: 1.5, noNaN: true }),
        fc.double({ min: 1, max: 1000, noNaN: true }),
        (cm3, gCm3, sinkerCm3) => {
          const water = 0.9982;
          const sinkerSubmergedG = sinkerCm3 * (11.3 - water);
          const hung = patternVolume({
            route: "hydrostatic",
            airG: cm3 * gCm3,
            submergedG: cm3 * (gCm3 - water) + sinkerSubmergedG,
            sinkerSubmergedG,
            isSealed: true,
          });
          const spilt = patternVolume({
            route: "displacement",
            displacedG: (cm3 + sinkerCm3) * water,
            sinkerDisplacedG: sinkerCm3 * water,
            isSealed: true,
          });
          for (const found of [hung, spilt])
            expect(off(found.ok ? found.volumeCm3 : NaN, cm3)).toBeLessThan(1e-6);
        },
      ),
    ));

  test("a mesh grows by the cube of its scale; the slicer's solid mass gives its volume", () => {
    expect(patternVolume({ route: "mesh", volumeCm3: 10, isClosed: true, scale: 2 })).toEqual({
      ok: true,
      route: "mesh",
      volumeCm3: 80,
    });
    expect(patternVolume({ route: "slicer", fullMassG: 124, densityKgM3: 1240 })).toMatchObject({
      volumeCm3: 100,
    });
  });

  test("what gives no volume says why", () => {
    const code = (reading: Parameters<typeof patternVolume>[0]) => {
      const found = patternVolume(reading);
      return found.ok ? "ok" : found.code;
    };
    const print = { route: "pattern-weight", massG: 36, densityKgM3: 1240 } as const;
    expect(code({ route: "mesh", volumeCm3: 10, isClosed: false })).toBe("open-mesh");
    expect(code({ route: "displacement", displacedG: 10, isSealed: false })).toBe("soaks");
    expect(code({ route: "displacement", displacedG: 5, sinkerDisplacedG: 6, isSealed: true })).toBe(
      "no-volume",
    );
    expect(code({ ...print, fill: "not-stated" })).toBe("fill-not-stated");
    expect(code({ ...print, fill: "infill" })).toBe("infill-burns-out-full");
    expect(code({ ...print, fill: "closed-hollow" })).toBe("infill-burns-out-full");
    expect(code({ ...print, fill: "vented-hollow" })).toBe("ok");
    expect(code({ ...print, densityKgM3: null, fill: "solid" })).toBe("density-not-known");
    expect(() => code({ ...print, densityKgM3: 1.24, fill: "solid" })).toThrow(/not g\/cm³/);
  });
});

describe("the infill trap", () => {
  const { source: _, printG, solidity, metalG, naiveG, metalKgM3, densityKgM3, ...print } = truth.infill;

  test("a print of 100 cm³ at 15 % weighs 36 g, yet its cavity takes 836 g and not 245", () => {
    expect(off(printedMassG({ ...print, densityKgM3 }), printG)).toBeLessThan(1e-3);
    expect(effectiveSolidity(print)).toBeCloseTo(solidity, 4);
    expect(castingMassKg({ volumeCm3: print.volumeCm3, metalKgM3 }) * 1000).toBeCloseTo(metalG, 6);
    const naive = printG * metalPatternRatio({ metalKgM3, patternKgM3: densityKgM3 });
    expect(off(naive, naiveG)).toBeLessThan(1e-3);
    expect(off(naive / solidity, metalG)).toBeLessThan(1e-3);
  });

  test("a print is never more than solid, and solid at full infill or a thick skin", () =>
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 1000, noNaN: true }),
        fc.double({ min: 1, max: 1000, noNaN: true }),
        fc.double({ min: 0, max: 50, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (volumeCm3, areaCm2, wallMm, infillShare) => {
          const solid = effectiveSolidity({ volumeCm3, areaCm2, wallMm, infillShare });
          expect(solid).toBeLessThanOrEqual(1 + 1e-12);
          expect(solid).toBeGreaterThanOrEqual(infillShare - 1e-12);
          expect(printedPolymerCm3({ volumeCm3, areaCm2, wallMm, infillShare: 1 })).toBeCloseTo(volumeCm3, 6);
        },
      ),
    ));

  test("a hollow print with a drain becomes its wall, a closed one the whole", () => {
    const hollow = { volumeCm3: 100, areaCm2: 140, wallMm: 2 };
    expect(hollowMetalCm3({ ...hollow, isVented: true })).toBeCloseTo(28, 9);
    expect(hollowMetalCm3({ ...hollow, isVented: false })).toBe(100);
  });
});

describe("several routes side by side", () => {
  const mesh = { route: "mesh", volumeCm3: 100, errorShare: 0.005 } as const;
  const water = { route: "displacement", volumeCm3: 102, errorShare: 0.02 } as const;
  const weight = { route: "pattern-weight", volumeCm3: 30, errorShare: 0.04 } as const;

  test("the least error is used; what its error can't explain is told", () => {
    const chosen = chooseVolume([weight, water, mesh]);
    expect(chosen).toMatchObject({ used: mesh, why: "least-error", others: [water, weight] });
    expect(chosen?.disagreements).toHaveLength(1);
    expect(chosen?.disagreements[0]).toMatchObject({ used: "mesh", other: "pattern-weight" });
    expect(chosen?.disagreements[0]?.differenceShare).toBeCloseTo(-0.7, 9);
    expect(chooseVolume([water])).toMatchObject({ used: water, why: "only-one", disagreements: [] });
    expect(chooseVolume([])).toBeNull();
  });

  test("the band of a mass is its route's error", () => {
    const band = castingMassBandKg({ found: water, metalKgM3: 8800 });
    expect(band.likelyKg).toBeCloseTo(0.8976, 6);
    expect(band.highKg / band.lowKg).toBeCloseTo(1.02 / 0.98, 9);
  });

  test("two routes that differ by less than both errors never disagree", () =>
    fc.assert(
      fc.property(fc.double({ min: -1, max: 1, noNaN: true }), (part) => {
        const other = { ...water, volumeCm3: 100 / (1 - part * 0.0249 * 0.98) };
        const told = chooseVolume([mesh, other])?.disagreements.length;
        expect(told).toBe(0);
      }),
    ));
});

describe("shrink", () => {
  test.each(truth.shrink.rows)("$share by $convention scales by $scale and its volume by $volume", (row) => {
    const scale = patternScale({
      shrinkShare: row.share,
      convention: row.convention === "rule" ? "rule" : "contraction",
    });
    expect(scale).toBeCloseTo(row.scale, 6);
    expect(volumeScale(scale)).toBeCloseTo(row.volume, 5);
  });

  test("shrinks that follow one another multiply", () => {
    expect(chainedScale([1.01, 1.02])).toBeCloseTo(1.0302, 12);
    expect(chainedScale([])).toBe(1);
  });

  test("the shop's own shrink speaks from three pieces up, with its spread", () => {
    const piece = (share: number) => ({ patternMm: 100 * (1 + share), castingMm: 100 });
    expect(learnShrink([piece(0.02), piece(0.022)])).toEqual({ kind: "too-few", pieces: 2, needed: 3 });
    const learned = learnShrink([piece(0.02), piece(0.022), piece(0.024)]);
    expect(learned.kind === "learned" ? learned.meanShare : NaN).toBeCloseTo(0.022, 9);
    expect(learned.kind === "learned" ? learned.sdShare : NaN).toBeCloseTo(0.002, 9);
  });
});
