import { firstExit, type RayTree } from "./rayTree.ts";
import type { Sample } from "./surfaceSamples.ts";
import { dot, negated, plus, squareTo, times, unit, type Vec3 } from "./vector.ts";
import { cellOf, type Voxels } from "./voxels.ts";

/** A solid as rays, cells and distances to its surface. */
export type MeasuredSolid = {
  readonly voxels: Voxels;
  readonly distance: Float32Array;
  readonly tree: RayTree;
};

/** Half angle of the cone of rays: wide enough to pass a fold, narrow enough to stay true. */
const coneTan = Math.tan(Math.PI / 18);

/**
 * Thickness of the solid under a place of its surface, mesh units; null where no ray comes out, as on an open mesh. Straight
 * through, or less when the ball behind is clearly smaller: then the ray ran along the solid. Where cells are too coarse for
 * a ball, the median of a narrow cone of rays guards against one that slips through a fold.
 */
export function localThickness(
  solid: MeasuredSolid,
  { point, normal }: Sample,
): { readonly thickness: number; readonly isByBall: boolean } | null {
  const { pitch, nu } = solid.voxels;
  const inward = times(normal, -1);
  const least = 1e-5 * pitch * nu;
  const straight = firstExit(solid.tree, { from: point, along: inward, least });
  const radius =
    straight < Infinity ? ballNear(solid, plus(point, times(inward, straight / 2)), straight / 2) : 0;
  if (radius < 1.5 * pitch) {
    const leaning = coneRound(inward).map(
      (along) => -dot(along, normal) * firstExit(solid.tree, { from: point, along, least }),
    );
    const through = [straight, ...leaning].filter((far) => far < Infinity).sort((a, b) => a - b);
    const thickness = through[through.length >> 1];
    return thickness === undefined ? null : { thickness, isByBall: false };
  }
  // The middle of the ball may lie between cells: half a cell is what that costs on the whole.
  const ball = 2 * radius + pitch / 2;
  const isByBall = ball + 2 * pitch < straight;
  return { thickness: isByBall ? ball : straight, isByBall };
}

function coneRound(axis: Vec3): readonly Vec3[] {
  const [u, v] = squareTo(axis);
  return [u, negated(u), v, negated(v)].map((aside) => unit(plus(axis, times(aside, coneTan))));
}

/** Radius of the largest ball reached by going uphill in distance from a point, no further than `within`; 0 outside. */
function ballNear({ voxels, distance }: MeasuredSolid, from: Vec3, within: number): number {
  let cell = cellOf(voxels, from) ?? 0;
  if (!voxels.solid[cell]) return 0;
  const { nu, nv } = voxels;
  for (let step = Math.ceil(within / voxels.pitch); step > 0; step--) {
    let best = cell;
    for (let k = -nu * nv; k <= nu * nv; k += nu * nv) {
      for (let j = -nu; j <= nu; j += nu) {
        for (let i = -1; i <= 1; i++)
          if (distance[cell + i + j + k]! > distance[best]!) best = cell + i + j + k;
      }
    }
    if (best === cell) break;
    cell = best;
  }
  return distance[cell]!;
}
