import { millisecondsInHour as hourMs } from "date-fns/constants";

/** Where a moment lies across a strip, CSS px. */
export type TimelineScale = {
  readonly from: number;
  readonly to: number;
  readonly width: number;
  readonly x: (at: number) => number;
};

export const aheadMs = 48 * hourMs;
const behindMs = hourMs;

/** From an hour ago to two days ahead. */
export const timelineSpan = (now: number) => ({ from: now - behindMs, to: now + aheadMs });

export function timelineScale(now: number, width: number): TimelineScale {
  const { from, to } = timelineSpan(now);
  const x = (at: number): number => ((Math.min(Math.max(at, from), to) - from) / (to - from)) * width;
  return { from, to, width, x };
}
