import type { Branch, JoinTree } from "./joinTree.ts";
import type { Surface } from "./surface.ts";
import type { Vec3 } from "./vector.ts";

/** Marks which triangles and vertices a walk has seen, so that many walks share one array. */
export type SeenMarks = { readonly triangles: Uint32Array; readonly vertices: Uint32Array; turn: number };

export const unseen = (surface: Surface): SeenMarks => ({
  triangles: new Uint32Array(surface.idx.length / 3),
  vertices: new Uint32Array(surface.pos.length / 3),
  turn: 0,
});

/**
 * Volume between a branch of the surface and the level of its saddle, in cubed mesh units; negative for a hollow
 * seen from inside. Walks from the tip over what lies above the saddle, cuts each triangle at the saddle and sums
 * (height − saddle) over its shadow: the lid at the saddle adds nothing.
 */
export function branchVolume({
  surface,
  tree,
  branch,
  up,
  blur,
  seen,
}: {
  surface: Surface;
  tree: JoinTree;
  branch: Branch;
  up: Vec3;
  /** Heights this close to the saddle count as the saddle's. */
  blur: number;
  seen: SeenMarks;
}): number {
  const { idx, start, around } = surface;
  const turn = ++seen.turn;
  // Fingers on one flat palm meet at its level in any order: what is no higher than the palm belongs to none.
  const limit = branch.whole ? -Infinity : tree.heights[branch.saddle]! + blur;
  const stack = [branch.tip];
  seen.vertices[branch.tip] = turn;
  let volume = 0;
  while (stack.length > 0) {
    const v = stack.pop()!;
    for (let at = start[v]!; at < start[v + 1]!; at++) {
      const t = around[at]!;
      if (seen.triangles[t] === turn) continue;
      seen.triangles[t] = turn;
      volume += clippedVolume(surface, tree, t, branch.saddle, up);
      for (let k = 0; k < 3; k++) {
        const other = idx[3 * t + k]!;
        if (seen.vertices[other] === turn || tree.heights[other]! <= limit) continue;
        seen.vertices[other] = turn;
        stack.push(other);
      }
    }
  }
  return volume;
}

/** Integral of (height − level) over the shadow of the part of one triangle above the level of vertex `saddle`. */
function clippedVolume(surface: Surface, tree: JoinTree, t: number, saddle: number, up: Vec3): number {
  const { pos, idx } = surface;
  const level = tree.heights[saddle]!;
  let a = idx[3 * t]!;
  let b = idx[3 * t + 1]!;
  let c = idx[3 * t + 2]!;
  let ha = tree.heights[a]! - level;
  let hb = tree.heights[b]! - level;
  let hc = tree.heights[c]! - level;
  // Turn the triangle so that a lone vertex, above or below, comes first.
  while (hb > 0 !== hc > 0) {
    const [v, h] = [a, ha];
    a = b;
    b = c;
    c = v;
    ha = hb;
    hb = hc;
    hc = h;
  }
  const ax = pos[3 * a]!;
  const ay = pos[3 * a + 1]!;
  const az = pos[3 * a + 2]!;
  const bx = pos[3 * b]! - ax;
  const by = pos[3 * b + 1]! - ay;
  const bz = pos[3 * b + 2]! - az;
  const cx = pos[3 * c]! - ax;
  const cy = pos[3 * c + 1]! - ay;
  const cz = pos[3 * c + 2]! - az;
  const shadow =
    ((by * cz - bz * cy) * up[0] + (bz * cx - bx * cz) * up[1] + (bx * cy - by * cx) * up[2]) / 2;
  if (ha > 0) {
    if (hb > 0) return (shadow * (ha + hb + hc)) / 3;
    const share = (ha / (ha - hb)) * (ha / (ha - hc));
    return (shadow * share * ha) / 3;
  }
  if (!(hb > 0)) return 0;
  // All of it less the corner below: the corner's own integral is negative.
  const share = (ha / (ha - hb)) * (ha / (ha - hc));
  return (shadow * (ha + hb + hc)) / 3 - (shadow * share * ha) / 3;
}
