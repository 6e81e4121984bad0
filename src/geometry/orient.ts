import { edgeRings } from "./edgeRings.ts";
import type { Mesh } from "./mesh.ts";

/**
 * Turns triangles over so that neighbours run along their common edge in opposite ways, the fewer of each patch. Gives
 * the very mesh and 0 when none is turned over. Edges of three or more triangles join nothing; a one-sided surface
 * keeps a seam. Triangles must name three different vertices.
 */
export function orient(mesh: Mesh): { readonly mesh: Mesh; readonly turnedOver: number } {
  const { idx } = mesh;
  const triangles = idx.length / 3;
  const patches = patchesOf(mesh);
  const tally = new Uint32Array(2 * triangles);
  for (let t = 0; t < triangles; t++) {
    const { root, odd } = patches.find(t);
    tally[2 * root + odd]!++;
  }
  const next = idx.slice();
  let turnedOver = 0;
  for (let t = 0; t < triangles; t++) {
    const { root, odd } = patches.find(t);
    const fewer = tally[2 * root + 1]! <= tally[2 * root]! ? 1 : 0;
    if (odd !== fewer || tally[2 * root + fewer] === 0) continue;
    next[3 * t + 1] = idx[3 * t + 2]!;
    next[3 * t + 2] = idx[3 * t + 1]!;
    turnedOver++;
  }
  return turnedOver === 0 ? { mesh, turnedOver } : { mesh: { ...mesh, idx: next }, turnedOver };
}

/** Triangles joined over edges of two, each with whether it lies over against its patch's root. */
function patchesOf(mesh: Mesh): {
  readonly find: (t: number) => { readonly root: number; readonly odd: number };
} {
  const { idx } = mesh;
  const parent = Uint32Array.from({ length: idx.length / 3 }, (_, t) => t);
  const oddToParent = new Uint8Array(parent.length);

  function find(t: number): { root: number; odd: number } {
    let root = t;
    let odd = 0;
    while (parent[root] !== root) {
      odd ^= oddToParent[root]!;
      root = parent[root]!;
    }
    // Everything on the way now hangs on the root.
    for (let at = t, left = odd; at !== root;) {
      const [up, step] = [parent[at]!, oddToParent[at]!];
      parent[at] = root;
      oddToParent[at] = left;
      left ^= step;
      at = up;
    }
    return { root, odd };
  }

  const ring = edgeRings(mesh);
  for (let p = 0; p < idx.length; p++) {
    const q = ring[p]!;
    if (q <= p || ring[q] !== p) continue;
    const a = find(Math.floor(p / 3));
    const b = find(Math.floor(q / 3));
    if (a.root === b.root) continue;
    parent[b.root] = a.root;
    oddToParent[b.root] = a.odd ^ b.odd ^ (idx[p] === idx[q] ? 1 : 0);
  }
  return { find };
}
