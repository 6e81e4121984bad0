import { millisecondsInHour as hourMs } from "date-fns/constants";
import { startOfDay } from "date-fns/startOfDay";
import { weekdayText } from "../format/formatters.ts";
import { clockTime } from "../format/time.ts";
import type { PlotTick } from "./plotFrame.ts";

const stepsH = [0.25, 0.5, 1, 2, 3, 6, 12, 24, 48, 96, 168];

/** Round moments of the device's own day between two times, at most `most` of them. */
export function timeTicks(from: number, to: number, most: number): readonly number[] {
  const stepMs = (stepsH.find((hours) => (to - from) / (hours * hourMs) <= most) ?? 168) * hourMs;
  const midnight = startOfDay(from).getTime();
  const first = midnight + Math.ceil((from - midnight) / stepMs) * stepMs;
  const ticks: number[] = [];
  for (let at = first; at <= to && ticks.length <= most; at += stepMs) ticks.push(at);
  return ticks;
}

/** The same with their words: the clock, and on an axis longer than `daysFromH` hours midnight by its day's name. */
export function clockTicks(
  from: number,
  to: number,
  { most, locale, daysFromH = Infinity }: { most: number; locale: string; daysFromH?: number },
): readonly PlotTick[] {
  const hasDays = to - from > daysFromH * hourMs;
  return timeTicks(from, to, most).map((at) => ({
    at,
    text: hasDays && new Date(at).getHours() === 0 ? weekdayText(at, locale) : clockTime(at, locale),
  }));
}
