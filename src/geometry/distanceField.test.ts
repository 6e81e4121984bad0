import fc from "fast-check";
import { expect, test } from "vitest";
import { distanceField, planeDistance } from "./distanceField.ts";
import type { Voxels } from "./voxels.ts";
import { finish } from "../../tests/meshes/atOnce.ts";

const n = 7;
const inner = n - 2;

/** A block of n³ cells with an empty rim, full where `full` says, pitch 2. */
function blockOf(full: readonly boolean[]): Voxels {
  const solid = new Uint8Array(n ** 3);
  full.forEach((isFull, at) => {
    const [i, j, k] = [at % inner, Math.floor(at / inner) % inner, Math.floor(at / inner ** 2)];
    solid[((k + 1) * n + j + 1) * n + i + 1] = isFull ? 1 : 0;
  });
  const count = solid.reduce((sum, s) => sum + s, 0);
  return {
    nu: n,
    nv: n,
    nw: n,
    pitch: 2,
    origin: [0, 0, 0],
    u: [1, 0, 0],
    v: [0, 1, 0],
    w: [0, 0, 1],
    solid,
    count,
  };
}

test("every cell is as far from the surface as its nearest empty cell, less half a cell", () => {
  const cells = fc.array(fc.boolean(), { minLength: inner ** 3, maxLength: inner ** 3 });
  const mostlyFull = fc.array(fc.nat(9), { minLength: inner ** 3, maxLength: inner ** 3 });
  fc.assert(
    fc.property(
      fc.oneof(
        cells,
        mostlyFull.map((a) => a.map((x) => x > 0)),
      ),
      (full) => {
        const block = blockOf(full);
        const field = finish(distanceField(block));
        const at = (c: number) => [c % n, Math.floor(c / n) % n, Math.floor(c / n ** 2)] as const;
        for (let c = 0; c < n ** 3; c++) {
          let nearest = Infinity;
          const [i, j, k] = at(c);
          for (let o = 0; o < n ** 3; o++) {
            const [x, y, z] = at(o);
            if (!block.solid[o]) nearest = Math.min(nearest, Math.hypot(i - x, j - y, k - z));
          }
          expect(field[c]).toBeCloseTo(block.solid[c] ? 2 * (nearest - 0.5) : 0, 5);
        }
      },
    ),
    { numRuns: 15 },
  );
});

test("in the middle of a square of 9 pixels the edge is 4.5 away", () => {
  const isIn = new Uint8Array(13 * 13);
  for (let j = 2; j < 11; j++) isIn.fill(1, 13 * j + 2, 13 * j + 11);
  expect(planeDistance(isIn, { nu: 13, nv: 13 })[6 * 13 + 6]).toBeCloseTo(4.5, 6);
});
