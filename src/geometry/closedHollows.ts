import { bodiesOf } from "./bodies.ts";
import { holdersOf, mostNested, sumBodies, type BodySum } from "./bodyHolders.ts";
import type { Mesh } from "./mesh.ts";

/** Voids shut in all round by the solid, into which no slurry comes; mesh units. */
export type ClosedHollows = {
  readonly count: number;
  /** What they hold, less the bodies that lie loose in them. */
  readonly volume: number;
  /** Their skins, and those of the bodies in them. */
  readonly area: number;
};

export const noHollows: ClosedHollows = { count: 0, volume: 0, area: 0 };

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

function innerOf(mesh: Mesh): {
  readonly bodies: readonly BodySum[];
  readonly ofTriangle: Uint32Array;
  readonly isInner: readonly boolean[];
} {
  const { count, ofTriangle } = bodiesOf(mesh);
  if (count < 2 || count > mostNested) return { bodies: [], ofTriangle, isInner: [] };
  const bodies = sumBodies(mesh, count, ofTriangle);
  const holders = holdersOf(mesh, bodies, ofTriangle);
  const isVoid = bodies.map(
    ({ volume }, n) => volume < 0 && holders[n]!.some((holder) => bodies[holder]!.volume > 0),
  );
  const isInner = bodies.map((_, n) => isVoid[n]! || holders[n]!.some((holder) => isVoid[holder]!));
  return { bodies, ofTriangle, isInner };
}
