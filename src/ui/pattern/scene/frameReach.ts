import type { Mesh } from "../../../geometry/mesh.ts";
import { sphereDirections } from "../../../geometry/sphereDirections.ts";
import { cross, dot, unit, type Vec3 } from "../../../geometry/vector.ts";

/**
 * How far from `middle` an eye must stand that looks along −`direction`, so that all the points lie in the frame and one of
 * them at its edge. `slopeX` and `slopeY` are half the width and half the height seen at distance 1; `up` is the way that
 * stands upright in the frame and must not lie along `direction`.
 */
export function frameReach({
  points,
  middle,
  direction,
  up,
  slopeX,
  slopeY,
}: {
  points: readonly Vec3[];
  middle: Vec3;
  direction: Vec3;
  up: Vec3;
  slopeX: number;
  slopeY: number;
}): number {
  const toEye = unit(direction);
  const right = unit(cross(up, toEye));
  const above = cross(toEye, right);
  let reach = 0;
  for (const [x, y, z] of points) {
    const from: Vec3 = [x - middle[0], y - middle[1], z - middle[2]];
    const wide = Math.abs(dot(from, right)) / slopeX;
    const tall = Math.abs(dot(from, above)) / slopeY;
    reach = Math.max(reach, dot(from, toEye) + Math.max(wide, tall));
  }
  return reach;
}

const known = new WeakMap<Mesh, readonly Vec3[]>();

/** The points of a mesh that reach furthest in a hundred directions: what a frame has to take in. Kept with the mesh. */
export function outermost(mesh: Mesh): readonly Vec3[] {
  const before = known.get(mesh);
  if (before !== undefined) return before;
  const { pos } = mesh;
  const points = looks.map(([x, y, z]): Vec3 => {
    let far = -Infinity;
    let best = 0;
    for (let at = 0; at < pos.length; at += 3) {
      const along = pos[at]! * x + pos[at + 1]! * y + pos[at + 2]! * z;
      if (along > far) [far, best] = [along, at];
    }
    return [pos[best]!, pos[best + 1]!, pos[best + 2]!];
  });
  known.set(mesh, points);
  return points;
}

const looks = sphereDirections(100);
