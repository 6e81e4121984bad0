import { descending } from "./order.ts";
import type { Mesh } from "./mesh.ts";
import type { Vec3 } from "./vector.ts";

/** Triangles in boxes within boxes, for rays and nearest points. */
export type RayTree = {
  readonly mesh: Mesh;
  /** Triangles in the order of the leaves. */
  readonly order: Uint32Array;
  /** Leaves: a power of two; node 1 is the root, node n has 2n and 2n + 1 below it. */
  readonly leaves: number;
  /** Six numbers a node: low x, y, z, high x, y, z. */
  readonly boxes: Float32Array;
};

const perLeaf = 4;

/**
 * Boxes over triangles lined up along a Z-order curve (G. M. Morton, 1966): no splitting to choose, one sort, one
 * pass upwards.
 */
export function rayTreeOf(mesh: Mesh): RayTree {
  const { pos, idx } = mesh;
  const count = idx.length / 3;
  const centres = new Float32Array(idx.length);
  const low = [Infinity, Infinity, Infinity];
  const high = [-Infinity, -Infinity, -Infinity];
  for (let t = 0; t < count; t++) {
    for (let k = 0; k < 3; k++) {
      const at =
        (pos[3 * idx[3 * t]! + k]! + pos[3 * idx[3 * t + 1]! + k]! + pos[3 * idx[3 * t + 2]! + k]!) / 3;
      centres[3 * t + k] = at;
      if (at < low[k]!) low[k] = at;
      if (at > high[k]!) high[k] = at;
    }
  }
  const scale = 255.99 / Math.max(high[0]! - low[0]!, high[1]! - low[1]!, high[2]! - low[2]!, 1e-30);
  const codes = new Float32Array(count);
  for (let t = 0; t < count; t++) {
    let code = 0;
    // 24 bits are exact in a 32-bit float.
    for (let k = 0; k < 3; k++) code |= spread(((centres[3 * t + k]! - low[k]!) * scale) | 0) << k;
    codes[t] = code;
  }
  const order = descending(codes);
  let leaves = 1;
  while (leaves * perLeaf < count) leaves *= 2;
  const boxes = new Float32Array(12 * leaves);
  for (let node = 2 * leaves - 1; node >= 1; node--) {
    if (node >= leaves) boxLeaf({ mesh, order, boxes, leaves, node });
    else boxPair(boxes, node);
  }
  return { mesh, order, leaves, boxes };
}

/** Eight bits with two gaps between each. */
function spread(byte: number): number {
  let x = byte;
  x = (x | (x << 8)) & 0x00f00f;
  x = (x | (x << 4)) & 0x0c30c3;
  return (x | (x << 2)) & 0x249249;
}

/** First and one past the last place in `order` of a leaf: leaves share the triangles evenly. */
export function leafRange(
  { order, leaves }: Pick<RayTree, "order" | "leaves">,
  leaf: number,
): readonly [number, number] {
  const n = order.length;
  return [Math.floor((leaf * n) / leaves), Math.floor(((leaf + 1) * n) / leaves)];
}

function boxLeaf({ mesh, order, boxes, leaves, node }: RayTree & { node: number }): void {
  const { pos, idx } = mesh;
  const [from, to] = leafRange({ order, leaves }, node - leaves);
  boxes.fill(Infinity, 6 * node, 6 * node + 3);
  boxes.fill(-Infinity, 6 * node + 3, 6 * node + 6);
  for (let at = from; at < to; at++) {
    for (let corner = 0; corner < 3; corner++) {
      const v = 3 * idx[3 * order[at]! + corner]!;
      for (let k = 0; k < 3; k++) {
        const x = pos[v + k]!;
        if (x < boxes[6 * node + k]!) boxes[6 * node + k] = x;
        if (x > boxes[6 * node + 3 + k]!) boxes[6 * node + 3 + k] = x;
      }
    }
  }
}

function boxPair(boxes: Float32Array, node: number): void {
  const a = 12 * node;
  for (let k = 0; k < 3; k++) {
    boxes[6 * node + k] = Math.min(boxes[a + k]!, boxes[a + 6 + k]!);
    boxes[6 * node + 3 + k] = Math.max(boxes[a + 3 + k]!, boxes[a + 9 + k]!);
  }
}

type Ray = { readonly from: Vec3; readonly along: Vec3; readonly least: number };

/** Where a ray leaves the solid: how far along it, and by which triangle; Infinity and −1 where it never does. */
export type Exit = { readonly far: number; readonly triangle: number };

/**
 * Where a ray from a place on the surface comes out of the solid, beyond `least`. Where it goes into another body on the
 * way, out of both.
 */
export function exitOf(tree: RayTree, { from, along, least }: Ray): Exit {
  let out = Infinity;
  let into = Infinity;
  let triangle = -1;
  eachHit(tree, { from, along }, (hit, t) => {
    if (hit > least && hit < out) [out, triangle] = [hit, t];
    else if (hit < -least && -hit < into) into = -hit;
    return out;
  });
  return into < out ? exitOfAll(tree, { from, along, least }) : { far: out, triangle };
}

/** How far that is. */
export const firstExit = (tree: RayTree, ray: Ray): number => exitOf(tree, ray).far;

function exitOfAll(tree: RayTree, { from, along, least }: Ray): Exit {
  const hits: { readonly hit: number; readonly triangle: number }[] = [];
  eachHit(tree, { from, along }, (hit, triangle) => {
    if (Math.abs(hit) > least && Math.abs(hit) < Infinity) hits.push({ hit, triangle });
    return Infinity;
  });
  let bodies = 1;
  for (const { hit, triangle } of hits.sort((a, b) => Math.abs(a.hit) - Math.abs(b.hit))) {
    bodies += hit > 0 ? -1 : 1;
    if (bodies === 0) return { far: hit, triangle };
  }
  return { far: Infinity, triangle: -1 };
}

