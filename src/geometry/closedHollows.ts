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
  const pos: number[] = [];
  const idx: number[] = [];
  const known = new Map<number, number>();
  for (let i = 0; i < mesh.idx.length; i++) {
    if (isInner[ofTriangle[Math.floor(i / 3)]!]) continue;
    const v = mesh.idx[i]!;
    let to = known.get(v);
    if (to === undefined) {
      to = pos.length / 3;
      known.set(v, to);
      pos.push(mesh.pos[3 * v]!, mesh.pos[3 * v + 1]!, mesh.pos[3 * v + 2]!);
    }
    idx.push(to);
  }
  return { ...mesh, pos: Float32Array.from(pos), idx: Uint32Array.from(idx) };
}

type Body = {
  volume: number;
  area: number;
  readonly low: [number, number, number];
  readonly high: [number, number, number];
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
  const isInner = bodies.map((_, n) => isVoid[n]! || isVoid.some((voids, k) => voids && k !== n && isIn(n, k)));
  return { bodies, ofTriangle, isInner };
}

function cornerAt({ pos, idx }: Mesh, t: number, k: 0 | 1 | 2): Vec3 {
  const at = 3 * idx[3 * t + k]!;
  return [pos[at]!, pos[at + 1]!, pos[at + 2]!];
}

function summed(mesh: Mesh, count: number, ofTriangle: Uint32Array): readonly Body[] {
  const bodies: (Body | undefined)[] = Array.from({ length: count });
  for (let t = 0; t < ofTriangle.length; t++) {
    const [a, b, c] = [cornerAt(mesh, t, 0), cornerAt(mesh, t, 1), cornerAt(mesh, t, 2)];
    const body = (bodies[ofTriangle[t]!] ??= {
      volume: 0,
      area: 0,
      low: [...a],
      high: [...a],
      first: t,
    });
    for (const p of [a, b, c])
      for (const k of [0, 1, 2] as const) {
        if (p[k] < body.low[k]) body.low[k] = p[k];
        if (p[k] > body.high[k]) body.high[k] = p[k];
      }
    // From a corner of the body itself, so that one far from the origin loses no digits.
    const from = cornerAt(mesh, body.first, 0);
    const [u, v, w] = [minus(a, from), minus(b, from), minus(c, from)];
    const normal = cross(minus(b, a), minus(c, a));
    body.volume += dot(u, cross(v, w)) / 6;
    body.area += Math.hypot(...normal) / 2;
  }
  return bodies.filter((body) => body !== undefined);
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
