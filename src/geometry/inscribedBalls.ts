import type { MeasuredSolid } from "./localThickness.ts";
import { distanceTo } from "./nearest.ts";
import { sphereDirections } from "./sphereDirections.ts";
import { length, minus, plus, times, type Vec3 } from "./vector.ts";
import { middleOfCell } from "./voxels.ts";

/** A ball that just fits in the solid. */
export type Ball = { readonly point: Vec3; readonly diameter: number };

/**
 * The largest balls that fit, the largest first, none with its middle nearer to another's than that one is wide; `most` of them. Found in the cells,
 * then moved and measured against the mesh itself, unless its inner faces, where bodies overlap, stand in the way.
 */
export function inscribedBalls(solid: MeasuredSolid, most: number): readonly Ball[] {
  const { voxels, distance } = solid;
  const peaks = peaksOf(solid).sort((a, b) => distance[b]! - distance[a]!);
  const balls: Ball[] = [];
  const isCovered = (place: Vec3): boolean =>
    balls.some(({ point, diameter }) => length(minus(point, place)) < diameter);
  let tried = 0;
  for (const cell of peaks) {
    if (balls.length === most || tried === triesEach * most) break;
    const middle = middleOfCell(voxels, cell);
    if (isCovered(middle)) continue;
    tried++;
    // What looked like a top among cells may have been on the way up to one that is known.
    const ball = refined(solid, middle, distance[cell]!);
    if (!isCovered(ball.point)) balls.push(ball);
  }
  return balls.sort((a, b) => b.diameter - a.diameter);
}

/** A rough crest has many tops among cells; so many climbs for each ball asked for are enough to leave them behind. */
const triesEach = 3;

/** Solid cells further from the surface than any of the 26 round them. */
function peaksOf({ voxels, distance }: MeasuredSolid): number[] {
  const { nu, nv, solid, pitch } = voxels;
  const peaks: number[] = [];
  const steps: number[] = [];
  for (const k of [-nu * nv, 0, nu * nv])
    for (const j of [-nu, 0, nu]) for (const i of [-1, 0, 1]) if (i || j || k) steps.push(i + j + k);
  for (let cell = 0; cell < solid.length; cell++) {
    if (!solid[cell] || distance[cell]! < pitch) continue;
    const here = distance[cell]!;
    if (steps.every((step) => distance[cell + step]! <= here)) peaks.push(cell);
  }
  return peaks;
}

/**
 * Climbs from a cell's middle to where the nearest surface is furthest, to a 32nd of a cell. The way up is a crest where
 * nearest places change, so it looks all round, and in other directions at each size of step.
 */
function refined({ voxels, tree }: MeasuredSolid, from: Vec3, radius: number): Ball {
  let point = from;
  let best = distanceTo(tree, point);
  for (const [n, looks] of rounds.entries()) {
    const step = voxels.pitch / 2 ** n;
    // Far at first, while it goes up: a crest among cells has tops where there are none.
    for (let tries = n === 0 ? farSteps : 6; tries > 0; tries--) {
      const before = best;
      for (const look of looks) {
        const next = plus(point, times(look, step));
        const reach = distanceTo(tree, next);
        if (reach > best) [best, point] = [reach, next];
      }
      if (best === before) break;
    }
  }
  return Math.abs(best - radius) < 2 * voxels.pitch || best > radius
    ? { point, diameter: 2 * best }
    : { point: from, diameter: 2 * radius };
}

const farSteps = 400;
const rounds = [20, 21, 22, 23, 24, 25].map(sphereDirections);
