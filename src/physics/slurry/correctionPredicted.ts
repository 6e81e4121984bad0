import { requirePositive, requireWithin } from "../stats/range.ts";
import { requireDensity } from "./sol.ts";
import { solidsFromLiquid } from "./solids.ts";
import { cupSeconds } from "./slurry.ts";
import { viscosityAfter } from "../shell/thickness.ts";

/** What the next reading should be. `secondsBand` is null where the rule of thickness has nothing to say. */
export type Predicted = {
  readonly densityGCm3: number;
  readonly newVolumeL: number;
  readonly secondsBand: {
    readonly lowS: number;
    readonly likelyS: number;
    readonly highS: number;
  } | null;
};

/**
 * The reading to expect after an addition, density by mass and volume, seconds at the reference temperature by
 * `viscosityAfter`. The slurry before it is taken to be the target's but for water lost or won, which gives the
 * flour's fraction: φ = φ₀·(ρ − 1)/(ρ₀ − 1) (derived).
 */
export function predictAfter({
  cup,
  viscosityMm2S,
  densityGCm3,
  volumeL,
  flourGCm3,
  liquidGCm3,
  target,
  added,
}: {
  cup: string;
  viscosityMm2S: number;
  densityGCm3: number;
  volumeL: number;
  flourGCm3: number;
  liquidGCm3: number;
  target: { readonly densityGCm3: number };
  /** Flour, and water or sol, kg, and the volume it comes to. */
  added: { readonly flourKg: number; readonly otherKg: number; readonly newVolumeL: number };
}): Predicted {
  requirePositive("viscosityMm2S", viscosityMm2S, { high: 1e6, unit: "mm²/s" });
  for (const [name, density] of Object.entries({
    densityGCm3,
    flourGCm3,
    liquidGCm3,
    target: target.densityGCm3,
  }))
    requireDensity(name, density);
  requireWithin("volumeL", volumeL, { low: 1e-6, high: 100_000, unit: "L" });
  requireWithin("added flourKg", added.flourKg, { low: 0, high: 1e6, unit: "kg" });
  requireWithin("added otherKg", added.otherKg, { low: 0, high: 1e6, unit: "kg" });
  requireWithin("newVolumeL", added.newVolumeL, { low: 1e-6, high: 1e7, unit: "L" });
  const { newVolumeL } = added;
  const after = (volumeL * densityGCm3 + added.flourKg + added.otherKg) / newVolumeL;
  const goal = solidsFromLiquid({ densityGCm3: target.densityGCm3, flourGCm3, liquidGCm3, silica: 0 });
  const known = { densityGCm3: after, newVolumeL };
  // A slurry as light as water tells no flour by its density.
  if (!goal.ok || target.densityGCm3 <= 1.001) return { ...known, secondsBand: null };
  const flourVolumeFraction = (goal.flourVolumeFraction * (densityGCm3 - 1)) / (target.densityGCm3 - 1);
  const flourL = flourVolumeFraction * volumeL + added.flourKg / flourGCm3;
  const guess = viscosityAfter({
    viscosityMm2S,
    from: { flourVolumeFraction, densityGCm3 },
    to: { flourVolumeFraction: flourL / newVolumeL, densityGCm3: after },
  });
  if (guess === null) return { ...known, secondsBand: null };
  const [lowS, likelyS, highS] = [guess.lowMm2S, guess.likelyMm2S, guess.highMm2S].map((each) => {
    const there = cupSeconds({ cup, viscosityMm2S: each });
    return there.ok ? there.seconds : null;
  });
  if (lowS == null || likelyS == null || highS == null) return { ...known, secondsBand: null };
  return { ...known, secondsBand: { lowS, likelyS, highS } };
}

export type PredictionMet = {
  /** Read less expected, g/cm³; null where it was not weighed. */
  readonly densityOffGCm3: number | null;
  readonly density: "as-expected" | "lighter" | "denser" | null;
  readonly seconds: "as-expected" | "thinner" | "thicker" | null;
};

/** The next reading beside what was expected. Density within `plusMinusGCm3`; seconds within their band and a tenth (repeatability of a cup, ASTM D4212 § 13). */
export function predictionMet({
  predicted,
  densityGCm3,
  secondsThere,
  plusMinusGCm3,
}: {
  predicted: Predicted;
  densityGCm3: number | null;
  secondsThere: number | null;
  plusMinusGCm3: number;
}): PredictionMet {
  if (densityGCm3 !== null) requireDensity("densityGCm3", densityGCm3);
  requireDensity("predicted", predicted.densityGCm3);
  requireWithin("plusMinusGCm3", plusMinusGCm3, { low: 0, high: 1, unit: "g/cm³" });
  if (secondsThere !== null) requireWithin("secondsThere", secondsThere, { low: 0, high: 1e7, unit: "s" });
  if (predicted.secondsBand !== null) {
    requireWithin("lowS", predicted.secondsBand.lowS, { low: 0, high: 1e7, unit: "s" });
    requireWithin("highS", predicted.secondsBand.highS, { low: 0, high: 1e7, unit: "s" });
  }
  const densityOffGCm3 = densityGCm3 === null ? null : densityGCm3 - predicted.densityGCm3;
  return {
    densityOffGCm3,
    density: densityOffGCm3 === null ? null : densityMet(densityOffGCm3, plusMinusGCm3),
    seconds: secondsMet(secondsThere, predicted.secondsBand),
  };
}

function densityMet(offGCm3: number, plusMinusGCm3: number): PredictionMet["density"] {
  if (Math.abs(offGCm3) <= plusMinusGCm3 + 1e-9) return "as-expected";
  return offGCm3 < 0 ? "lighter" : "denser";
}

function secondsMet(seconds: number | null, band: Predicted["secondsBand"]): PredictionMet["seconds"] {
  if (seconds === null || band === null) return null;
  if (seconds < band.lowS * 0.9) return "thinner";
  return seconds > band.highS * 1.1 ? "thicker" : "as-expected";
}
