import { addDays } from "date-fns/addDays";
import { millisecondsInDay as dayMs, millisecondsInHour as hourMs } from "date-fns/constants";
import { startOfDay } from "date-fns/startOfDay";
import { timeTicks } from "../../base/charts/timeTicks.ts";
import { dateFormat } from "../../base/format/formatters.ts";
import { clockTime } from "../../base/format/time.ts";

const stepsDays = [1, 2, 4, 7, 14, 28, 56, 91, 182, 364];

export type Tick = { readonly at: number; readonly label: string };

/** Round times to mark on a plot, at most about `most`: hours within three days, else whole days of the device's own clock. */
export function plotTicks(
  from: number,
  to: number,
  { most, locale }: { most: number; locale: string },
): readonly Tick[] {
  const write = (options: Intl.DateTimeFormatOptions) => (at: number) =>
    dateFormat(locale, options).format(at);
  if (to - from <= 3 * dayMs) {
    const weekday = write({ weekday: "short" });
    const isMidnight = (at: number): boolean => new Date(at).getHours() === 0;
    return timeTicks(from, to, most).map((at) => ({
      at,
      label: to - from > 26 * hourMs && isMidnight(at) ? weekday(at) : clockTime(at, locale),
    }));
  }
  const days = (to - from) / dayMs;
  const step = stepsDays.find((one) => days / one <= most) ?? Math.ceil(days / most);
  const label = write({ day: "numeric", month: "short" });
  const ticks: Tick[] = [];
  for (let day = addDays(startOfDay(from), 1); day.getTime() <= to; day = addDays(day, step))
    ticks.push({ at: day.getTime(), label: label(day.getTime()) });
  return ticks;
}
