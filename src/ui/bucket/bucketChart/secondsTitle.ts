import type { BucketSegment, ChartPoint } from "../../../logbook/bucket/bucketChart.ts";
import { dayName } from "../../base/format/time.ts";
import type { SecondsBand } from "./chartScale.ts";

type Side = "below" | "within" | "above";

/**
 * What a bucket's seconds show, and since when: against the target band, else against the limits the bucket has shown
 * for itself, else how many readings there are.
 */
export function secondsTitle(
  { points, charted, chart }: Pick<BucketSegment, "points" | "charted" | "chart">,
  band: SecondsBand | null,
  { now, locale }: { readonly now: number; readonly locale: string },
): string {
  const [low, high] =
    band !== null
      ? [band.lowS, band.highS]
      : chart !== null && chart.basis !== "too-few"
        ? [chart.limits.lower, chart.limits.upper]
        : [null, null];
  const last = points.at(-1);
  if (last === undefined || low === null || high === null)
    return `Viscosity: ${points.length} ${points.length === 1 ? "check" : "checks"}, no limits yet`;
  const sideOf = ({ seconds }: ChartPoint): Side =>
    seconds < low ? "below" : seconds > high ? "above" : "within";
  const side = sideOf(last);
  const since = points.slice(points.findLastIndex((point) => sideOf(point) !== side) + 1)[0] ?? last;
  const day = dayName(since.at, now, locale);
  const of = band === null ? "its own limits" : "its target";
  if (side !== "within") return `Viscosity ${side} ${of} since ${day}`;
  // A signal on the last reading speaks of drift although each reading lies inside.
  const isDrifting = chart?.signals.some(({ index }) => charted[index]?.id === last.id) === true;
  return isDrifting ? "Viscosity inside its limits, but drifting" : `Viscosity steady since ${day}`;
}
