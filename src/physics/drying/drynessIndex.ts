import type { MovingAir } from "../air/film.ts";
import { resistances } from "../air/film.ts";
import { requireWithin } from "../stats/range.ts";

/** Below this drop between air and wet surface, K, a surface reading says nothing. */
const leastSignalK = 0.05;

/**
 * Dryness index of a surface reading: (surface − wet surface) / (air − wet surface); 0 dripping, 1 as warm as
 * the air and so no longer drying. Readings under the wet surface or over the air go below 0 and above 1.
 *
 * The wet surface is the one with radiation, not the thermodynamic wet bulb. null where the air is so near
 * saturation that there is no drop to read. The signal fades towards 80 % rh (about 2 K left).
 */
export function drynessIndex(air: MovingAir & { readonly surfaceC: number }): number | null {
  requireWithin("surfaceC", air.surfaceC, { low: -40, high: 90, unit: "°C" });
  const { wetSurfaceC } = resistances(air);
  const dropK = air.tempC - wetSurfaceC;
  return dropK < leastSignalK ? null : (air.surfaceC - wetSurfaceC) / dropK;
}

/**
 * The index when the dry front just reaches the bottom of a layer, 0–1.
 *
 * From 1 − index = A/(A + B·δ), derived here from the resistances: a reading under it is a wet coat.
 */
export function endIndex({ depthM, ...air }: MovingAir & { readonly depthM: number }): number {
  requireWithin("depthM", depthM, { low: 0, high: 0.3, unit: "m (not mm)" });
  const { surfaceSM, layerSM2 } = resistances(air);
  return (layerSM2 * depthM) / (surfaceSM + layerSM2 * depthM);
}
