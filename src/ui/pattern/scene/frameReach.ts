import type { Vec3 } from "../../../geometry/vector.ts";
import { cross, dot, minus, unit } from "../../../geometry/vector.ts";
import type { Bounds } from "./hangTurn.ts";

/**
 * How far from the middle of a box an eye must stand that looks along −`direction`, so that all of the box lies in the frame
 * and some of it reaches its edge. `slopeX` and `slopeY` are half the width and half the height seen at distance 1; `up` is
 * the way that stands upright in the frame and must not lie along `direction`.
 */
export function frameReach({
  bounds: { low, high },
  direction,
  up,
  slopeX,
  slopeY,
}: {
  bounds: Bounds;
  direction: Vec3;
  up: Vec3;
  slopeX: number;
  slopeY: number;
}): number {
  const toEye = unit(direction);
  const right = unit(cross(up, toEye));
  const above = cross(toEye, right);
  const half = minus(high, low).map((side) => side / 2);
  let reach = 0;
  for (const x of [-1, 1])
    for (const y of [-1, 1])
      for (const z of [-1, 1]) {
        const corner: Vec3 = [x * half[0]!, y * half[1]!, z * half[2]!];
        const wide = Math.abs(dot(corner, right)) / slopeX;
        const tall = Math.abs(dot(corner, above)) / slopeY;
        reach = Math.max(reach, dot(corner, toEye) + Math.max(wide, tall));
      }
  return reach;
}
