import type { Mesh } from "../../../geometry/mesh.ts";
import { leafRange, type RayTree } from "../../../geometry/rayTree.ts";
import { cross, dot, length, minus, plus, times, type Vec3 } from "../../../geometry/vector.ts";

/** Where a finger meets the piece; point and outward normal in mesh mm. */
export type Hit = { readonly point: Vec3; readonly normal: Vec3; readonly triangle: number };

type Look = {
  readonly from: Vec3;
  readonly along: Vec3;
  /** False for what a section has cut away. */
  readonly isThere?: ((point: Vec3) => boolean) | undefined;
};

/** The first place a line of sight comes to, on a face that looks at the eye; null when it passes the piece by. */
export function pickPiece(tree: RayTree, { from, along, isThere }: Look): Hit | null {
  const { boxes, leaves, order } = tree;
  let best: { readonly far: number; readonly triangle: number } | null = null;
  const stack: (readonly [node: number, far: number])[] = [[1, intoBox(boxes, 1, from, along)]];
  for (let top = stack.pop(); top !== undefined; top = stack.pop()) {
    const [node, near] = top;
    if (near >= (best?.far ?? Infinity)) continue;
    if (node < leaves) {
      const pair = [2 * node, 2 * node + 1]
        .map((child) => [child, intoBox(boxes, child, from, along)] as const)
        .sort((a, b) => b[1] - a[1]);
      stack.push(...pair);
      continue;
    }
    const [first, end] = leafRange(tree, node - leaves);
    for (let at = first; at < end; at++) {
      const far = entryOf(tree.mesh, order[at]!, from, along);
      if (far >= (best?.far ?? Infinity)) continue;
      if (isThere === undefined || isThere(plus(from, times(along, far))))
        best = { far, triangle: order[at]! };
    }
  }
  if (best === null) return null;
  const normal = normalOf(tree.mesh, best.triangle);
  return { point: plus(from, times(along, best.far)), normal, triangle: best.triangle };
}

/** How far to a box, Infinity when the line passes it by. */
function intoBox(boxes: Float32Array, node: number, from: Vec3, along: Vec3): number {
  let near = 0;
  let far = Infinity;
  for (let k = 0; k < 3; k++) {
    const low = boxes[6 * node + k]! - from[k]!;
    const high = boxes[6 * node + 3 + k]! - from[k]!;
    if (along[k] === 0) {
      if (low > 0 || high < 0) return Infinity;
      continue;
    }
    const [a, b] = [low / along[k]!, high / along[k]!];
    near = Math.max(near, Math.min(a, b));
    far = Math.min(far, Math.max(a, b));
  }
  return near <= far * 1.000001 ? near : Infinity;
}

/** Möller & Trumbore (1997), for faces that look against the line only. */
function entryOf(mesh: Mesh, t: number, from: Vec3, along: Vec3): number {
  const [a, b, c] = cornersOf(mesh, t);
  const [e, f] = [minus(b, a), minus(c, a)];
  const p = cross(along, f);
  const det = dot(e, p);
  if (!(det > 0)) return Infinity;
  const s = minus(from, a);
  const u = dot(s, p);
  const q = cross(s, e);
  const v = dot(along, q);
  const slack = -1e-6 * det;
  if (u < slack || v < slack || u + v > det - slack) return Infinity;
  const far = dot(f, q) / det;
  return far > 0 ? far : Infinity;
}

function normalOf(mesh: Mesh, t: number): Vec3 {
  const [a, b, c] = cornersOf(mesh, t);
  const n = cross(minus(b, a), minus(c, a));
  return times(n, 1 / length(n));
}

function cornersOf({ pos, idx }: Mesh, t: number): readonly [Vec3, Vec3, Vec3] {
  const corner = (k: number): Vec3 => {
    const at = 3 * idx[3 * t + k]!;
    return [pos[at]!, pos[at + 1]!, pos[at + 2]!];
  };
  return [corner(0), corner(1), corner(2)];
}
