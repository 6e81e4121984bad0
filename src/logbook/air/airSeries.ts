import { millisecondsInHour as hourMs } from "date-fns/constants";
import type { AirReading } from "../piece/piece.ts";

export const chartHours = 48;

export type SeriesPoint = { readonly at: number; readonly value: number };

/** Readings of the last two days, the one before them too: the line has to start somewhere. Oldest first. */
export function recentReadings(readings: readonly AirReading[], now: number): readonly AirReading[] {
  const from = now - chartHours * hourMs;
  const inOrder = [...readings].sort((a, b) => a.at - b.at).filter((reading) => reading.at <= now);
  const first = inOrder.findIndex((reading) => reading.at >= from);
  if (first === -1) return inOrder.slice(-1);
  return inOrder.slice(Math.max(0, first - 1));
}

/** A range of whole steps that holds every value, never empty. */
export function niceRange(values: readonly number[], step: number): { low: number; high: number } {
  if (values.length === 0) return { low: 0, high: step };
  const low = Math.floor(Math.min(...values) / step) * step;
  const high = Math.ceil(Math.max(...values) / step) * step;
  return high > low ? { low, high } : { low: low - step, high: high + step };
}

/** The line cut where the chart begins: the point before it gives way to where the line crosses the start. */
export function fromStart(points: readonly SeriesPoint[], from: number): readonly SeriesPoint[] {
  const [first, second] = points;
  if (first === undefined || first.at >= from) return points;
  if (second === undefined || second.at <= first.at)
    return [{ at: from, value: first.value }, ...points.slice(1)];
  const share = (from - first.at) / (second.at - first.at);
  return [{ at: from, value: first.value + share * (second.value - first.value) }, ...points.slice(1)];
}
