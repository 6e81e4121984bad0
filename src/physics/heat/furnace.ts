import { requirePositive, requireWithin } from "../stats/range.ts";

/** One melt as it was: heat that went into the metal, time from burner or power on to pouring heat, lining cold or hot. */
export type MeltSeen = { readonly energyJ: number; readonly timeS: number; readonly isHotStart: boolean };

export type UsefulPower = { readonly medianW: number; readonly melts: number };

/**
 * Useful power of a furnace from its own melts, W: the median of energy over time, cold starts (the lining soaks)
 * and hot ones apart; null where none was seen. Holding time must not be in `timeS`.
 */
export function learnFurnace(melts: readonly MeltSeen[]): {
  readonly hot: UsefulPower | null;
  readonly cold: UsefulPower | null;
} {
  const powers = (isHot: boolean): readonly number[] =>
    melts
      .filter(({ isHotStart }) => isHotStart === isHot)
      .map(({ energyJ, timeS }) => {
        requirePositive("energyJ", energyJ, { high: 1e11, unit: "J" });
        requirePositive("timeS", timeS, { high: 1e6, unit: "s" });
        return energyJ / timeS;
      });
  return { hot: powerOf(powers(true)), cold: powerOf(powers(false)) };
}

/** All metal in (ingot, returns, heel found) and all metal out (poured, pigged, heel left) of one melt. */
export type MeltWeighed = { readonly inKg: number; readonly outKg: number };

export type LearnedLoss =
  | { readonly kind: "learned"; readonly lossShare: number; readonly melts: number; readonly inKg: number }
  | { readonly kind: "nothing-weighed" }
  /** The scales or the log are wrong: metal doesn't grow. */
  | { readonly kind: "more-out-than-in"; readonly inKg: number; readonly outKg: number };

/** Melt loss of the shop's own, 1 − Σout/Σin over the melts given (the caller takes the last few of one family). */
export function learnLoss(melts: readonly MeltWeighed[]): LearnedLoss {
  let inKg = 0;
  let outKg = 0;
  for (const melt of melts) {
    requirePositive("inKg", melt.inKg, { high: 100_000, unit: "kg" });
    requireWithin("outKg", melt.outKg, { low: 0, high: 100_000, unit: "kg" });
    inKg += melt.inKg;
    outKg += melt.outKg;
  }
  if (melts.length === 0) return { kind: "nothing-weighed" };
  if (outKg > inKg) return { kind: "more-out-than-in", inKg, outKg };
  return { kind: "learned", lossShare: 1 - outKg / inKg, melts: melts.length, inKg };
}

function powerOf(watts: readonly number[]): UsefulPower | null {
  const sorted = [...watts].sort((a, b) => a - b);
  const [low, high] = [sorted[(sorted.length - 1) >> 1], sorted[sorted.length >> 1]];
  return low === undefined || high === undefined ? null : { medianW: (low + high) / 2, melts: sorted.length };
}
