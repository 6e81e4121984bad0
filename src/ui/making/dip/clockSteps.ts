import { millisecondsInHour as hourMs, millisecondsInMinute as minuteMs } from "date-fns/constants";
import { subDays } from "date-fns/subDays";

const quarterMs = 15 * minuteMs;

/**
 * Back to the quarter hour before, so that "at six" is a few taps away from any minute. A quarter of UTC is a
 * quarter on every wall clock: all zones in use lie whole quarters from it.
 */
export const backQuarter = (at: number): number => Math.floor((at - 1) / quarterMs) * quarterMs;

export const backHour = (at: number): number => at - hourMs;

/** The last time a clock showed `text` ("06:00") up to `now`, in the device's zone; null when it is no clock time. */
export function lastTimeClockShowed(text: string, now: number): number | null {
  const match = /^(\d{1,2}):(\d{2})$/.exec(text);
  if (match === null) return null;
  const [hour, minute] = [Number(match[1]), Number(match[2])];
  if (hour > 23 || minute > 59) return null;
  const today = new Date(now).setHours(hour, minute, 0, 0);
  if (today <= now) return today;
  return subDays(now, 1).setHours(hour, minute, 0, 0);
}
