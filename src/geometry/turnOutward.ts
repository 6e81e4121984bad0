import { bodiesOf } from "./bodies.ts";
import { boxOf } from "./massProperties.ts";
import type { Mesh } from "./mesh.ts";

/** Beyond this many bodies only the whole is looked at. */
const mostBodies = 2000;

/**
 * Turns bodies that are inside out. A body with a negative volume inside the box of a larger one is left: that is how a
 * void is drawn. Gives the very mesh and 0 when none is.
 */
export function turnOutward(mesh: Mesh): { readonly mesh: Mesh; readonly bodies: number } {
  const { count, ofTriangle } = bodiesOf(mesh);
  if (count > mostBodies) return { mesh, bodies: 0 };
  const sums = sumBodies(mesh, count, ofTriangle);
  const wrong = sums.map(
    ({ volume }, i) => volume < 0 && !sums.some((other, k) => k !== i && holds(other, sums[i]!)),
  );
  const bodies = wrong.filter(Boolean).length;
  if (bodies === 0) return { mesh, bodies };
  const idx = mesh.idx.slice();
  for (let t = 0; t < ofTriangle.length; t++) {
    if (wrong[ofTriangle[t]!] !== true) continue;
    idx[3 * t + 1] = mesh.idx[3 * t + 2]!;
    idx[3 * t + 2] = mesh.idx[3 * t + 1]!;
  }
  return { mesh: { ...mesh, idx }, bodies };
}

type BodySum = { volume: number; readonly low: number[]; readonly high: number[] };

function sumBodies(mesh: Mesh, count: number, ofTriangle: Uint32Array): readonly BodySum[] {
  const { pos, idx } = mesh;
  const { middle } = boxOf(mesh);
  const sums = Array.from({ length: count }, (): BodySum => ({
    volume: 0,
    low: [Infinity, Infinity, Infinity],
    high: [-Infinity, -Infinity, -Infinity],
  }));
  const corner = (i: number, k: 0 | 1 | 2): number => pos[3 * idx[i]! + k]! - middle[k];
  for (let t = 0; t < ofTriangle.length; t++) {
    const sum = sums[ofTriangle[t]!]!;
    const i = 3 * t;
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
  }
  return sums;
}

const holds = (outer: BodySum, inner: BodySum): boolean =>
  Math.abs(outer.volume) > Math.abs(inner.volume) &&
  [0, 1, 2].every((k) => outer.low[k]! <= inner.low[k]! && outer.high[k]! >= inner.high[k]!);
