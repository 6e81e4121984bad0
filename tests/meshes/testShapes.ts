import { arc, boxes, moved, together, tube, turned, turnedInsideOut } from "./testSolids.ts";
import type { Mesh } from "../../src/geometry/mesh.ts";
import type { Vec3 } from "../../src/geometry/vector.ts";

/** Shapes whose pockets and walls are worked out by hand, mm, up is z. */

/** A block 60 × 40 × 20 with a tower 10 × 10 to z 50 and one 12 × 12 to z 40. */
export const towers = boxes([
  [0, 60, 0, 40, 0, 20],
  [5, 15, 15, 25, 20, 50],
  [40, 52, 14, 26, 20, 40],
]);

/** A bar with a leg up to z 50 and one up to z 40. */
export const uTube = boxes([
  [0, 60, 0, 10, 0, 10],
  [0, 10, 0, 10, 10, 50],
  [50, 60, 0, 10, 10, 40],
]);

/** A beam on two legs, one down to z 0 and one to z 10. */
export const archedU = boxes([
  [0, 60, 0, 10, 40, 50],
  [0, 10, 0, 10, 0, 40],
  [50, 60, 0, 10, 10, 40],
]);

/** A palm to z 50 with fingers 8 × 8 of 30, 42, 48 and 40, and an arm with a thumb to z 45. */
export const hand = boxes([
  [0, 60, 0, 10, 0, 50],
  [2, 10, 1, 9, 50, 80],
  [17, 25, 1, 9, 50, 92],
  [32, 40, 1, 9, 50, 98],
  [47, 55, 1, 9, 50, 90],
  [60, 80, 1, 9, 20, 28],
  [72, 80, 1, 9, 28, 45],
]);

/** A cube of 40 with a closed void in which a spike 6 × 6 × 15 stands. */
export const spikeInVoid = together(
  boxes([[0, 40, 0, 40, 0, 40]]),
  turnedInsideOut(boxes([[5, 35, 5, 35, 5, 35]], [[17, 23, 17, 23, 5, 20]])),
);

/** A chamber that flows over at z 50 into a second one, open at z 10 to a third one. */
export const weir = boxes([
  [0, 10, 0, 10, 0, 60],
  [10, 40, 0, 10, 50, 60],
  [30, 40, 0, 10, 0, 50],
  [40, 70, 0, 10, 0, 10],
  [60, 70, 0, 10, 10, 80],
]);

const quarter = Math.PI / 2;

export const ball = (radius: number, steps = 32): Mesh =>
  turned(arc({ r: 0, z: 0, radius, from: -quarter, to: quarter }, steps), 2 * steps);

export const hollowBall = together(ball(20), turnedInsideOut(ball(10)));

/** A ball of radius 10 at z 40 on a stick of radius 3 from z 0. */
export const ballOnStick = turned(
  [[0, 0], [3, 0], ...arc({ r: 0, z: 40, radius: 10, from: -Math.acos(0.3), to: quarter }, 40)],
  64,
);

/** Radius 15, 30 high, wall and floor 3. */
export const cup = turned(
  [
    [0, 0],
    [15, 0],
    [15, 30],
    [12, 30],
    [12, 3],
    [0, 3],
  ],
  96,
);

/** A ring of 20 and 5, standing on its rim. */
export const standingRing = moved(
  turned(arc({ r: 20, z: 0, radius: 5, from: 0, to: 4 * quarter }, 32).slice(0, -1), 96),
  ([x, y, z]) => [z, x, y],
);

/** How far along (0–π) and how wide the horn is: from 6 at the block to 1 at its end. */
export const hornRadius = (t: number): number => 6 - (5 * t) / Math.PI;

/** A block with a horn that goes up from it, over and down to z 0, where half a ball ends it. */
export const horn = hornOf({ sides: 64, along: 160, round: 12 });

function hornOf({ sides, along, round }: { sides: number; along: number; round: number }): Mesh {
  return tube({
    rings: 3 + along + round,
    sides,
    closed: false,
    at: (ring, side): Vec3 => {
      const angle = (-2 * Math.PI * side) / sides;
      const [c, s] = [Math.cos(angle), Math.sin(angle)];
      const square = 20 / Math.max(Math.abs(c), Math.abs(s));
      if (ring < 2) return [square * c, square * s, ring === 0 ? -20 : 0];
      const t = (Math.PI * Math.min(ring - 2, along)) / along;
      const past = (quarter * Math.max(0, ring - 2 - along)) / round;
      const r = hornRadius(t) * Math.cos(past);
      const arm = 30 - r * c;
      return [30 - arm * Math.cos(t), r * s, arm * Math.sin(t) - Math.sin(past)];
    },
  });
}

/** Hills over a square grid of heights, flat below at z 0; cells of `cell`. */
export function hills(heights: readonly (readonly number[])[], cell: number): Mesh {
  const n = heights.length;
  const pos: number[] = [];
  const idx: number[] = [];
  for (const flat of [false, true])
    for (let j = 0; j < n; j++)
      for (let i = 0; i < n; i++) pos.push(i * cell, j * cell, flat ? 0 : heights[j]![i]!);
  const quad = (a: number, b: number, c: number, d: number): number => idx.push(a, b, c, a, c, d);
  const under = n * n;
  for (let j = 0; j + 1 < n; j++) {
    for (let i = 0; i + 1 < n; i++) {
      const a = j * n + i;
      quad(a, a + 1, a + n + 1, a + n);
      quad(under + a, under + a + n, under + a + n + 1, under + a + 1);
    }
    const [south, north] = [j, (n - 1) * n + j];
    quad(under + south, under + south + 1, south + 1, south);
    quad(under + north + 1, under + north, north, north + 1);
    const [west, east] = [j * n, j * n + n - 1];
    quad(under + west + n, under + west, west, west + n);
    quad(under + east, under + east + n, east + n, east);
  }
  return { pos: Float32Array.from(pos), idx: Uint32Array.from(idx) };
}
