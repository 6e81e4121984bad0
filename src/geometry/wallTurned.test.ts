import fc from "fast-check";
import { expect, test } from "vitest";
import { anyTurn, turnedInSpace } from "../../tests/meshes/anyTurn.ts";
import { wallThickness } from "../../tests/meshes/atOnce.ts";
import { ball, cup } from "../../tests/meshes/testShapes.ts";
import { boxes, refined, together, turned } from "../../tests/meshes/testSolids.ts";
import type { Mesh } from "./mesh.ts";

const asked = { cells: 48, samples: 600 };
const cube = refined(boxes([[0, 40, 0, 40, 0, 40]]), 8);
const rod = refined(
  turned(
    [
      [0, 0],
      [20, 0],
      [20, 40],
      [0, 40],
    ],
    32,
  ),
  2,
);
const corner: Mesh = refined(
  {
    pos: Float32Array.from([0, 0, 0, 40, 0, 0, 0, 40, 0, 0, 0, 40]),
    idx: Uint32Array.from([0, 2, 1, 0, 1, 3, 0, 3, 2, 1, 2, 3]),
  },
  8,
);

test("a cube of 40 is 40 thick everywhere, however it lies", () => {
  fc.assert(
    fc.property(anyTurn, (rotation) => {
      const { thin, thick, median, field } = wallThickness({ mesh: turnedInSpace(cube, rotation), ...asked });
      expect(median).toBeCloseTo(40, 3);
      expect(thin.map(({ thickness }) => Math.round(100 * thickness) / 100)).toEqual([40]);
      expect(thick).toHaveLength(1);
      expect(Math.abs(thick[0]!.diameter - 40)).toBeLessThan(0.1);
      for (const thickness of field) expect(Math.abs(thickness - 40)).toBeLessThan(0.01);
    }),
    { numRuns: 12 },
  );
});

test("a rod as wide as it is high and a ball are as thick as they are wide, however they lie", () => {
  fc.assert(
    fc.property(anyTurn, fc.constantFrom(rod, ball(20, 16)), (rotation, mesh) => {
      const { thin, field } = wallThickness({ mesh: turnedInSpace(mesh, rotation), ...asked });
      // By facets of 32 the round is up to 0.5 % less across, and 16 bands of a ball 1 %.
      for (const { thickness } of thin) expect(Math.abs(thickness - 40)).toBeLessThan(0.6);
      for (const thickness of field) expect(Math.abs(thickness - 40)).toBeLessThan(0.6);
    }),
    { numRuns: 8 },
  );
});

test("creases and edges of a corner cut off a cube are no walls: nothing in it is thin", () => {
  // Its faces meet at 90° and 54.7°; the largest ball in it has 3V/A for a radius: 40 / (3 + √3).
  fc.assert(
    fc.property(anyTurn, (rotation) => {
      const { thin, thick } = wallThickness({ mesh: turnedInSpace(corner, rotation), ...asked });
      expect(thin).toEqual([]);
      expect(Math.abs(thick[0]!.diameter - 80 / (3 + Math.sqrt(3)))).toBeLessThan(0.1);
    }),
    { numRuns: 6 },
  );
});

test("the wall of a cup is found thin, its rounded or sloping rim is not", () => {
  // Outside 15, wall 3; the rim slopes from 3 to nothing at 45°.
  const sharp = turned(
    [
      [0, 0],
      [15, 0],
      [15, 30],
      [12, 27],
      [12, 3],
      [0, 3],
    ],
    48,
  );
  for (const mesh of [cup, sharp]) {
    const { thin } = wallThickness({ mesh: refined(mesh, 3), cells: 96, samples: 3000 });
    expect(thin.length).toBeGreaterThan(0);
    for (const { thickness } of thin) expect(Math.abs(thickness - 3)).toBeLessThan(0.1);
  }
});

test("a blade whose sides lie 20° apart is a thin wall, one of 60° is an edge", () => {
  const blade = (degrees: number): Mesh => {
    const half = 30 * Math.tan((degrees / 360) * Math.PI);
    const pos = [0, 60].flatMap((y) => [0, y, 0, 30, y, -half, 30, y, half]);
    // prettier-ignore
    const idx = [0, 1, 2, 3, 5, 4, 0, 3, 4, 0, 4, 1, 0, 2, 5, 0, 5, 3, 1, 4, 5, 1, 5, 2];
    const form = { pos: Float32Array.from(pos), idx: Uint32Array.from(idx) };
    return refined(form, 6);
  };
  const thinnest = (degrees: number): number =>
    wallThickness({ mesh: blade(degrees), cells: 96, samples: 3000 }).thin[0]?.thickness ?? Infinity;
  expect(thinnest(20)).toBeLessThan(2);
  expect(thinnest(60)).toBe(Infinity);
});

test("two bodies that run into each other keep their own walls in any place in space", () => {
  const cross = together(boxes([[0, 20, 0, 20, 0, 20]]), boxes([[12, 40, 1, 19, 1, 19]]));
  fc.assert(
    fc.property(anyTurn, (rotation) => {
      const { thin } = wallThickness({ mesh: turnedInSpace(refined(cross, 3), rotation), ...asked });
      expect(thin[0]?.thickness).toBeCloseTo(18, 3);
    }),
    { numRuns: 6 },
  );
});
