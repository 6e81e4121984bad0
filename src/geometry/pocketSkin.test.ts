import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Grid } from "./voxels.ts";
import { pocketSkin } from "./pocketSkin.ts";
import { measureMesh } from "../../tests/meshes/atOnce.ts";

const grid: Grid = {
  nu: 14,
  nv: 12,
  nw: 16,
  pitch: 2,
  origin: [100, 0, -5],
  u: [0.6, 0.8, 0],
  v: [-0.8, 0.6, 0],
  w: [0, 0, 1],
};
const cells = (isIn: (i: number, j: number, k: number) => boolean): Uint8Array =>
  Uint8Array.from({ length: grid.nu * grid.nv * grid.nw }, (_, cell) => {
    const i = cell % grid.nu;
    const row = (cell - i) / grid.nu;
    return isIn(i, row % grid.nv, Math.floor(row / grid.nv)) ? 1 : 0;
  });

describe("the skin of a pocket", () => {
  test("round no cells there is none", () => {
    expect(
      pocketSkin(
        grid,
        cells(() => false),
      ),
    ).toBeNull();
  });

  test("round a block it is closed, looks outward, and holds the block but for its rounded edges", () => {
    const isIn = (i: number, j: number, k: number) =>
      i >= 2 && i < 12 && j >= 2 && j < 10 && k >= 3 && k < 13;
    const skin = pocketSkin(grid, cells(isIn))!;
    const { volume, watertight, box } = measureMesh(skin);
    expect(watertight).toBe(true);
    const block = 10 * 8 * 10 * 8;
    expect(volume!).toBeGreaterThan(0.93 * block);
    expect(volume!).toBeLessThan(block);
    expect(box.low[2]).toBeCloseTo(-5 + 3 * 2, 5);
    expect(box.high[2]).toBeCloseTo(-5 + 13 * 2, 5);
  });

  test("every cut of the cells is stopped by a face: as many quads as faces between in and out", () => {
    fc.assert(
      fc.property(fc.array(fc.nat(10 * 8 * 12 - 1), { minLength: 1, maxLength: 60 }), (picked) => {
        const isIn = cells(() => false);
        for (const n of picked) {
          const [i, j, k] = [n % 10, Math.floor(n / 10) % 8, Math.floor(n / 80)];
          isIn[(k + 2) * grid.nu * grid.nv + (j + 2) * grid.nu + i + 2] = 1;
        }
        let faces = 0;
        for (let cell = 0; cell < isIn.length; cell++)
          for (const step of [1, grid.nu, grid.nu * grid.nv]) {
            if ((isIn[cell] ?? 0) !== (isIn[cell + step] ?? 0)) faces++;
          }
        const skin = pocketSkin(grid, isIn)!;
        expect(skin.idx.length).toBe(6 * faces);
        expect([...skin.pos].every(Number.isFinite)).toBe(true);
      }),
      { numRuns: 100 },
    );
  });
});
