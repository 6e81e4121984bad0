import { requirePositive, requireWithin } from "../stats/range.ts";

/** Volume fraction at which the flour's grains lock, and the span it may lie in: Krieger & Dougherty, Trans. Soc. Rheol. 3 (1959) 137, from memory; the span is judgement. */
export const closePackedShare = 0.62;
const closePackedSpan = { low: 0.58, high: 0.68 } as const;
const intrinsic = 2.5;

/**
 * Viscosity of a suspension over that of its liquid: Krieger & Dougherty, (1 − φ/φm)^(−[η]·φm), [η] 2.5 of
 * hard spheres. φ from 0 to below the close packing. Real flour and a shear-thinning slurry follow it in trend only.
 */
export function relativeViscosity({
  flourVolumeFraction,
  closePacked = closePackedShare,
}: {
  flourVolumeFraction: number;
  closePacked?: number | undefined;
}): number {
  requireWithin("closePacked", closePacked, { low: 0.4, high: 0.8, unit: "" });
  requireWithin("flourVolumeFraction", flourVolumeFraction, { low: 0, high: closePacked * 0.999, unit: "" });
  return (1 - flourVolumeFraction / closePacked) ** (-intrinsic * closePacked);
}

export type ViscosityGuess = {
  readonly lowMm2S: number;
  readonly likelyMm2S: number;
  readonly highMm2S: number;
};

/**
 * Kinematic viscosity after the flour's volume fraction has moved, mm²/s, with the span of the unknown packing.
 *
 * Null where the rule has nothing to say: a fraction outside 0.25–0.56, or a move of more than 0.06. The liquid is
 * taken as unchanged; that a diluted liquor is itself thinner comes on top.
 */
export function viscosityAfter({
  viscosityMm2S,
  from,
  to,
}: {
  viscosityMm2S: number;
  from: { readonly flourVolumeFraction: number; readonly densityGCm3: number };
  to: { readonly flourVolumeFraction: number; readonly densityGCm3: number };
}): ViscosityGuess | null {
  requirePositive("viscosityMm2S", viscosityMm2S, { high: 1e6, unit: "mm²/s" });
  for (const { flourVolumeFraction, densityGCm3 } of [from, to]) {
    requireWithin("flourVolumeFraction", flourVolumeFraction, { low: -10, high: 10, unit: "" });
    requireWithin("densityGCm3", densityGCm3, { low: 0.5, high: 20, unit: "g/cm³ (not kg/m³)" });
  }
  const fractions = [from.flourVolumeFraction, to.flourVolumeFraction];
  if (fractions.some((share) => !(share >= 0.25 && share <= 0.56))) return null;
  if (Math.abs(from.flourVolumeFraction - to.flourVolumeFraction) > 0.06) return null;
  const by = (closePacked: number): number =>
    (viscosityMm2S * relativeViscosity({ ...to, closePacked }) * from.densityGCm3) /
    (relativeViscosity({ ...from, closePacked }) * to.densityGCm3);
  const ends = [by(closePackedSpan.low), by(closePackedSpan.high)];
  return {
    lowMm2S: Math.min(...ends),
    likelyMm2S: by(closePackedShare),
    highMm2S: Math.max(...ends),
  };
}
