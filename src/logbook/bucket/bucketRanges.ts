import type { BucketSegment } from "./bucketChart.ts";

/** The step from one charted reading to the next, as the second picture of a control chart has it. */
export type RangePoint = {
  readonly id: string;
  readonly at: number;
  /** Place among all readings of the stretch, from 0. */
  readonly place: number;
  /** s; null for the first reading, one that is not charted, and across a top-up. */
  readonly rangeS: number | null;
  readonly isWide: boolean;
};

export type RangeChart = {
  readonly points: readonly RangePoint[];
  readonly meanS: number;
  /** Null while there are too few readings for a limit. */
  readonly limitS: number | null;
};

/** The moving ranges of a stretch beside its readings, with their limit; null without two charted readings. */
export function bucketRanges({ points, charted, chart }: BucketSegment): RangeChart | null {
  if (chart === null) return null;
  const indexOf = new Map(charted.map(({ id }, i) => [id, i]));
  const wide = new Set(chart.wideRanges);
  return {
    points: points.map(({ id, at }, place) => {
      const index = indexOf.get(id) ?? -1;
      return { id, at, place, rangeS: chart.movingRanges[index] ?? null, isWide: wide.has(index) };
    }),
    meanS: chart.meanRange,
    limitS: chart.basis === "too-few" || chart.sigma === 0 ? null : chart.rangeLimit,
  };
}
