import { exitOf, type Exit, type RayTree } from "./rayTree.ts";
import { pointAt } from "./surface.ts";
import type { Sample } from "./surfaceSamples.ts";
import { cross, dot, length, minus, negated, plus, squareTo, times, unit, type Vec3 } from "./vector.ts";
import { cellOf, middleOfCell, type Voxels } from "./voxels.ts";

/** A solid as rays, cells and distances to its surface. */
export type MeasuredSolid = {
  readonly voxels: Voxels;
  readonly distance: Float32Array;
  readonly tree: RayTree;
};

/** Half angle of the cone of rays: wide enough to pass a fold, narrow enough to stay true. */
const coneTan = Math.tan(Math.PI / 18);
/** Two faces make a wall when they are no further from parallel than 30°; judgement. */
const wallCos = Math.cos(Math.PI / 6);

/**
 * Thickness of the solid under a place of its surface, mesh units; null where no ray comes out, as on an open mesh. Straight
 * through, or less when the ball behind is clearly smaller: then the ray ran along the solid. Where cells are too coarse for
 * a ball, a narrow cone of rays that also come out by a face along this one guards against a ray that slips through a fold.
 */
export function localThickness(
  solid: MeasuredSolid,
  { point, normal }: Sample,
): {
  readonly thickness: number;
  readonly isByBall: boolean;
  /** The face beyond lies along this one: at a rim, a crease or a corner it does not. */
  readonly isWall: boolean;
} | null {
  const { tree, voxels } = solid;
  const { pitch, nu } = voxels;
  const inward = times(normal, -1);
  const least = 1e-5 * pitch * nu;
  const isAlong = ({ triangle }: Exit): boolean => -facing(tree.mesh, triangle, normal) >= wallCos;
  const out = exitOf(tree, { from: point, along: inward, least });
  const straight = out.far;
  const isStraightWall = straight < Infinity && isAlong(out);
  const radius =
    straight < Infinity ? ballNear(solid, plus(point, times(inward, straight / 2)), 0.75 * straight) : 0;
  if (radius < 1.5 * pitch) {
    const through = [straight];
    const walls = isStraightWall ? [straight] : [];
    for (const along of coneRound(inward)) {
      const exit = exitOf(tree, { from: point, along, least });
      const far = -dot(along, normal) * exit.far;
      through.push(far);
      if (far < Infinity && isAlong(exit)) walls.push(far);
    }
    // Straight through is true unless no other ray bears it out.
    const isBorneOut =
      isStraightWall && walls.some((far, n) => n > 0 && Math.abs(far - straight) < 0.1 * straight);
    const wall = isBorneOut ? straight : medianOf(walls);
    // No ball fits, so the wall can't be wide: what runs further than that runs along an edge.
    if (wall !== null && wall < 6 * pitch) return { thickness: wall, isByBall: false, isWall: true };
    const thickness = medianOf(through.filter((far) => far < Infinity));
    return thickness === null ? null : { thickness, isByBall: false, isWall: false };
  }
  // The middle of the ball may lie between cells: half a cell is what that costs on the whole.
  const ball = 2 * radius + pitch / 2;
  // By cells a ball in a round hollow comes out up to two cells short.
  const isByBall = ball + 3 * pitch < straight;
  return { thickness: isByBall ? ball : straight, isByBall, isWall: isStraightWall && !isByBall };
}

function medianOf(values: readonly number[]): number | null {
  return values.toSorted((a, b) => a - b)[values.length >> 1] ?? null;
}

/** Cosine between a direction and the normal of a triangle. */
function facing({ pos, idx }: RayTree["mesh"], t: number, along: Vec3): number {
  const [a, b, c] = [0, 1, 2].map((k) => pointAt(pos, idx[3 * t + k]!)) as [Vec3, Vec3, Vec3];
  const normal = cross(minus(b, a), minus(c, a));
  return dot(normal, along) / length(normal);
}

function coneRound(axis: Vec3): readonly Vec3[] {
  const [u, v] = squareTo(axis);
  return [u, negated(u), v, negated(v)].map((aside) => unit(plus(axis, times(aside, coneTan))));
}

/**
 * Radius of the largest ball reached by going uphill in distance from a point, its middle no further off than `within`; 0
 * outside.
 */
function ballNear({ voxels, distance }: MeasuredSolid, from: Vec3, within: number): number {
  let cell = cellOf(voxels, from) ?? 0;
  if (!voxels.solid[cell]) return 0;
  const { nu, nv } = voxels;
  for (;;) {
    let best = cell;
    for (let k = -nu * nv; k <= nu * nv; k += nu * nv) {
      for (let j = -nu; j <= nu; j += nu) {
        for (let i = -1; i <= 1; i++)
          if (distance[cell + i + j + k]! > distance[best]!) best = cell + i + j + k;
      }
    }
    if (best === cell || length(minus(middleOfCell(voxels, best), from)) > within) break;
    cell = best;
  }
  return distance[cell]!;
}
