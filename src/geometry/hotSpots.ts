import { descending } from "./order.ts";
import { rootOf } from "./unionFind.ts";
import type { Vec3 } from "./vector.ts";
import { middleOfCell, neighboursIn, solidCellAt, type Voxels } from "./voxels.ts";

/** A feeder, gate or sprue where it meets the solid: the metal within `radius` of the point stays liquid longest. */
export type Feed = { readonly point: Vec3; readonly radius: number };

/** A place in the solid; lengths in mesh units. */
export type HotPlace = {
  readonly point: Vec3;
  /** Thickness of the endless plate that freezes with it. */
  readonly plate: number;
  /** Diameter of the largest ball about it within the solid. */
  readonly ball: number;
};

export type HotSpot = HotPlace & {
  /**
   * On the best way to a feed the place that freezes first, and its plate. Null when no feed is to be reached. A hot
   * spot whose way only gets thicker is none.
   */
  readonly neck: HotPlace | null;
};

type Spot = { readonly cell: number; neck: number | null };

/**
 * Local tops of the freezing measure that stand out by a twentieth from the neck to a later one, the last to freeze
 * first, each with the neck on the way to a feed. Cells are added from the last to freeze to the first; where an unfed
 * part meets a fed one is the neck of all its hot spots.
 */
export function hotSpotsOf({
  voxels,
  plate,
  distance,
  feeds,
}: {
  voxels: Voxels;
  plate: Float32Array;
  /** To the surface. */
  distance: Float32Array;
  feeds: readonly Feed[];
}): readonly HotSpot[] {
  const cells = new Uint32Array(voxels.count);
  const place = new Int32Array(plate.length).fill(-1);
  const fedCells = feedCells(voxels, feeds);
  const heat = new Float32Array(voxels.count);
  let n = 0;
  for (let cell = 0; cell < plate.length; cell++) {
    if (!voxels.solid[cell]) continue;
    place[cell] = n;
    heat[n] = fedCells.has(cell) ? 1e30 : plate[cell]!;
    cells[n++] = cell;
  }
  const order = descending(heat);
  const parent = new Int32Array(n).fill(-1);
  const isFed = new Uint8Array(n);
  const spots = new Map<number, Spot[]>();
  const kept = new Set<Spot>();
  const steps = neighboursIn(voxels);
  for (const i of order) {
    parent[i] = i;
    const cell = cells[i]!;
    isFed[i] = fedCells.has(cell) ? 1 : 0;
    let root = i;
    let isNew = isFed[i] === 0;
    for (const step of steps) {
      const other = place[cell + step]!;
      if (other < 0 || parent[other]! < 0) continue;
      const theirs = rootOf(parent, other);
      if (theirs === root) continue;
      root = meet(theirs, root, cell);
      isNew = false;
    }
    if (isNew) spots.set(i, [{ cell, neck: null }]);
  }
  for (const left of spots.values()) if (left[0]) kept.add(left[0]);
  return [...kept]
    .map(({ cell, neck }): HotSpot => {
      const at = (c: number) => ({
        point: middleOfCell(voxels, c),
        plate: plate[c]!,
        ball: 2 * distance[c]!,
      });
      return { ...at(cell), neck: neck === null ? null : at(neck) };
    })
    .sort((a, b) => b.plate - a.plate);

  function meet(a: number, b: number, cell: number): number {
    const [ofA, ofB] = [spots.get(a) ?? [], spots.get(b) ?? []];
    spots.delete(a);
    spots.delete(b);
    // Each list is led by its hottest.
    const [warm, cool] =
      (plate[ofA[0]?.cell ?? -1] ?? 0) >= (plate[ofB[0]?.cell ?? -1] ?? 0) ? [ofA, ofB] : [ofB, ofA];
    const standsOut = (spot: Spot | undefined): boolean => !!spot && plate[spot.cell]! > 1.05 * plate[cell]!;
    if (isFed[a] !== isFed[b]) {
      for (const spot of isFed[a] ? ofB : ofA) {
        spot.neck = cell;
        if (standsOut(spot)) kept.add(spot);
      }
    } else if (!isFed[a]) {
      if (cool[0] && !standsOut(cool[0])) cool.shift();
      for (const spot of cool) kept.add(spot);
      if (warm.length + cool.length > 0) spots.set(a, [...warm, ...cool]);
    }
    parent[b] = a;
    isFed[a] = isFed[a]! | isFed[b]!;
    return a;
  }
}

function feedCells(voxels: Voxels, feeds: readonly Feed[]): ReadonlySet<number> {
  const { nu, nv, nw, pitch, solid } = voxels;
  const found = new Set<number>();
  for (const { point, radius } of feeds) {
    const middle = solidCellAt(voxels, point, "feed");
    found.add(middle);
    const reach = Math.floor(radius / pitch);
    const [ci, cj, ck] = [middle % nu, Math.floor(middle / nu) % nv, Math.floor(middle / (nu * nv))];
    for (let k = Math.max(0, ck - reach); k <= Math.min(nw - 1, ck + reach); k++) {
      for (let j = Math.max(0, cj - reach); j <= Math.min(nv - 1, cj + reach); j++) {
        for (let i = Math.max(0, ci - reach); i <= Math.min(nu - 1, ci + reach); i++) {
          const cell = (k * nv + j) * nu + i;
          if (solid[cell] && (i - ci) ** 2 + (j - cj) ** 2 + (k - ck) ** 2 <= reach ** 2) found.add(cell);
        }
      }
    }
  }
  return found;
}
