import type { Mesh } from "./mesh.ts";
import { rootOf } from "./unionFind.ts";

/** Parts of a welded mesh that touch nowhere: how many, and of which each triangle is. */
export type MeshParts = { readonly count: number; readonly ofTriangle: Uint32Array };

/** Joins vertices of a triangle (R. Tarjan, Efficiency of a good but not linear set union algorithm, 1975). */
export function bodiesOf({ pos, idx }: Mesh): MeshParts {
  const vertices = Math.floor(pos.length / 3);
  const parent = new Uint32Array(vertices);
  for (let v = 0; v < vertices; v++) parent[v] = v;
  for (let i = 0; i < idx.length; i += 3) {
    const a = rootOf(parent, idx[i]!);
    const b = rootOf(parent, idx[i + 1]!);
    const c = rootOf(parent, idx[i + 2]!);
    const low = Math.min(a, b, c);
    parent[a] = low;
    parent[b] = low;
    parent[c] = low;
  }
  const number = new Uint32Array(vertices);
  const ofTriangle = new Uint32Array(idx.length / 3);
  let count = 0;
  for (let t = 0; t < ofTriangle.length; t++) {
    const root = rootOf(parent, idx[3 * t]!);
    if (number[root] === 0) number[root] = ++count;
    ofTriangle[t] = number[root]! - 1;
  }
  return { count, ofTriangle };
}

/** Vertices that triangles use. */
export function usedVertices({ pos, idx }: Mesh): number {
  const used = new Uint8Array(Math.floor(pos.length / 3));
  for (let i = 0; i < idx.length; i++) used[idx[i]!] = 1;
  let count = 0;
  for (let v = 0; v < used.length; v++) count += used[v]!;
  return count;
}
