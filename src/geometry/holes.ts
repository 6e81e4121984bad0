import { leastCap } from "./leastCap.ts";
import { boxOf } from "./massProperties.ts";
import type { Box } from "./massProperties.ts";
import type { Mesh } from "./mesh.ts";
import { earsOf, flatten } from "./polygon.ts";
import { cross, minus, type Vec3 } from "./vector.ts";

/** A hole in a surface, and what capping it in different ways adds to the volume about the middle of the box. */
export type Hole = {
  /** Vertices of the rim, in the order its cap runs. */
  readonly rim: readonly number[];
  /** Round the rim. */
  readonly length: number;
  /** Diagonal of the rim's own box over that of the mesh. */
  readonly share: number;
  readonly middle: Vec3;
  readonly capped: { readonly fan: number; readonly low: number; readonly high: number };
};

/**
 * Loops of open edges, widest first. Where loops meet in a vertex they are parted there. The volumes of caps: a fan
 * from the rim's middle, fans from each of its vertices, and the rim cut into triangles by itself ear by ear, for the
 * smallest surface and for the slightest folds; low and high are the least and greatest of them.
 */
export function holesOf(mesh: Mesh, open: Uint32Array): readonly Hole[] {
  if (open.length === 0) return [];
  const box = boxOf(mesh);
  const normalAt = normalsAlong(mesh, open);
  return loopsOf(open)
    .map((rim) => holeOf(mesh.pos, rim, box, normalAt))
    .toSorted((a, b) => b.share - a.share);
}

/** Follows edges backwards, since a cap runs against the surface it closes. */
function loopsOf(open: Uint32Array): readonly (readonly number[])[] {
  const ahead = new Map<number, number[]>();
  for (let i = 0; i < open.length; i += 2) {
    const [to, from] = [open[i]!, open[i + 1]!];
    const list = ahead.get(from);
    if (list === undefined) ahead.set(from, [to]);
    else list.push(to);
  }
  const loops: number[][] = [];
  for (const first of ahead.keys()) {
    for (;;) {
      const path: number[] = [];
      const placeOf = new Map<number, number>();
      let at = first;
      for (let next = ahead.get(at)?.pop(); next !== undefined; next = ahead.get(at)?.pop()) {
        placeOf.set(at, path.length);
        path.push(at);
        at = next;
        const back = placeOf.get(at);
        if (back === undefined) continue;
        const loop = path.splice(back);
        for (const vertex of loop) placeOf.delete(vertex);
        // Two edges to and fro enclose nothing.
        if (loop.length > 2) loops.push(loop);
      }
      if ((ahead.get(first)?.length ?? 0) === 0) break;
    }
  }
  return loops;
}

type NormalAt = (from: number, to: number) => Vec3 | null;

/** Normal of the face that runs along an open edge from one vertex to another. */
function normalsAlong({ pos, idx }: Mesh, open: Uint32Array): NormalAt {
  const vertices = pos.length / 3;
  const isOnRim = new Uint8Array(vertices);
  for (const v of open) isOnRim[v] = 1;
  const known = new Map<number, Vec3>();
  for (let i = 0; i < idx.length; i += 3)
    for (let k = 0; k < 3; k++) {
      const [a, b] = [idx[i + k]!, idx[i + ((k + 1) % 3)]!];
      if (isOnRim[a] === 0 || isOnRim[b] === 0) continue;
      const [p, q, r] = [pointOf(pos, a), pointOf(pos, b), pointOf(pos, idx[i + ((k + 2) % 3)]!)];
      known.set(a * vertices + b, cross(minus(q, p), minus(r, p)));
    }
  return (from, to) => known.get(from * vertices + to) ?? null;
}

const pointOf = (pos: Float32Array, v: number): Vec3 => [pos[3 * v]!, pos[3 * v + 1]!, pos[3 * v + 2]!];

function holeOf(pos: Float32Array, rim: readonly number[], box: Box, normalAt: NormalAt): Hole {
  const n = rim.length;
  const places = new Float64Array(3 * n);
  for (const [i, v] of rim.entries())
    for (let k = 0; k < 3; k++) places[3 * i + k] = pos[3 * v + k]! - box.middle[k as 0 | 1 | 2];
  const low = [Infinity, Infinity, Infinity];
  const high = [-Infinity, -Infinity, -Infinity];
  const middle = [0, 0, 0];
  const facing = [0, 0, 0];
  let length = 0;
  for (let i = 0; i < n; i++) {
    const a = places.subarray(3 * i, 3 * i + 3);
    const j = (i + 1) % n;
    const b = places.subarray(3 * j, 3 * j + 3);
    length += Math.hypot(b[0]! - a[0]!, b[1]! - a[1]!, b[2]! - a[2]!);
    for (let k = 0; k < 3; k++) {
      middle[k]! += a[k]! / n;
      low[k] = Math.min(low[k]!, a[k]!);
      high[k] = Math.max(high[k]!, a[k]!);
      const [p, q] = [(k + 1) % 3, (k + 2) % 3];
      facing[k]! += a[p]! * b[q]! - a[q]! * b[p]!;
    }
  }
  const fanFrom = (x: number, y: number, z: number): number =>
    (x * facing[0]! + y * facing[1]! + z * facing[2]!) / 6;
  const fan = fanFrom(middle[0]!, middle[1]!, middle[2]!);
  const all = [fan, ...rim.map((_, i) => fanFrom(places[3 * i]!, places[3 * i + 1]!, places[3 * i + 2]!))];
  const beyond = rim.map((v, i) => normalAt(rim[(i + 1) % n]!, v));
  const cuts = [
    earsOf(flatten(places)),
    leastCap(places, { by: "area", beyond }),
    leastCap(places, { by: "bend", beyond }),
  ];
  for (const cut of cuts) if (cut !== null) all.push(volumeOf(places, cut));
  const across = Math.hypot(high[0]! - low[0]!, high[1]! - low[1]!, high[2]! - low[2]!);
  return {
    rim,
    length,
    share: box.diagonal > 0 ? across / box.diagonal : 0,
    middle: [middle[0]! + box.middle[0], middle[1]! + box.middle[1], middle[2]! + box.middle[2]],
    capped: {
      fan,
      low: all.reduce((a, b) => Math.min(a, b)),
      high: all.reduce((a, b) => Math.max(a, b)),
    },
  };
}

function volumeOf(places: Float64Array, corners: readonly number[]): number {
  let six = 0;
  for (let i = 0; i < corners.length; i += 3) {
    const [a, b, c] = [3 * corners[i]!, 3 * corners[i + 1]!, 3 * corners[i + 2]!];
    const [bx, by, bz] = [places[b]!, places[b + 1]!, places[b + 2]!];
    const [cx, cy, cz] = [places[c]!, places[c + 1]!, places[c + 2]!];
    six +=
      places[a]! * (by * cz - bz * cy) +
      places[a + 1]! * (bz * cx - bx * cz) +
      places[a + 2]! * (bx * cy - by * cx);
  }
  return six / 6;
}
