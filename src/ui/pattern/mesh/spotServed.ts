import { dot, length, minus, times, type Vec3 } from "../../../geometry/vector.ts";
import type { Spot } from "./patternResults.ts";

/** A vent may stand this far beside a point and still be at it, mm: about a vent's own thickness. */
const beside = 5;

/** Whether an opening stands at a spot: at its height but for what counts as noise, and on its point or along its ridge. */
export function isServed({
  spot,
  openings,
  up,
  within,
}: {
  spot: Pick<Spot, "point" | "ridge">;
  openings: readonly Vec3[];
  up: Vec3;
  within: number;
}): boolean {
  const places = [spot.point, ...spot.ridge];
  return openings.some((opening) =>
    places.some((place) => {
      const apart = minus(opening, place);
      const rise = dot(apart, up);
      return Math.abs(rise) <= within && length(minus(apart, times(up, rise))) <= beside;
    }),
  );
}
