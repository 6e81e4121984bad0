import { requireIndexes, runSignals } from "./controlRules.ts";
import type { ChartSignal } from "./controlRules.ts";

export type ChartOptions = {
  /** Limits come from the first so many values and stay frozen. Without it they freeze at twenty. */
  readonly baseline?: number | undefined;
  /** Limits frozen earlier; `baseline` is then ignored. */
  readonly frozen?: { readonly centre: number; readonly sigma: number } | undefined;
  /** Indexes of values before which the bucket was corrected: the moving range across is void and a trend begins anew. */
  readonly correctedBefore?: readonly number[] | undefined;
  /** Leave moving ranges above 3.5 of their mean out of it, once: Nelson, J. Quality Technol. 14 (1982) 172 (from memory). */
  readonly dropWideRanges?: boolean | undefined;
};

/** too-few below ten values; provisional to nineteen; frozen from twenty, or with a baseline of one's own. */
export type ChartBasis = "too-few" | "provisional" | "frozen";

export type IndividualsChart = {
  readonly basis: ChartBasis;
  readonly centre: number;
  readonly sigma: number;
  readonly limits: { readonly upper: number; readonly lower: number };
  /** Moving range to each value from the one before; null for the first and across a correction. */
  readonly movingRanges: readonly (number | null)[];
  readonly meanRange: number;
  readonly rangeLimit: number;
  /** Indexes of moving ranges beyond their limit. */
  readonly wideRanges: readonly number[];
  /** Indexes of moving ranges left out of their mean. */
  readonly droppedRanges: readonly number[];
  /** In order of index, then rule. None while there are too few values, or none that differ. */
  readonly signals: readonly ChartSignal[];
};

/** Mean range of two over the standard deviation, and the upper factor of the range chart, for n = 2. */
const d2 = 1.128;
const d4 = 3.267;
const mostValue = 1e15;
const fewest = 10;
const freezeAt = 20;

/**
 * Individuals and moving range chart: centre ± 3·MR̄/1.128, range limit 3.267·MR̄.
 *
 * NIST/SEMATECH e-Handbook of Statistical Methods 6.3.2.2; rules 1–4 of Western Electric and the trend of six
 * (6.3.2), numbered 1–5. Pass as-found readings of one batch and one cup, within 2 K of the reference, in order;
 * any unit. Null for fewer than two values, or no moving range left, unless limits come frozen. Refuses NaN.
 */
export function individualsChart(
  values: readonly number[],
  options: ChartOptions = {},
): IndividualsChart | null {
  const { frozen, correctedBefore = [], dropWideRanges = false } = options;
  for (const value of values)
    if (!(Math.abs(value) <= mostValue))
      throw new RangeError(`a charted value must be a finite number, found ${value}`);
  requireIndexes("correctedBefore", correctedBefore);
  const movingRanges = values.map((value, i) => {
    const before = values[i - 1];
    return before === undefined || correctedBefore.includes(i) ? null : Math.abs(value - before);
  });
  const count = baselineCount(options, values.length);
  const own = frozen ? null : limitsFrom({ values, movingRanges, count, dropWideRanges });
  if (frozen && !(frozen.sigma >= 0 && frozen.sigma <= mostValue && Math.abs(frozen.centre) <= mostValue))
    throw new RangeError(`frozen sigma must be 0 or more, found ${frozen.sigma} about ${frozen.centre}`);
  const found = frozen ? { ...frozen, meanRange: frozen.sigma * d2, droppedRanges: [] } : own;
  if (found === null) return null;
  const { centre, sigma, meanRange, droppedRanges } = found;
  const basis = basisOf(options, values.length);
  const rangeLimit = d4 * meanRange;
  const beyond = sigma > 0 ? movingRanges.flatMap((range, i) => (isAbove(range, rangeLimit) ? [i] : [])) : [];
  return {
    basis,
    centre,
    sigma,
    limits: { upper: centre + 3 * sigma, lower: centre - 3 * sigma },
    movingRanges,
    meanRange,
    rangeLimit,
    wideRanges: basis === "too-few" ? [] : beyond,
    droppedRanges,
    signals: basis === "too-few" || sigma === 0 ? [] : runSignals({ values, centre, sigma, correctedBefore }),
  };
}

function baselineCount({ baseline }: ChartOptions, length: number): number {
  if (baseline === undefined) return Math.min(length, freezeAt);
  if (!Number.isInteger(baseline) || baseline < 2)
    throw new RangeError(`baseline must be a whole number from 2, found ${baseline}`);
  return Math.min(length, baseline);
}

function basisOf({ baseline, frozen }: ChartOptions, length: number): ChartBasis {
  if (frozen) return "frozen";
  const needed = baseline ?? freezeAt;
  if (length >= needed && needed >= fewest) return "frozen";
  return Math.min(length, needed) >= fewest ? "provisional" : "too-few";
}

function limitsFrom({
  values,
  movingRanges,
  count,
  dropWideRanges,
}: {
  values: readonly number[];
  movingRanges: readonly (number | null)[];
  count: number;
  dropWideRanges: boolean;
}): { centre: number; sigma: number; meanRange: number; droppedRanges: readonly number[] } | null {
  const ranges = movingRanges.slice(0, count).flatMap((range, i) => (range === null ? [] : [{ range, i }]));
  if (ranges.length === 0) return null;
  const meanOf = (kept: typeof ranges): number =>
    kept.reduce((sum, { range }) => sum + range, 0) / kept.length;
  const wide = 3.5 * meanOf(ranges);
  const kept = dropWideRanges ? ranges.filter(({ range }) => range <= wide) : ranges;
  const meanRange = meanOf(kept);
  const centre = values.slice(0, count).reduce((sum, value) => sum + value, 0) / count;
  const droppedRanges = ranges.filter((each) => !kept.includes(each)).map(({ i }) => i);
  // Equal values differ in their last digit once they have been averaged.
  const sigma = meanRange <= 1e-12 * Math.abs(centre) ? 0 : meanRange / d2;
  return { centre, sigma, meanRange, droppedRanges };
}

const isAbove = (range: number | null, limit: number): boolean =>
  range !== null && range > limit * (1 + 1e-9);
