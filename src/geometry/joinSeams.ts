import { edgesOf } from "./edges.ts";
import type { Mesh } from "./mesh.ts";
import { dropDegenerate, weldMesh } from "./weld.ts";

/** Two edges of a surface that should be one but lie a little apart, as rounding in an export leaves them. */
export type Seams = {
  /** How far apart points may lie to be joined, mesh units. */
  readonly within: number;
  readonly mesh: Mesh;
  /** Open edges before and after. */
  readonly before: number;
  readonly after: number;
};

/** Shares of the size, the smallest first: from a float's last digits to a thousandth; judgement. */
const shares = [1e-6, 1e-5, 1e-4, 1e-3];

/**
 * Joins points of open edges that lie close together, at the least of a few distances that closes the most; null where
 * none closes a quarter of the open edges. Points inside the surface never move, and a distance at which a triangle
 * would collapse is too large.
 */
export function joinSeams(given: Mesh): Seams | null {
  const mesh = dropDegenerate(weldMesh(given)).mesh;
  const { open, borderEdges: before, nonManifoldEdges } = edgesOf(mesh);
  if (before === 0) return null;
  const size = sizeOf(mesh);
  let best: Seams | null = null;
  for (const share of shares) {
    const within = share * size;
    const joined = joinedWithin({ mesh, points: open, within });
    if (joined === null) break;
    const edges = edgesOf(joined);
    const after = edges.borderEdges;
    if (edges.nonManifoldEdges > nonManifoldEdges) continue;
    if (after <= 0.75 * before && (best === null || after < best.after))
      best = { within, mesh: joined, before, after };
    if (after === 0) break;
  }
  return best;
}

/** Null when a triangle would collapse. */
function joinedWithin({
  mesh,
  points,
  within,
}: {
  mesh: Mesh;
  points: Uint32Array;
  within: number;
}): Mesh | null {
  const { pos } = mesh;
  const all = [...new Set(points)];
  const size = 2 ** Math.ceil(Math.log2(2 * Math.max(64, all.length)));
  // Points that stay, listed by a hash of their cell; what another cell throws in between is told apart by its distance.
  const first = new Int32Array(size).fill(-1);
  const next = new Int32Array(pos.length / 3).fill(-1);
  const slotOf = (i: number, j: number, k: number): number =>
    (Math.imul(i, 0x9e3779b1) ^ Math.imul(j, 0x85ebca6b) ^ Math.imul(k, 0xc2b2ae35)) & (size - 1);
  const cell = (v: number, k: number): number => Math.floor(pos[3 * v + k]! / within);
  const standsFor = Uint32Array.from({ length: pos.length / 3 }, (_, v) => v);
  for (const v of all) {
    const [i, j, k] = [cell(v, 0), cell(v, 1), cell(v, 2)];
    let least = within * within;
    for (let n = 0; n < 27; n++) {
      const slot = slotOf(i + (n % 3) - 1, j + (Math.floor(n / 3) % 3) - 1, k + Math.floor(n / 9) - 1);
      for (let other = first[slot]!; other >= 0; other = next[other]!) {
        const apart =
          (pos[3 * v]! - pos[3 * other]!) ** 2 +
          (pos[3 * v + 1]! - pos[3 * other + 1]!) ** 2 +
          (pos[3 * v + 2]! - pos[3 * other + 2]!) ** 2;
        if (apart > least) continue;
        standsFor[v] = other;
        least = apart;
      }
    }
    if (standsFor[v] !== v) continue;
    const slot = slotOf(i, j, k);
    next[v] = first[slot]!;
    first[slot] = v;
  }
  const moved = weldMesh({ ...mesh, idx: mesh.idx.map((v) => standsFor[v]!) });
  return dropDegenerate(moved).degenerate > 0 ? null : moved;
}

function sizeOf({ pos }: Mesh): number {
  const low = [Infinity, Infinity, Infinity];
  const high = [-Infinity, -Infinity, -Infinity];
  for (let at = 0; at < pos.length; at++) {
    const k = at % 3;
    if (pos[at]! < low[k]!) low[k] = pos[at]!;
    if (pos[at]! > high[k]!) high[k] = pos[at]!;
  }
  return Math.hypot(high[0]! - low[0]!, high[1]! - low[1]!, high[2]! - low[2]!);
}
