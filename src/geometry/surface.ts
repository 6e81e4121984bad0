import type { Mesh } from "./mesh.ts";
import type { Vec3 } from "./vector.ts";
import { dropDegenerate, weldMesh } from "./weld.ts";

/** A mesh made ready for walking: one vertex a place, no collapsed triangles, the triangles round every vertex. */
export type Surface = {
  readonly pos: Float32Array;
  readonly idx: Uint32Array;
  /** `around[start[v]] … around[start[v + 1] - 1]` are the triangles at vertex v. */
  readonly start: Uint32Array;
  readonly around: Uint32Array;
  /** `beside[first[v]] … beside[first[v + 1] - 1]` are the vertices that share an edge with v. */
  readonly first: Uint32Array;
  readonly beside: Uint32Array;
  readonly middle: Vec3;
  /** Diagonal of the box. */
  readonly size: number;
};

export function pointAt(pos: Float32Array, v: number): Vec3 {
  return [pos[3 * v]!, pos[3 * v + 1]!, pos[3 * v + 2]!];
}

const known = new WeakMap<Mesh, Surface>();

/** Kept as long as the mesh lives, since every direction asks for it again. A mesh must not be changed in place. */
export function surfaceOf(mesh: Mesh): Surface {
  const before = known.get(mesh);
  if (before) return before;
  const made = makeSurface(mesh);
  known.set(mesh, made);
  return made;
}

function makeSurface(mesh: Mesh): Surface {
  const { pos, idx: tris } = dropDegenerate(weldMesh(mesh)).mesh;
  const n = tris.length;
  const vertices = pos.length / 3;
  const start = new Uint32Array(vertices + 1);
  for (let i = 0; i < n; i++) start[tris[i]! + 1]!++;
  for (let v = 0; v < vertices; v++) start[v + 1]! += start[v]!;
  const around = new Uint32Array(n);
  const next = start.slice(0, vertices);
  for (let i = 0; i < n; i++) around[next[tris[i]!]!++] = (i / 3) | 0;
  const { low, high } = boxOf(pos, tris);
  return {
    pos,
    idx: tris,
    start,
    around,
    ...neighboursOf({ idx: tris, start, around }),
    middle: [(low[0] + high[0]) / 2, (low[1] + high[1]) / 2, (low[2] + high[2]) / 2],
    size: Math.hypot(high[0] - low[0], high[1] - low[1], high[2] - low[2]),
  };
}

function neighboursOf({ idx, start, around }: Pick<Surface, "idx" | "start" | "around">) {
  const vertices = start.length - 1;
  const first = new Uint32Array(vertices + 1);
  const beside = new Uint32Array(2 * around.length);
  // The last vertex that listed each: a search of the list itself would crawl at a hub of thousands.
  const listedBy = new Int32Array(vertices).fill(-1);
  let n = 0;
  for (let v = 0; v < vertices; v++) {
    listedBy[v] = v;
    for (let at = start[v]!; at < start[v + 1]!; at++) {
      for (let k = 0; k < 3; k++) {
        const other = idx[3 * around[at]! + k]!;
        if (listedBy[other] === v) continue;
        listedBy[other] = v;
        beside[n++] = other;
      }
    }
    first[v + 1] = n;
  }
  return { first, beside: beside.slice(0, n) };
}

/** Box of the corners that triangles use. A RangeError for coordinates that are no numbers. */
function boxOf(
  pos: Float32Array,
  idx: Uint32Array,
): { low: [number, number, number]; high: [number, number, number] } {
  const low: [number, number, number] = [Infinity, Infinity, Infinity];
  const high: [number, number, number] = [-Infinity, -Infinity, -Infinity];
  for (let i = 0; i < idx.length; i++) {
    for (let k = 0; k < 3; k++) {
      const at = pos[3 * idx[i]! + k]!;
      if (!Number.isFinite(at)) throw new RangeError(`a coordinate must be a number, found ${at}`);
      if (at < low[k]!) low[k] = at;
      if (at > high[k]!) high[k] = at;
    }
  }
  if (idx.length === 0) throw new RangeError("a mesh must have triangles with an area, found none");
  return { low, high };
}
