import { boxOf } from "./massProperties.ts";
import type { Mesh } from "./mesh.ts";
import { eachSkin, rayTreeOf } from "./rayTree.ts";
import { sphereDirections } from "./sphereDirections.ts";
import { areaOf, middleOf } from "./surfaceSamples.ts";

/** Beyond this many bodies, a lattice or a scan's crumbs, nobody asks which lies in which. */
export const mostNested = 2000;

/** Rays from so many places of a body: one through a gap of an open skin, or along a face, is outvoted. */
const votes = 7;

/** For each body those that lie round it, by rays that leave through their skins. `bodies` as `sumBodies` gives them. */
export function holdersOf(
  mesh: Mesh,
  bodies: readonly BodySum[],
  ofTriangle: Uint32Array,
): readonly (readonly number[])[] {
  const boxed = bodies.map((inner, i) =>
    bodies.flatMap((outer, k) => (k !== i && holds(outer, inner) ? [k] : [])),
  );
  if (boxed.every((round) => round.length === 0)) return boxed;
  const places = placesIn(mesh, bodies, ofTriangle);
  const tree = rayTreeOf(mesh);
  return boxed.map((round, b) => {
    if (round.length === 0) return round;
    const inside = new Map(round.map((k) => [k, 0]));
    for (const [n, from] of places[b]!.entries()) {
      const left = new Map<number, number>();
      eachSkin(tree, { from, along: looks[n]! }, (triangle, leaves) => {
        const body = ofTriangle[triangle]!;
        left.set(body, (left.get(body) ?? 0) + leaves);
      });
      for (const [k, times] of inside) if ((left.get(k) ?? 0) !== 0) inside.set(k, times + 1);
    }
    return round.filter((k) => 2 * inside.get(k)! > places[b]!.length);
  });
}

const looks = sphereDirections(votes);

/** Middles of up to seven triangles of each body, spread over the order they come in. */
function placesIn({ pos, idx }: Mesh, bodies: readonly BodySum[], ofTriangle: Uint32Array) {
  const places = bodies.map((): (readonly [number, number, number])[] => []);
  const seen = bodies.map(() => 0);
  for (let t = 0; t < ofTriangle.length; t++) {
    const b = ofTriangle[t]!;
    const found = places[b]!;
    const at = seen[b]!++;
    if (found.length >= votes || at < Math.floor((found.length * bodies[b]!.triangles) / votes)) continue;
    const place = middleOf({ pos, idx }, t)?.point;
    if (place) found.push([place[0], place[1], place[2]]);
  }
  return places;
}

/** One body of a mesh: what it holds (below 0 where it looks inward), its skin and its box; mesh units. */
export type BodySum = {
  volume: number;
  area: number;
  triangles: number;
  readonly low: number[];
  readonly high: number[];
};

/** Volume by the divergence theorem from the middle of the mesh's box, exact; area; box. */
export function sumBodies(mesh: Mesh, count: number, ofTriangle: Uint32Array): readonly BodySum[] {
  const { pos, idx } = mesh;
  const { middle } = boxOf(mesh);
  const sums = Array.from({ length: count }, (): BodySum => ({
    volume: 0,
    area: 0,
    triangles: 0,
    low: [Infinity, Infinity, Infinity],
    high: [-Infinity, -Infinity, -Infinity],
  }));
  const corner = (i: number, k: 0 | 1 | 2): number => pos[3 * idx[i]! + k]! - middle[k];
  for (let t = 0; t < ofTriangle.length; t++) {
    const sum = sums[ofTriangle[t]!]!;
    const i = 3 * t;
    sum.triangles++;
    for (const k of [0, 1, 2] as const)
      for (let c = i; c < i + 3; c++) {
        const at = corner(c, k);
        if (at < sum.low[k]!) sum.low[k] = at;
        if (at > sum.high[k]!) sum.high[k] = at;
      }
    sum.volume +=
      (corner(i, 0) * (corner(i + 1, 1) * corner(i + 2, 2) - corner(i + 1, 2) * corner(i + 2, 1)) +
        corner(i, 1) * (corner(i + 1, 2) * corner(i + 2, 0) - corner(i + 1, 0) * corner(i + 2, 2)) +
        corner(i, 2) * (corner(i + 1, 0) * corner(i + 2, 1) - corner(i + 1, 1) * corner(i + 2, 0))) /
      6;
    sum.area += areaOf({ pos, idx }, t);
  }
  return sums;
}

const holds = (outer: BodySum, inner: BodySum): boolean =>
  [0, 1, 2].every((k) => outer.low[k]! <= inner.low[k]! && outer.high[k]! >= inner.high[k]!);
