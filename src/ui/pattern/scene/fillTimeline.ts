import type { Fill } from "../../../geometry/fillFromGate.ts";
import { dot } from "../../../geometry/vector.ts";

/** How far the fill is at a moment; `moments` of them after the first, which is empty. */
export type FillMoment = {
  readonly metalMl: number;
  /** Cut off so far. */
  readonly airMl: number;
  /** Highest place metal has come to, along up in mesh mm; null before it comes. */
  readonly topMm: number | null;
};

export const moments = 200;
const lastRank = 65_535;

/** The fill told moment by moment, even in volume. */
export function fillTimeline({
  grid,
  rank,
  pocketOf,
}: Pick<Fill, "grid" | "rank" | "pocketOf">): readonly FillMoment[] {
  const metal = new Float64Array(moments + 1);
  const air = new Float64Array(moments + 1);
  const top = new Int32Array(moments + 1).fill(-1);
  const layer = grid.nu * grid.nv;
  for (let cell = 0; cell < rank.length; cell++) {
    if (rank[cell] === 0) continue;
    const at = Math.min(moments, Math.ceil((moments * rank[cell]!) / lastRank));
    if (pocketOf[cell]) air[at]!++;
    else {
      metal[at]!++;
      const height = Math.floor(cell / layer);
      if (height > top[at]!) top[at] = height;
    }
  }
  const cellMl = grid.pitch ** 3 / 1000;
  const zero = dot(grid.origin, grid.w);
  const told: FillMoment[] = [];
  let [metalCells, airCells, highest] = [0, 0, -1];
  for (let at = 0; at <= moments; at++) {
    metalCells += metal[at]!;
    airCells += air[at]!;
    highest = Math.max(highest, top[at]!);
    const topMm = highest < 0 ? null : zero + (highest + 1) * grid.pitch;
    told.push({ metalMl: metalCells * cellMl, airMl: airCells * cellMl, topMm });
  }
  return told;
}
