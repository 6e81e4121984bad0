import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { loadIndexMPa, type WallPart } from "./wall.ts";
import { crownRadiusMm, heldFactor, sandShare } from "./wallSupport.ts";

const pressurePa = 30_607;
const wallMm = 8;
const panel: WallPart = { kind: "flat", widthMm: 200, lengthMm: 400 };
const index = (part: WallPart, support = {}): number => loadIndexMPa({ pressurePa, wallMm, part, support });

describe("sand", () => {
  // 1/(1 + 64e6·0.0138·b⁴/(5e9·t³)), by hand at 10 mm: b 100 → 0.983, 150 → 0.918, 200 → 0.780, 300 → 0.411.
  test.each([
    [100, 0.983],
    [150, 0.918],
    [200, 0.78],
    [300, 0.411],
  ])("leaves a square of %d mm in 10 mm of shell %f of its load", (shortMm, share) => {
    expect(sandShare({ shortMm, aspect: 1, wallMm: 10, least: 0 })).toBeCloseTo(share, 3);
  });

  test("is never trusted with more than four tenths", () => {
    expect(sandShare({ shortMm: 300, aspect: 1, wallMm: 10 })).toBe(0.6);
    expect(sandShare({ shortMm: 200, aspect: 1, wallMm: 10 })).toBeCloseTo(0.78, 2);
  });

  test("loose earns nothing, vibrated what it takes off, and a round neither", () => {
    expect(index(panel, { sand: "loose" })).toBe(index(panel));
    expect(index(panel, { sand: "vibrated" }) / index(panel)).toBeCloseTo(0.6, 9);
    const round: WallPart = { kind: "round", diameterMm: 200 };
    expect(index(round, { sand: "vibrated", ribEveryMm: 20, crownMm: 9 })).toBe(index(round));
  });
});

describe("ribs, crown, edges, rims", () => {
  test("ribs divide the span: every 150 mm across 200 × 400 is a flat of 150 × 200", () => {
    expect(index(panel, { ribEveryMm: 150 })).toBe(index({ kind: "flat", widthMm: 150, lengthMm: 200 }));
    expect(index(panel, { ribEveryMm: 400 })).toBe(index(panel));
    expect(index(panel, { ribEveryMm: 900 })).toBe(index(panel));
  });

  test("by hand: 5 mm of crown over 200 mm is a radius of 1002.5 mm, a half circle its own radius", () => {
    expect(crownRadiusMm({ spanMm: 200, crownMm: 5 })).toBeCloseTo(1002.5, 9);
    expect(crownRadiusMm({ spanMm: 200, crownMm: 100 })).toBe(100);
    expect(crownRadiusMm({ spanMm: 200, crownMm: 150 })).toBe(100);
  });

  test("a crown bears as the lesser of plate and round", () => {
    // Plate 0.6102·0.030607·200²/64 = 11.67 MPa; round of 1002.5 mm: 0.030607·1002.5/(0.5·8) = 7.67 MPa.
    expect(index(panel, { crownMm: 5 })).toBeCloseTo(7.67, 2);
    expect(index(panel)).toBeCloseTo(11.67, 2);
    expect(index(panel, { crownMm: 1 })).toBe(index(panel));
  });

  test("an edge held by the other face is a clamped one: 0.4974 in place of 0.6102 at twice as long", () => {
    expect(index(panel, { edges: "held" }) / index(panel)).toBeCloseTo(0.4974 / 0.6102, 6);
    // An endless clamped strip: moment p·b²/12 at the edge, stress 6/12.
    expect(heldFactor(9)).toBe(0.5);
    expect(heldFactor(1)).toBe(0.3078);
  });

  test("an open rim bears twice the load of a flat of its size, and no crown helps it", () => {
    const rim: WallPart = { kind: "rim", widthMm: 200, lengthMm: 400 };
    expect(index(rim) / index(panel)).toBeCloseTo(2, 9);
    expect(index(rim, { crownMm: 30, edges: "held" })).toBe(index(rim));
  });
});

const side = fc.double({ min: 20, max: 900, noNaN: true });
const some = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: undefined });
const support = fc.record({
  ribEveryMm: some(side),
  crownMm: some(fc.double({ min: 0.5, max: 80, noNaN: true })),
  sand: some(fc.constantFrom("loose" as const, "vibrated" as const)),
  edges: some(fc.constant("held" as const)),
});

describe("laws of support", () => {
  test("no support makes a load greater, and more wall makes it less with any of them", () =>
    fc.assert(
      fc.property(
        fc.record({ kind: fc.constantFrom("flat" as const, "rim" as const), widthMm: side, lengthMm: side }),
        support,
        fc.double({ min: 2, max: 50, noNaN: true }),
        fc.double({ min: 1.01, max: 4, noNaN: true }),
        (part, by, mm, more) => {
          const at = (of: number, support_ = by): number =>
            loadIndexMPa({ pressurePa, wallMm: of, part, support: support_ });
          expect(at(mm)).toBeLessThanOrEqual(at(mm, { ...by, ribEveryMm: undefined }) * (1 + 1e-9) + 0);
          expect(at(mm, { ...by, sand: "vibrated" })).toBeLessThanOrEqual(at(mm, { ...by, sand: undefined }));
          expect(at(mm, { ...by, edges: "held" })).toBeLessThanOrEqual(at(mm, { ...by, edges: undefined }));
          expect(at(mm)).toBeLessThanOrEqual(at(mm, { ...by, crownMm: undefined }));
          expect(at(mm * more)).toBeLessThan(at(mm));
        },
      ),
    ));
});
