import type { Mesh } from "./mesh.ts";
import { leafRange, type RayTree } from "./rayTree.ts";
import type { Vec3 } from "./vector.ts";

/** Distance from a point to the surface. */
export function distanceTo(tree: RayTree, p: Vec3): number {
  const { boxes, leaves, order } = tree;
  let best = Infinity;
  const stack = [1];
  while (stack.length > 0) {
    const node = stack.pop()!;
    if (squareToBox(boxes, node, p) >= best) continue;
    if (node < leaves) {
      const left = squareToBox(boxes, 2 * node, p);
      const right = squareToBox(boxes, 2 * node + 1, p);
      if (left < right) stack.push(2 * node + 1, 2 * node);
      else stack.push(2 * node, 2 * node + 1);
      continue;
    }
    const [first, end] = leafRange(tree, node - leaves);
    for (let at = first; at < end; at++) best = Math.min(best, squareToTriangle(tree.mesh, order[at]!, p));
  }
  return Math.sqrt(best);
}

function squareToBox(boxes: Float32Array, node: number, p: Vec3): number {
  let sum = 0;
  for (let k = 0; k < 3; k++) {
    const out = Math.max(boxes[6 * node + k]! - p[k]!, p[k]! - boxes[6 * node + 3 + k]!, 0);
    sum += out * out;
  }
  return sum;
}

/** Square of the distance to a triangle: from its own foot when that lies inside, else from the nearest of the three edges. */
function squareToTriangle({ pos, idx }: Mesh, t: number, p: Vec3): number {
  const a = 3 * idx[3 * t]!;
  const b = 3 * idx[3 * t + 1]!;
  const c = 3 * idx[3 * t + 2]!;
  const px = p[0] - pos[a]!;
  const py = p[1] - pos[a + 1]!;
  const pz = p[2] - pos[a + 2]!;
  const ex = pos[b]! - pos[a]!;
  const ey = pos[b + 1]! - pos[a + 1]!;
  const ez = pos[b + 2]! - pos[a + 2]!;
  const fx = pos[c]! - pos[a]!;
  const fy = pos[c + 1]! - pos[a + 1]!;
  const fz = pos[c + 2]! - pos[a + 2]!;
  const ee = ex * ex + ey * ey + ez * ez;
  const ff = fx * fx + fy * fy + fz * fz;
  const ef = ex * fx + ey * fy + ez * fz;
  const pe = px * ex + py * ey + pz * ez;
  const pf = px * fx + py * fy + pz * fz;
  const square = ee * ff - ef * ef;
  if (square > 0) {
    const u = (ff * pe - ef * pf) / square;
    const v = (ee * pf - ef * pe) / square;
    if (u >= 0 && v >= 0 && u + v <= 1) {
      const dx = px - u * ex - v * fx;
      const dy = py - u * ey - v * fy;
      const dz = pz - u * ez - v * fz;
      return dx * dx + dy * dy + dz * dz;
    }
  }
  return Math.min(
    squareToEdge(px, py, pz, ex, ey, ez),
    squareToEdge(px, py, pz, fx, fy, fz),
    squareToEdge(px - ex, py - ey, pz - ez, fx - ex, fy - ey, fz - ez),
  );
}

/** From an edge that starts at 0 and goes to (ex, ey, ez). */
function squareToEdge(px: number, py: number, pz: number, ex: number, ey: number, ez: number): number {
  const square = ex * ex + ey * ey + ez * ez;
  const share = square > 0 ? Math.min(1, Math.max(0, (px * ex + py * ey + pz * ez) / square)) : 0;
  return (px - share * ex) ** 2 + (py - share * ey) ** 2 + (pz - share * ez) ** 2;
}
