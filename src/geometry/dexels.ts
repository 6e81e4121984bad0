import { crossingsOf, turnedInto, type Crossings } from "./crossings.ts";
import type { Mesh } from "./mesh.ts";
import { dot, minus, plus, squareTo, times, unit, type Vec3 } from "./vector.ts";

/**
 * Columns of solid along `w`. Column (i, j) stands over the middle of cell i, j of a raster in u and v from
 * `origin`; its intervals are `start[c] … start[c + 1] - 1` of `bottom` and `top`, c = j·nu + i, from the lowest up,
 * heights along w from `origin`.
 */
export type Dexels = {
  readonly nu: number;
  readonly nv: number;
  readonly pitch: number;
  readonly origin: Vec3;
  readonly u: Vec3;
  readonly v: Vec3;
  readonly w: Vec3;
  /** Height of the box along w. */
  readonly height: number;
  readonly start: Uint32Array;
  readonly bottom: Float64Array;
  readonly top: Float64Array;
  /** Columns in which a skin is open or turned: what enters does not come out. */
  readonly badColumns: number;
};

/** Turned in its plane so that faces of a pattern do not run along the raster, which biases volumes by percents. */
const turnRad = 0.6;

/**
 * Cuts a mesh into columns along `up`, `cells` of them over its longest side (of the shadow, or of all three with
 * `by: "box"`). Solid is where the winding number is above 0, so bodies that overlap count once. 8 to 2048 cells.
 */
export function dexelsOf({
  mesh,
  up,
  cells,
  by = "shadow",
}: {
  mesh: Mesh;
  up: Vec3;
  cells: number;
  by?: "shadow" | "box" | undefined;
}): Dexels {
  if (!(cells >= 8 && cells <= 2048)) throw new RangeError(`cells must be 8–2048, found ${cells}`);
  const w = unit(up);
  const [a, b] = squareTo(w);
  const u = plus(times(a, Math.cos(turnRad)), times(b, Math.sin(turnRad)));
  const v = minus(times(b, Math.cos(turnRad)), times(a, Math.sin(turnRad)));
  const { uvw, low, high } = turnedInto(mesh, [u, v, w]);
  const size = [0, 1, 2].map((k) => high[k]! - low[k]!) as [number, number, number];
  const longest = by === "box" ? Math.max(...size) : Math.max(size[0], size[1]);
  if (!(longest > 0 && longest < Infinity))
    throw new RangeError(`a mesh must have an extent, found ${longest}`);
  const pitch = longest / cells;
  const nu = Math.max(1, Math.ceil(size[0] / pitch));
  const nv = Math.max(1, Math.ceil(size[1] / pitch));
  const raster = {
    nu,
    nv,
    pitch,
    u0: (low[0] + high[0] - nu * pitch) / 2,
    v0: (low[1] + high[1] - nv * pitch) / 2,
  };
  const crossings = crossingsOf(mesh.idx, uvw, raster);
  const origin = plus(plus(times(u, raster.u0), times(v, raster.v0)), times(w, low[2]));
  return { nu, nv, pitch, origin, u, v, w, height: size[2], ...intervalsOf(crossings, nu * nv, low[2]) };
}

/** A place of the raster (in cells) and a height above `origin`, in mesh coordinates. */
export function placeIn({ origin, u, v, w, pitch }: Frame, i: number, j: number, height: number): Vec3 {
  return plus(plus(origin, times(u, i * pitch)), plus(times(v, j * pitch), times(w, height)));
}

/** The other way round: cells along u and v, height along w. */
export function cellsAt({ origin, u, v, w, pitch }: Frame, p: Vec3): Vec3 {
  const from = minus(p, origin);
  return [dot(from, u) / pitch, dot(from, v) / pitch, dot(from, w)];
}

type Frame = Pick<Dexels, "origin" | "u" | "v" | "w" | "pitch">;

/** Sorts crossings into columns and joins them to intervals where the winding number is above 0. */
function intervalsOf({ cell, at, enters, count }: Crossings, columns: number, low: number) {
  const first = new Uint32Array(columns + 1);
  for (let k = 0; k < count; k++) first[cell[k]! + 1]!++;
  for (let c = 0; c < columns; c++) first[c + 1]! += first[c]!;
  const next = first.slice(0, columns);
  const sorted = new Uint32Array(count);
  for (let k = 0; k < count; k++) sorted[next[cell[k]!]!++] = k;
  // Where one body ends at the height at which another begins, they are one: entering comes first.
  const before = (a: number, b: number): boolean =>
    at[a]! < at[b]! || (at[a] === at[b] && enters[a]! > enters[b]!);
  const start = new Uint32Array(columns + 1);
  const bottom = new Float64Array(count >> 1);
  const top = new Float64Array(count >> 1);
  let n = 0;
  let badColumns = 0;
  for (let c = 0; c < columns; c++) {
    start[c] = n;
    const end = first[c + 1]!;
    sortColumn(sorted, first[c]!, end, before);
    let winding = 0;
    let opened = 0;
    for (let k = first[c]!; k < end; k++) {
      const item = sorted[k]!;
      if (enters[item] === 1) {
        if (winding++ === 0) opened = at[item]!;
      } else if (--winding === 0 && at[item]! > opened) {
        bottom[n] = opened - low;
        top[n++] = at[item]! - low;
      }
    }
    if (winding !== 0) badColumns++;
  }
  start[columns] = n;
  return { start, bottom: bottom.slice(0, n), top: top.slice(0, n), badColumns };
}

/** Most columns pass a handful of skins; where thousands meet at an edge an insertion sort would crawl. */
function sortColumn(
  items: Uint32Array,
  from: number,
  to: number,
  before: (a: number, b: number) => boolean,
): void {
  if (to - from > 24) {
    items.subarray(from, to).sort((a, b) => (before(a, b) ? -1 : before(b, a) ? 1 : a - b));
    return;
  }
  for (let k = from + 1; k < to; k++) {
    const item = items[k]!;
    let slot = k;
    for (; slot > from && before(item, items[slot - 1]!); slot--) items[slot] = items[slot - 1]!;
    items[slot] = item;
  }
}
