import { bodiesOf } from "./bodies.ts";
import type { Mesh } from "./mesh.ts";
import { cross, dot, minus, type Vec3 } from "./vector.ts";

/** Voids shut in all round by the solid, into which no slurry comes; mesh units. */
export type ClosedHollows = {
  readonly count: number;
  /** What they hold, less the bodies that lie loose in them. */
  readonly volume: number;
  /** Their skins, and those of the bodies in them. */
  readonly area: number;
};

export const noHollows: ClosedHollows = { count: 0, volume: 0, area: 0 };

/** Beyond this many bodies none is looked for: a lattice or a scan's crumbs. */
const mostBodies = 2000;

/**
 * The closed hollows of a welded mesh whose bodies look outward and whose voids look inward, as `mendMesh` leaves it.
 * Bodies that only by overlapping shut in a void are not seen here. Volume by the divergence theorem, exact.
 */
export function closedHollowsOf(mesh: Mesh): ClosedHollows {
  const { bodies, isInner } = innerOf(mesh);
  const inner = bodies.filter((_, n) => isInner[n]);
  return {
    count: inner.filter(({ volume }) => volume < 0).length,
    volume: inner.reduce((sum, { volume }) => sum - volume, 0),
    area: inner.reduce((sum, { area }) => sum + area, 0),
  };
}

/** The same mesh as if its closed hollows were solid; the very mesh where it has none. */
export function withoutHollows(mesh: Mesh): Mesh {
  const { ofTriangle, isInner } = innerOf(mesh);
  if (!isInner.includes(true)) return mesh;
  const isKept = (i: number): boolean => !isInner[ofTriangle[Math.floor(i / 3)]!];
  const to = new Int32Array(mesh.pos.length / 3).fill(-1);
  let points = 0;
  let corners = 0;
  for (let i = 0; i < mesh.idx.length; i++) {
    if (!isKept(i)) continue;
    corners++;
    if (to[mesh.idx[i]!] === -1) to[mesh.idx[i]!] = points++;
  }
  const pos = new Float32Array(3 * points);
  for (let v = 0; v < to.length; v++)
    if (to[v] !== -1) pos.set(mesh.pos.subarray(3 * v, 3 * v + 3), 3 * to[v]!);
  const idx = new Uint32Array(corners);
  for (let i = 0, n = 0; i < mesh.idx.length; i++) if (isKept(i)) idx[n++] = to[mesh.idx[i]!]!;
  return { ...mesh, pos, idx };
}

type Body = {
  readonly volume: number;
  readonly area: number;
  readonly low: Vec3;
  readonly high: Vec3;
  /** One of its triangles. */
  readonly first: number;
};

function innerOf(mesh: Mesh): {
  readonly bodies: readonly Body[];
  readonly ofTriangle: Uint32Array;
  readonly isInner: readonly boolean[];
} {
  const { count, ofTriangle } = bodiesOf(mesh);
  if (count < 2 || count > mostBodies) return { bodies: [], ofTriangle, isInner: [] };
  const bodies = summed(mesh, count, ofTriangle);
  const isIn = (inner: number, outer: number): boolean =>
    boxHolds(bodies[outer]!, bodies[inner]!) &&
    isInside(mesh, { ofTriangle, body: outer, p: cornerAt(mesh, bodies[inner]!.first, 0) });
  const isVoid = bodies.map(
    ({ volume }, n) => volume < 0 && bodies.some((other, k) => other.volume > 0 && isIn(n, k)),
  );
  const isInner = bodies.map(
    (_, n) => isVoid[n]! || isVoid.some((voids, k) => voids && k !== n && isIn(n, k)),
  );
  return { bodies, ofTriangle, isInner };
}

function cornerAt({ pos, idx }: Mesh, t: number, k: 0 | 1 | 2): Vec3 {
  const at = 3 * idx[3 * t + k]!;
  return [pos[at]!, pos[at + 1]!, pos[at + 2]!];
}

function summed({ pos, idx }: Mesh, count: number, ofTriangle: Uint32Array): readonly Body[] {
  const first = new Int32Array(count).fill(-1);
  const volume = new Float64Array(count);
  const area = new Float64Array(count);
  const low = new Float64Array(3 * count).fill(Infinity);
  const high = new Float64Array(3 * count).fill(-Infinity);
  for (let t = 0; t < ofTriangle.length; t++) {
    const body = ofTriangle[t]!;
    if (first[body] === -1) first[body] = t;
    // From a corner of the body itself, so that one far from the origin loses no digits.
    const o = 3 * idx[3 * first[body]!]!;
    const [a, b, c] = [3 * idx[3 * t]!, 3 * idx[3 * t + 1]!, 3 * idx[3 * t + 2]!];
    const ax = pos[a]! - pos[o]!;
    const ay = pos[a + 1]! - pos[o + 1]!;
    const az = pos[a + 2]! - pos[o + 2]!;
    const ux = pos[b]! - pos[a]!;
    const uy = pos[b + 1]! - pos[a + 1]!;
    const uz = pos[b + 2]! - pos[a + 2]!;
    const vx = pos[c]! - pos[a]!;
    const vy = pos[c + 1]! - pos[a + 1]!;
    const vz = pos[c + 2]! - pos[a + 2]!;
    const nx = uy * vz - uz * vy;
    const ny = uz * vx - ux * vz;
    const nz = ux * vy - uy * vx;
    volume[body]! += (ax * nx + ay * ny + az * nz) / 6;
    area[body]! += Math.sqrt(nx * nx + ny * ny + nz * nz) / 2;
    for (let k = 0; k < 3; k++) {
      const at = 3 * body + k;
      low[at] = Math.min(low[at]!, pos[a + k]!, pos[b + k]!, pos[c + k]!);
      high[at] = Math.max(high[at]!, pos[a + k]!, pos[b + k]!, pos[c + k]!);
    }
  }
  const corner = (of: Float64Array, n: number): Vec3 => [of[3 * n]!, of[3 * n + 1]!, of[3 * n + 2]!];
  return Array.from({ length: count }, (_, n) => ({
    volume: volume[n]!,
    area: area[n]!,
    low: corner(low, n),
    high: corner(high, n),
    first: first[n]!,
  }));
}

const boxHolds = (outer: Body, inner: Body): boolean =>
  ([0, 1, 2] as const).every((k) => outer.low[k] <= inner.low[k] && outer.high[k] >= inner.high[k]);

/** A direction no face of a made thing is likely to lie along. */
const askew: Vec3 = [0.5773, 0.2931, 0.7621];

/** Whether a ray from a point leaves a body an odd number of times (T. Möller, B. Trumbore, J. Graphics Tools 2, 1997). */
function isInside(
  mesh: Mesh,
  { ofTriangle, body, p }: { readonly ofTriangle: Uint32Array; readonly body: number; readonly p: Vec3 },
): boolean {
  let crossings = 0;
  for (let t = 0; t < ofTriangle.length; t++) {
    if (ofTriangle[t] !== body) continue;
    const a = cornerAt(mesh, t, 0);
    const [ab, ac] = [minus(cornerAt(mesh, t, 1), a), minus(cornerAt(mesh, t, 2), a)];
    const h = cross(askew, ac);
    const det = dot(ab, h);
    if (det === 0) continue;
    const s = minus(p, a);
    const u = dot(s, h) / det;
    const q = cross(s, ab);
    const v = dot(askew, q) / det;
    if (u < 0 || v < 0 || u + v > 1) continue;
    if (dot(ac, q) / det > 0) crossings++;
  }
  return crossings % 2 === 1;
}
