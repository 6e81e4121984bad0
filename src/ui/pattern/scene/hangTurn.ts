import { faceDown, rotated, type Rotation } from "../../../geometry/rotation.ts";
import { negated, type Vec3 } from "../../../geometry/vector.ts";

/** Turned further, the shortest way, until `up` of the mesh is upright: the picture does not spin more than it must. */
export const hungWith = (rotation: Rotation, up: Vec3): Rotation => faceDown(rotation, negated(up));

export type Bounds = { readonly low: Vec3; readonly high: Vec3 };

/** Box of the turned mesh in the shop's axes. */
export function boundsOf({ pos }: { readonly pos: ArrayLike<number> }, rotation: Rotation): Bounds {
  const low = [Infinity, Infinity, Infinity] as [number, number, number];
  const high = [-Infinity, -Infinity, -Infinity] as [number, number, number];
  for (let at = 0; at < pos.length; at += 3) {
    const p = rotated(rotation, [pos[at]!, pos[at + 1]!, pos[at + 2]!]);
    for (let k = 0; k < 3; k++) {
      low[k] = Math.min(low[k]!, p[k]!);
      high[k] = Math.max(high[k]!, p[k]!);
    }
  }
  return { low, high };
}
