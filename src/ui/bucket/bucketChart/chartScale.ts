import type { BucketSegment } from "../../../logbook/bucket/bucketChart.ts";

export type SecondsBand = { readonly lowS: number; readonly highS: number };

/** Room beside the panel of a bucket's charts, px: they stand under each other, reading over reading. */
export const chartGaps = { left: 44, right: 12 } as const;
/** Marks nearer than this run into each other; a picture too narrow for all shows the newest. */
const closestPx = 9;
const fewest = 12;

/** The first of so many readings that a panel of this width, px, shows. */
export const firstShown = (count: number, roomPx: number): number =>
  Math.max(0, count - Math.max(fewest, Math.floor(roomPx / closestPx)));

/** Seconds the picture spans: all points, the control limits where there are any and the band, with a little air. */
export function secondsSpan(
  { points, chart }: Pick<BucketSegment, "points" | "chart">,
  band: SecondsBand | null,
): { readonly low: number; readonly high: number } {
  const limits = chart !== null && chart.basis !== "too-few" ? chart.limits : null;
  const all = [
    ...points.map(({ seconds }) => seconds),
    ...(limits === null ? [] : [limits.lower, limits.upper]),
    ...(band === null ? [] : [band.lowS, band.highS]),
  ];
  const low = Math.min(...all);
  const high = Math.max(...all);
  const air = Math.max((high - low) * 0.08, 0.4);
  return { low: Math.max(0, low - air), high: high + air };
}

/** Round seconds to draw a rule at, at most `most` of them. */
export function secondsTicks(
  { low, high }: { readonly low: number; readonly high: number },
  most = 5,
): readonly number[] {
  const steps = [0.2, 0.5, 1, 2, 5, 10, 20, 50];
  const step = steps.find((each) => (high - low) / each <= most) ?? 100;
  const first = Math.ceil(low / step);
  const last = Math.floor(high / step);
  return Array.from({ length: last - first + 1 }, (_, i) => (first + i) * step);
}
