import { tenthQuantile } from "./normal.ts";
import { requirePositive, requireWithin } from "./range.ts";

/** Prior variance of a shop's own factor on drying time, and of one coat about it (both of ln t); estimates. */
export const priorVariance = 0.16;
export const coatVariance = 0.0625;

const gapStepS = 7200;

/** No gap widens the band more than twelve hours do. */
const mostSteps = 6;

export type ReadySpread = {
  readonly early: number;
  readonly likely: number;
  readonly late: number;
  readonly sigmaLn: number;
};

/**
 * Factors on a drying time for early (one in ten), likely and late (nine in ten).
 *
 * `factor` is the shop's own (1 = none learned); `sigmaLn` the spread of ln t, √(0.16 + 0.0625) before anything
 * was learned; `gapS` the longest time without a reading: each full 2 h multiplies the spread by 1.15
 * (estimate, up to 12 h and a spread of 2). Each is meant as a `resistanceFactor`, so that the known history counts in all three.
 */
export function readySpread({
  factor = 1,
  sigmaLn = Math.sqrt(priorVariance + coatVariance),
  gapS = 0,
}: {
  factor?: number | undefined;
  sigmaLn?: number | undefined;
  gapS?: number | undefined;
} = {}): ReadySpread {
  requirePositive("factor", factor, { high: 20, unit: "" });
  requireWithin("sigmaLn", sigmaLn, { low: 0, high: 2, unit: "" });
  requireWithin("gapS", gapS, { low: 0, high: 1e12, unit: "s" });
  const widened = Math.min(2, sigmaLn * 1.15 ** Math.min(mostSteps, Math.floor(gapS / gapStepS)));
  const times = Math.exp(tenthQuantile * widened);
  return { early: factor / times, likely: factor, late: factor * times, sigmaLn: widened };
}
