import { length, minus, plus, times, type Vec3 } from "./vector.ts";
import type { Sample } from "./surfaceSamples.ts";

export type ThinPlace = {
  /** On the surface. */
  readonly point: Vec3;
  readonly normal: Vec3;
  /** Half way through. */
  readonly middle: Vec3;
  readonly thickness: number;
  /** Too thin for the cells to confirm: only the rays say so. */
  readonly isBelowResolution: boolean;
};

/**
 * The thinnest places of a looked-over surface (thinnest first), one a neighbourhood, and none thicker than three
 * quarters of the median but the thinnest of all. A place that no neighbour bears out is a fault of the mesh.
 */
export function thinPlacesOf({
  looked,
  resolvable,
  most,
}: {
  looked: readonly (Sample & { readonly thickness: number })[];
  resolvable: number;
  most: number;
}): readonly ThinPlace[] {
  const median = looked[looked.length >> 1]?.thickness ?? 0;
  const places: ThinPlace[] = [];
  const apart = reachOf(looked);
  let left = looked;
  while (places.length < most && left.length > 0) {
    const [place, ...others] = left;
    if (!place) break;
    const { point, normal, thickness } = place;
    if (places.length > 0 && thickness > 0.75 * median) break;
    const reach = Math.max(3 * thickness, apart);
    const isNear = (other: Sample): boolean => length(minus(other.point, point)) < reach;
    // The place itself is one of them.
    if (looked.filter((other) => other.thickness < 1.5 * thickness && isNear(other)).length < 3) {
      left = others;
      continue;
    }
    const middle = plus(point, times(normal, -thickness / 2));
    places.push({ point, normal, middle, thickness, isBelowResolution: thickness < resolvable });
    left = others.filter((other) => !isNear(other));
  }
  return places;
}

/** A twelfth of the diagonal of what was looked at. */
function reachOf(looked: readonly Sample[]): number {
  const spans = [0, 1, 2].map((k) => {
    let low = Infinity;
    let high = -Infinity;
    for (const { point } of looked) {
      low = Math.min(low, point[k]!);
      high = Math.max(high, point[k]!);
    }
    return high - low;
  });
  return Math.hypot(...spans) / 12;
}
