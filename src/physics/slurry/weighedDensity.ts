import { requireFraction, requirePositive, requireWithin } from "../stats/range.ts";
import { makeUpWaterL } from "./slurry.ts";
import { requireDensity, requireVolume } from "./sol.ts";

export type WeighedDensity = {
  readonly densityGCm3: number;
  readonly plusMinusGCm3: number;
  /** The cup and scale are good enough for the accuracy asked. */
  readonly enough: boolean;
  /** The smallest volume that would be, mL, with the same scale and care. */
  readonly leastMl: number;
};

/**
 * Density from a weighed volume, with the error its scale and cup leave.
 *
 * Two weighings, each out by half a step of the scale, and the cup's volume known to `cupMl`: worst case, summed
 * (derived; the overflow cup is that of ISO 2811-1, from memory). ± 0.003 g/cm³ is what a correction needs
 * (derived: 0.01 is a third of a litre of water in 20 L of fused silica slurry). Entrained air is not in it.
 */
export function weighedDensity({
  fullG,
  emptyG,
  volumeMl,
  scaleG = 0.1,
  cupMl = 0.1,
  wantedGCm3 = 0.003,
}: {
  fullG: number;
  emptyG: number;
  volumeMl: number;
  scaleG?: number | undefined;
  cupMl?: number | undefined;
  wantedGCm3?: number | undefined;
}): WeighedDensity {
  requirePositive("volumeMl", volumeMl, { high: 10_000, unit: "mL" });
  requireWithin("emptyG", emptyG, { low: 0, high: 50_000, unit: "g" });
  requireWithin("fullG", fullG, { low: emptyG, high: 100_000, unit: "g" });
  requirePositive("scaleG", scaleG, { high: 1000, unit: "g" });
  requireWithin("cupMl", cupMl, { low: 0, high: 100, unit: "mL" });
  requirePositive("wantedGCm3", wantedGCm3, { high: 1, unit: "g/cm³" });
  const densityGCm3 = (fullG - emptyG) / volumeMl;
  const errorG = scaleG + densityGCm3 * cupMl;
  const plusMinusGCm3 = errorG / volumeMl;
  return {
    densityGCm3,
    plusMinusGCm3,
    enough: plusMinusGCm3 <= wantedGCm3,
    leastMl: errorG / wantedGCm3,
  };
}

/**
 * What bubbles do to a weighing: the density they hide, g/cm³, and the water they look like, L.
 *
 * `airFraction` of the volume is air. Let foam settle and tap it out before weighing. Derived.
 */
export function airBubbleEffect({
  densityGCm3,
  volumeL,
  airFraction,
}: {
  densityGCm3: number;
  volumeL: number;
  airFraction: number;
}): { readonly dropGCm3: number; readonly looksLikeWaterL: number | null } {
  requireDensity("densityGCm3", densityGCm3);
  requireFraction("airFraction", airFraction);
  requireVolume(volumeL);
  const seen = densityGCm3 * (1 - airFraction);
  // The water that would have brought the true density down to what was seen.
  const water = seen > 1.001 ? makeUpWaterL({ volumeL, densityGCm3, targetGCm3: seen }) : null;
  return { dropGCm3: densityGCm3 - seen, looksLikeWaterL: water?.ok ? water.waterL : null };
}
