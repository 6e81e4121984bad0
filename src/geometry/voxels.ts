import { dexelsOf, placeIn, cellsAt, type Dexels } from "./dexels.ts";
import type { Mesh } from "./mesh.ts";
import { plus, times, type Vec3 } from "./vector.ts";

/** A block of cubes of `pitch`: cell (i, j, k) has index (k·nv + j)·nu + i and its corner at origin + (i·u + j·v + k·w)·pitch. */
export type Grid = {
  readonly nu: number;
  readonly nv: number;
  readonly nw: number;
  readonly pitch: number;
  readonly origin: Vec3;
  readonly u: Vec3;
  readonly v: Vec3;
  readonly w: Vec3;
};

export type Voxels = Grid & {
  /** 1 where the middle of the cell lies in the solid. */
  readonly solid: Uint8Array;
  /** How many are. */
  readonly count: number;
};

/**
 * The solid as cubes, `cells` of them (8–512) along the longest side of its box turned with `up`. A rim of empty
 * cells stands all round, so that no solid cell lies at the edge.
 */
export function voxelsOf({ mesh, up, cells }: { mesh: Mesh; up: Vec3; cells: number }): Voxels {
  if (!(cells >= 8 && cells <= 512)) throw new RangeError(`cells must be 8–512, found ${cells}`);
  return voxelsIn(dexelsOf({ mesh, up, cells, by: "box" }));
}

export function voxelsIn(dexels: Dexels): Voxels {
  const { pitch, start, bottom, top } = dexels;
  // The nearest whole number of layers, in the middle: a flat piece is off by half a cell at most.
  const layers = Math.max(1, Math.round(dexels.height / pitch));
  const nu = dexels.nu + 2;
  const nv = dexels.nv + 2;
  const nw = layers + 2;
  const low = (dexels.height - layers * pitch) / 2;
  const solid = new Uint8Array(nu * nv * nw);
  let count = 0;
  for (let j = 0; j < dexels.nv; j++) {
    for (let i = 0; i < dexels.nu; i++) {
      const c = j * dexels.nu + i;
      for (let node = start[c]!; node < start[c + 1]!; node++) {
        const from = Math.max(0, Math.ceil((bottom[node]! - low) / pitch - 0.5));
        const to = Math.min(layers, Math.ceil((top[node]! - low) / pitch - 0.5));
        for (let k = from; k < to; k++) {
          const cell = ((k + 1) * nv + j + 1) * nu + i + 1;
          count += 1 - solid[cell]!;
          solid[cell] = 1;
        }
      }
    }
  }
  const origin = plus(placeIn(dexels, -1, -1, 0), times(dexels.w, low - pitch));
  const { u, v, w } = dexels;
  return { nu, nv, nw, pitch, origin, u, v, w, solid, count };
}

/** Middle of a cell, mesh coordinates. */
export function middleOfCell(grid: Grid, cell: number): Vec3 {
  const i = cell % grid.nu;
  const row = (cell - i) / grid.nu;
  const j = row % grid.nv;
  return placeIn(grid, i + 0.5, j + 0.5, ((row - j) / grid.nv + 0.5) * grid.pitch);
}

/** Steps to the six neighbours of a cell that is not at the rim. */
export const neighboursIn = ({ nu, nv }: Grid): readonly number[] => [-1, 1, -nu, nu, -nu * nv, nu * nv];

/** The cell a point lies in, or null outside the block. */
export function cellOf(grid: Grid, p: Vec3): number | null {
  const [u, v, height] = cellsAt(grid, p);
  const [i, j, k] = [Math.floor(u), Math.floor(v), Math.floor(height / grid.pitch)];
  const isInside = i >= 0 && j >= 0 && k >= 0 && i < grid.nu && j < grid.nv && k < grid.nw;
  return isInside ? (k * grid.nv + j) * grid.nu + i : null;
}

/** The solid cell nearest to a point, within 3 pitches; else a RangeError that names `what`. */
export function solidCellAt(voxels: Voxels, p: Vec3, what: string): number {
  const { nu, nv, nw, pitch, solid } = voxels;
  const [u, v, height] = cellsAt(voxels, p);
  const w = height / pitch;
  let best = -1;
  let least = 9;
  for (let k = Math.max(0, Math.floor(w) - 3); k <= Math.min(nw - 1, w + 3); k++) {
    for (let j = Math.max(0, Math.floor(v) - 3); j <= Math.min(nv - 1, v + 3); j++) {
      for (let i = Math.max(0, Math.floor(u) - 3); i <= Math.min(nu - 1, u + 3); i++) {
        const cell = (k * nv + j) * nu + i;
        if (!solid[cell]) continue;
        const apart = (i + 0.5 - u) ** 2 + (j + 0.5 - v) ** 2 + (k + 0.5 - w) ** 2;
        if (apart < least) [least, best] = [apart, cell];
      }
    }
  }
  if (best < 0) throw new RangeError(`a ${what} must lie on the solid, found [${p.join(", ")}] outside it`);
  return best;
}

/** The solid cells a vent at a point opens: the nearest and its neighbours, a vent being wider than a cell. */
export function ventCells(voxels: Voxels, vent: Vec3): readonly number[] {
  const first = solidCellAt(voxels, vent, "vent");
  const steps = neighboursIn(voxels);
  const found = new Set([first]);
  for (const cell of [first, ...steps.map((step) => first + step)]) {
    if (!voxels.solid[cell]) continue;
    for (const step of steps) if (voxels.solid[cell + step]) found.add(cell + step);
  }
  return [...found];
}
