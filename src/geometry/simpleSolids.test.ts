import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { hollowAreaM2, solidAreaM2 } from "./simpleSolids.ts";
import { solidVolumeM3 } from "../../tests/meshes/solidVolume.ts";

describe("closed forms", () => {
  test("a box of 200 × 100 × 300 mm has 0.22 m² of face and 6 litres", () => {
    const box = { kind: "box", widthMm: 200, depthMm: 100, heightMm: 300 } as const;
    expect(solidAreaM2(box)).toBeCloseTo(0.22, 12);
    expect(solidVolumeM3(box)).toBeCloseTo(0.006, 12);
  });

  test("a sphere in its cylinder has two thirds of its volume and of its whole face", () => {
    const sphere = { kind: "sphere", diameterMm: 120 } as const;
    const cylinder = { kind: "cylinder", diameterMm: 120, heightMm: 120 } as const;
    // Archimedes, On the Sphere and Cylinder.
    expect(solidAreaM2(sphere) / solidAreaM2(cylinder)).toBeCloseTo(2 / 3, 12);
    expect(solidVolumeM3(sphere) / solidVolumeM3(cylinder)).toBeCloseTo(2 / 3, 12);
    expect(solidAreaM2(sphere)).toBeCloseTo(0.045239, 6);
  });

  test("a litre in a sphere is 124.07 mm across", () => {
    expect(solidVolumeM3({ kind: "sphere", diameterMm: 124.07 })).toBeCloseTo(0.001, 6);
  });

  test("1.9 kg of wax 5 mm thick is 0.40 m² on one side, twice that where slurry reaches the inside", () => {
    const wax = { massKg: 1.9, wallMm: 5, densityKgM3: 950 };
    expect(hollowAreaM2({ ...wax, faces: 1 })).toBeCloseTo(0.4, 12);
    expect(hollowAreaM2({ ...wax, faces: 2 })).toBeCloseTo(0.8, 12);
  });

  test("a hollow ball's weight gives its mean sphere back to within a hundredth", () => {
    const [outer, wallMm, densityKgM3] = [200, 6, 950];
    const shellM3 =
      solidVolumeM3({ kind: "sphere", diameterMm: outer }) -
      solidVolumeM3({ kind: "sphere", diameterMm: outer - 2 * wallMm });
    const found = hollowAreaM2({ massKg: shellM3 * densityKgM3, wallMm, densityKgM3, faces: 1 });
    expect(found / solidAreaM2({ kind: "sphere", diameterMm: outer - wallMm })).toBeCloseTo(1, 2);
  });
});

describe("laws", () => {
  const size = fc.double({ min: 1, max: 3000, noNaN: true });

  test("no solid has less face than the sphere of its volume", () =>
    fc.assert(
      fc.property(size, size, size, (widthMm, depthMm, heightMm) => {
        const sphereOf = (m3: number): number => Math.PI ** (1 / 3) * (6 * m3) ** (2 / 3);
        const box = { kind: "box", widthMm, depthMm, heightMm } as const;
        const cylinder = { kind: "cylinder", diameterMm: widthMm, heightMm } as const;
        expect(solidAreaM2(box)).toBeGreaterThan(sphereOf(solidVolumeM3(box)));
        expect(solidAreaM2(cylinder)).toBeGreaterThan(sphereOf(solidVolumeM3(cylinder)));
      }),
    ));

  test("a box is the same whichever side it stands on", () =>
    fc.assert(
      fc.property(size, size, size, (a, b, c) => {
        const stood = solidAreaM2({ kind: "box", widthMm: a, depthMm: b, heightMm: c });
        expect(solidAreaM2({ kind: "box", widthMm: c, depthMm: a, heightMm: b }) / stood).toBeCloseTo(1, 12);
      }),
    ));
});

test.each([
  ["a face without size", () => solidAreaM2({ kind: "sphere", diameterMm: 0 }), /diameterMm.*found 0/],
  ["no number", () => solidAreaM2({ kind: "cylinder", diameterMm: NaN, heightMm: 1 }), /diameterMm.*NaN/],
  [
    "g/cm³",
    () => hollowAreaM2({ massKg: 1, wallMm: 5, densityKgM3: 0.95, faces: 1 }),
    /densityKgM3 must be 10–25000/,
  ],
])("%s is refused with what was found", (_, call, message) => {
  expect(call).toThrow(RangeError);
  expect(call).toThrow(message);
});