/** Whether a place of the surface lies inside another body: looking outward, more skins are left than entered. */
export function isBuried(tree: RayTree, ray: Ray): boolean {
  let bodies = 0;
  eachHit(tree, ray, (hit) => {
    if (Math.abs(hit) > ray.least && Math.abs(hit) < Infinity) bodies += hit > 0 ? 1 : -1;
    return Infinity;
  });
  return bodies > 0;
}

/** Every triangle a ray passes, with 1 where it leaves by it and −1 where it enters. */
export function eachSkin(
  tree: RayTree,
  ray: Omit<Ray, "least">,
  see: (triangle: number, leaves: 1 | -1) => void,
): void {
  eachHit(tree, ray, (hit, triangle) => {
    see(triangle, hit > 0 ? 1 : -1);
    return Infinity;
  });
}

const stackNodes = new Int32Array(128);
const stackFar = new Float64Array(128);

/** Shows `see` what a ray may meet, nearest boxes first; it answers how far is still of interest. */
function eachHit(
  tree: RayTree,
  { from, along }: Omit<Ray, "least">,
  see: (hit: number, triangle: number) => number,
): void {
  const { boxes, leaves, order } = tree;
  const inverse: Vec3 = [1 / along[0], 1 / along[1], 1 / along[2]];
  const n = order.length;
  let best = Infinity;
  let height = 1;
  stackNodes[0] = 1;
  stackFar[0] = entry(boxes, 1, from, inverse);
  while (height > 0) {
    const node = stackNodes[--height]!;
    if (stackFar[height]! >= best) continue;
    if (node >= leaves) {
      const leaf = node - leaves;
      const end = Math.floor(((leaf + 1) * n) / leaves);
      for (let at = Math.floor((leaf * n) / leaves); at < end; at++) {
        const hit = hitOn(tree.mesh, order[at]!, from, along);
        if (hit < Infinity) best = see(hit, order[at]!);
      }
      continue;
    }
    const left = entry(boxes, 2 * node, from, inverse);
    const right = entry(boxes, 2 * node + 1, from, inverse);
    const near = left <= right ? 2 * node : 2 * node + 1;
    const far = Math.max(left, right);
    if (far < best) {
      stackNodes[height] = near ^ 1;
      stackFar[height++] = far;
    }
    if (Math.min(left, right) < best) {
      stackNodes[height] = near;
      stackFar[height++] = Math.min(left, right);
    }
  }
}

/**
 * Where a ray comes into a box, Infinity when it passes it by. A ray within the plane of a side gives 0 · ∞, and no
 * comparison with that narrows anything.
 */
function entry(boxes: Float32Array, node: number, from: Vec3, inverse: Vec3): number {
  const at = 6 * node;
  const ax = (boxes[at]! - from[0]) * inverse[0];
  const bx = (boxes[at + 3]! - from[0]) * inverse[0];
  const ay = (boxes[at + 1]! - from[1]) * inverse[1];
  const by = (boxes[at + 4]! - from[1]) * inverse[1];
  const az = (boxes[at + 2]! - from[2]) * inverse[2];
  const bz = (boxes[at + 5]! - from[2]) * inverse[2];
  let near = 0;
  let far = Infinity;
  if (ax < bx) {
    if (ax > near) near = ax;
    if (bx < far) far = bx;
  } else {
    if (bx > near) near = bx;
    if (ax < far) far = ax;
  }
  if (ay < by) {
    if (ay > near) near = ay;
    if (by < far) far = by;
  } else {
    if (by > near) near = by;
    if (ay < far) far = ay;
  }
  if (az < bz) {
    if (az > near) near = az;
    if (bz < far) far = bz;
  } else {
    if (bz > near) near = bz;
    if (az < far) far = az;
  }
  return near <= far * 1.000001 ? near : Infinity;
}

/** Möller & Trumbore (1997): how far to a triangle, negative when the ray goes in by it; Infinity for a miss. */
function hitOn({ pos, idx }: Mesh, t: number, from: Vec3, along: Vec3): number {
  const a = 3 * idx[3 * t]!;
  const b = 3 * idx[3 * t + 1]!;
  const c = 3 * idx[3 * t + 2]!;
  const ax = pos[a]!;
  const ay = pos[a + 1]!;
  const az = pos[a + 2]!;
  const ex = pos[b]! - ax;
  const ey = pos[b + 1]! - ay;
  const ez = pos[b + 2]! - az;
  const fx = pos[c]! - ax;
  const fy = pos[c + 1]! - ay;
  const fz = pos[c + 2]! - az;
  const [dx, dy, dz] = along;
  const px = dy * fz - dz * fy;
  const py = dz * fx - dx * fz;
  const pz = dx * fy - dy * fx;
  const facing = ex * px + ey * py + ez * pz;
  if (facing === 0) return Infinity;
  const sx = from[0] - ax;
  const sy = from[1] - ay;
  const sz = from[2] - az;
  const u = (sx * px + sy * py + sz * pz) / facing;
  const slack = -1e-7;
  if (u < slack || u > 1 - slack) return Infinity;
  const qx = sy * ez - sz * ey;
  const qy = sz * ex - sx * ez;
  const qz = sx * ey - sy * ex;
  const v = (dx * qx + dy * qy + dz * qz) / facing;
  if (v < slack || u + v > 1 - slack) return Infinity;
  const far = (fx * qx + fy * qy + fz * qz) / facing;
  if (far <= 0) return Infinity;
  // Positive is a triangle that looks at the ray: going in, not out.
  return facing > 0 ? -far : far;
}
