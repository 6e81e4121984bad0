import fc from "fast-check";
import { expect, test } from "vitest";
import { areaM2Of } from "./areaEstimate.ts";

test("a cube of 100 mm has six faces of 0.01 m²", () =>
  expect(areaM2Of({ kind: "box", lengthMm: 100, widthMm: 100, heightMm: 100 }, "smooth")).toBeCloseTo(
    0.06,
    12,
  ));

test("a ball has two thirds of the skin of the cylinder around it", () =>
  // Archimedes, On the Sphere and Cylinder, I.34.
  expect(
    areaM2Of({ kind: "sphere", diameterMm: 120 }, "smooth") /
      areaM2Of({ kind: "cylinder", diameterMm: 120, heightMm: 120 }, "smooth"),
  ).toBeCloseTo(2 / 3, 12));

test("a printed shell of 124 g PLA, 1 mm thick, covers 0.1 m²", () =>
  expect(
    areaM2Of({ kind: "weighed", massG: 124, densityKgM3: 1240, thicknessMm: 1, faces: 1 }, "smooth"),
  ).toBeCloseTo(0.1, 12));

test("a piece twice as large has four times the skin, and relief never takes any away", () =>
  fc.assert(
    fc.property(
      fc.double({ min: 1, max: 2000, noNaN: true }),
      fc.double({ min: 1, max: 2000, noNaN: true }),
      (diameterMm, heightMm) => {
        const one = areaM2Of({ kind: "cylinder", diameterMm, heightMm }, "smooth");
        const two = areaM2Of(
          { kind: "cylinder", diameterMm: 2 * diameterMm, heightMm: 2 * heightMm },
          "smooth",
        );
        expect(two / one).toBeCloseTo(4, 9);
        expect(areaM2Of({ kind: "cylinder", diameterMm, heightMm }, "deep")).toBeGreaterThan(one);
      },
    ),
  ));
