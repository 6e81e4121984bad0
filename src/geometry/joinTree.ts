import { descending } from "./order.ts";
import type { Surface } from "./surface.ts";
import { rootOf } from "./unionFind.ts";
import { dot, type Vec3 } from "./vector.ts";

/** A local top of the surface and the vertex where, coming down, it meets a higher one (or where its body ends). */
export type Branch = { readonly tip: number; readonly saddle: number; readonly whole: boolean };

export type JoinTree = {
  /** Height of every vertex along `up`, from the middle of the box. */
  readonly heights: Float64Array;
  readonly branches: readonly Branch[];
};

/**
 * Join tree of a surface: vertices are added from the top down, each joins its neighbours already there; where two
 * parts meet, the one with the lower top ends. Branches that rise less than `minRise` are left out. `up` is a unit
 * direction. (Carr, Snoeyink & Axen, Computing contour trees in all dimensions, 2003, from memory.)
 */
export function joinTree({
  surface,
  up,
  minRise,
}: {
  surface: Surface;
  up: Vec3;
  minRise: number;
}): JoinTree {
  const { pos, first, beside, middle } = surface;
  const n = pos.length / 3;
  const heights = new Float64Array(n);
  const [ux, uy, uz] = up;
  const zero = dot(middle, up);
  for (let v = 0; v < n; v++) {
    heights[v] = pos[3 * v]! * ux + pos[3 * v + 1]! * uy + pos[3 * v + 2]! * uz - zero;
  }
  const order = descending(heights);
  const rank = new Uint32Array(n);
  for (let i = 0; i < n; i++) rank[order[i]!] = i;
  const parent = new Int32Array(n);
  const tip = new Uint32Array(n);
  const last = new Uint32Array(n);
  const branches: Branch[] = [];
  for (let i = 0; i < n; i++) {
    const v = order[i]!;
    const end = first[v + 1]!;
    if (first[v] === end) continue;
    parent[v] = v;
    tip[v] = v;
    last[v] = v;
    let root = v;
    for (let at = first[v]!; at < end; at++) {
      const other = beside[at]!;
      if (rank[other]! >= i) continue;
      const theirs = rootOf(parent, other);
      if (theirs === root) continue;
      const higher = rank[tip[theirs]!]! < rank[tip[root]!]! ? theirs : root;
      const lower = higher === root ? theirs : root;
      const dead = tip[lower]!;
      const isHigh = dead !== v && heights[dead]! - heights[v]! >= minRise;
      if (isHigh) branches.push({ tip: dead, saddle: v, whole: false });
      parent[lower] = higher;
      root = higher;
    }
    last[root] = v;
  }
  for (let v = 0; v < n; v++) {
    if (parent[v] !== v || first[v] === first[v + 1]) continue;
    if (heights[tip[v]!]! - heights[last[v]!]! < minRise) continue;
    branches.push({ tip: tip[v]!, saddle: last[v]!, whole: true });
  }
  return { heights, branches };
}
