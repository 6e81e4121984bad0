import type { Mesh } from "./mesh.ts";
import { airBehind } from "./airBehind.ts";
import type { Steps } from "./steps.ts";
import { dot, type Vec3 } from "./vector.ts";
import {
  middleOfCell,
  neighboursIn,
  solidCellAt,
  ventCells,
  voxelsOf,
  type Grid,
  type Voxels,
} from "./voxels.ts";

export type FillPocket = {
  readonly volume: number;
  /** Heights along up, mesh coordinates, to a cell. */
  readonly top: number;
  readonly level: number;
  /** Middle of one of its highest cells. */
  readonly point: Vec3;
};

export type Fill = {
  /** All the air that stays, cubed mesh units. */
  readonly trapped: number;
  /** The largest first; those of fewer than 8 cells only count in `trapped`. */
  readonly pockets: readonly FillPocket[];
  readonly solidVolume: number;
  /** Solid that no metal from this gate gets to: another body. */
  readonly unreached: number;
  readonly grid: Grid;
  /** For every cell when metal comes to it: 0 never (outside or not reached), 1 first to 65535 last, even in volume. */
  readonly rank: Uint16Array;
  /** For every cell its pocket, counted from 1 in the order of `pockets`; 0 none. Its rank says when it was cut off. */
  readonly pocketOf: Uint16Array;
};

type FillFrom = {
  readonly mesh: Mesh;
  readonly up: Vec3;
  readonly gate: Vec3;
  readonly vents: readonly Vec3[];
  readonly cells: number;
};

/**
 * Metal from a gate: it always goes to the lowest place it can reach, so it spills over a weir and drops beyond
 * it. Air it cuts off from every vent stays. `cells` (8–512) along the longest side of the box; parts thinner
 * than 3 of them are not followed. Gate and vents further than 3 cells from the solid are a RangeError.
 *
 * Even and slow: no splash, no freezing, no pressure of the air, no air through the shell.
 */
export function* fillFromGateSteps({ mesh, up, gate, vents, cells }: FillFrom): Steps<Fill> {
  const voxels = voxelsOf({ mesh, up, cells });
  yield 0.2;
  const { order, batches } = yield* invaded(voxels, solidCellAt(voxels, gate, "gate"));
  const { nu, nv, nw, pitch, origin, u, v, w } = voxels;
  const rank = new Uint16Array(voxels.solid.length);
  for (let b = 0; b + 1 < batches.length; b++) {
    const value = 1 + Math.floor((65_534 * batches[b]!) / Math.max(1, order.length));
    for (let at = batches[b]!; at < batches[b + 1]!; at++) rank[order[at]!] = value;
  }
  const isVent = new Uint8Array(voxels.solid.length);
  for (const vent of vents) for (const cell of ventCells(voxels, vent)) isVent[cell] = 1;
  yield 0.6;
  const trappedCells = yield* airBehind({ voxels, order, batches, isVent });
  yield 0.9;
  const { pockets, pocketOf } = pocketsOf(voxels, trappedCells);
  const cube = pitch ** 3;
  return {
    trapped: trappedCells.length * cube,
    pockets,
    solidVolume: voxels.count * cube,
    unreached: (voxels.count - order.length) * cube,
    grid: { nu, nv, nw, pitch, origin, u, v, w },
    rank,
    pocketOf,
  };
}

/** The order in which metal takes the cells, cut where it changes its level. */
function* invaded(voxels: Voxels, gate: number): Steps<{ order: Uint32Array; batches: Uint32Array }> {
  const { nw, solid, count } = voxels;
  const layer = voxels.nu * voxels.nv;
  const steps = neighboursIn(voxels);
  const reached = new Uint8Array(solid.length);
  const waiting: number[][] = Array.from({ length: nw }, () => []);
  const order = new Uint32Array(count);
  const batches: number[] = [];
  let low = Math.floor(gate / layer);
  waiting[low]!.push(gate);
  reached[gate] = 1;
  let n = 0;
  let level = -1;
  for (;;) {
    while (low < nw && waiting[low]!.length === 0) low++;
    if (low === nw) break;
    if (low !== level) {
      batches.push(n);
      level = low;
    }
    const cell = waiting[low]!.pop()!;
    order[n++] = cell;
    if (n % 500_000 === 0) yield 0.2 + (0.4 * n) / count;
    for (const step of steps) {
      const next = cell + step;
      if (!solid[next] || reached[next]) continue;
      reached[next] = 1;
      const k = Math.floor(next / layer);
      waiting[k]!.push(next);
      if (k < low) low = k;
    }
  }
  batches.push(n);
  return { order: order.subarray(0, n), batches: Uint32Array.from(batches) };
}

function pocketsOf(
  voxels: Voxels,
  cells: readonly number[],
): { pockets: FillPocket[]; pocketOf: Uint16Array } {
  const pocketOf = new Uint16Array(voxels.solid.length);
  const unmarked = 65_535;
  for (const cell of cells) pocketOf[cell] = unmarked;
  const steps = neighboursIn(voxels);
  const groups: number[][] = [];
  for (const seed of cells) {
    if (pocketOf[seed] !== unmarked) continue;
    pocketOf[seed] = 0;
    const group = [seed];
    for (const cell of group) {
      for (const step of steps) {
        if (pocketOf[cell + step] !== unmarked) continue;
        pocketOf[cell + step] = 0;
        group.push(cell + step);
      }
    }
    if (group.length >= 8) groups.push(group);
  }
  groups.sort((a, b) => b.length - a.length);
  const layer = voxels.nu * voxels.nv;
  const zero = dot(voxels.origin, voxels.w);
  const pockets = groups.slice(0, unmarked - 1).map((group, n): FillPocket => {
    let highest = group[0]!;
    let lowest = highest;
    for (const cell of group) {
      pocketOf[cell] = n + 1;
      if (cell > highest) highest = cell;
      if (cell < lowest) lowest = cell;
    }
    return {
      volume: group.length * voxels.pitch ** 3,
      top: zero + (Math.floor(highest / layer) + 1) * voxels.pitch,
      level: zero + Math.floor(lowest / layer) * voxels.pitch,
      point: middleOfCell(voxels, highest),
    };
  });
  return { pockets, pocketOf };
}
