import { requireFigures, requirePositive } from "../stats/range.ts";

/** Two dips further apart than this share of their mean ask for a third (derived from ASTM D4212 § 13: 11 % is suspect). */
export const apartShare = 0.08;
/** Three readings an hour apart within this share: the slurry has settled down (common practice, no source). */
const steadyShare = 0.05;
/** How far apart, h, readings must at least lie to say so. */
const steadyGapH = 0.75;

export type CupMean = {
  /** Null without a dip. */
  readonly meanS: number | null;
  /** Spread over mean of all dips; null below two. */
  readonly spread: number | null;
  readonly ask: "first" | "second" | "third" | null;
};

/**
 * The seconds to log from one to three dips: the mean of two; a third is asked where they differ by more than
 * 8 % of their mean, and then the two nearest each other count. Further dips are ignored.
 */
export function cupMean(dips: readonly number[]): CupMean {
  for (const seconds of dips) requirePositive("seconds", seconds, { high: 3600, unit: "s" });
  const [first, second, third] = dips;
  if (first === undefined) return { meanS: null, spread: null, ask: "first" };
  if (second === undefined) return { meanS: first, spread: null, ask: "second" };
  const spread = spreadOf(dips.slice(0, 3));
  if (third === undefined)
    return { meanS: (first + second) / 2, spread, ask: spread > apartShare + 1e-9 ? "third" : null };
  const [low, middle, high] = [first, second, third].sort((a, b) => a - b) as [number, number, number];
  return {
    meanS: middle - low <= high - middle ? (low + middle) / 2 : (middle + high) / 2,
    spread,
    ask: null,
  };
}

export type Steadiness = {
  /** Null while there are too few readings to say. */
  readonly steady: boolean | null;
  readonly spread: number | null;
  readonly readings: number;
};

/** Whether the last three readings, taken about an hour apart or more, agree within 5 % of their mean. `hours` may count from anything. */
export function steadiness(
  readings: readonly { readonly hours: number; readonly seconds: number }[],
): Steadiness {
  const apart: { readonly hours: number; readonly seconds: number }[] = [];
  for (const { hours } of readings) requireFigures({ hours });
  for (const reading of readings.toSorted((a, b) => b.hours - a.hours)) {
    requirePositive("seconds", reading.seconds, { high: 3600, unit: "s" });
    const later = apart.at(-1);
    if (apart.length < 3 && (later === undefined || later.hours - reading.hours >= steadyGapH))
      apart.push(reading);
  }
  if (apart.length < 3) return { steady: null, spread: null, readings: apart.length };
  const spread = spreadOf(apart.map(({ seconds }) => seconds));
  return { steady: spread <= steadyShare + 1e-9, spread, readings: 3 };
}

function spreadOf(values: readonly number[]): number {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return (Math.max(...values) - Math.min(...values)) / mean;
}
