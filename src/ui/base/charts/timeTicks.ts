import { millisecondsInHour as hourMs } from "date-fns/constants";
import { startOfDay } from "date-fns/startOfDay";

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
