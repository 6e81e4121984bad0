import { millisecondsInDay as dayMs } from "date-fns/constants";
import { dateFormat } from "../../base/format/formatters.ts";
import type { PlotTick } from "../../base/charts/plotFrame.ts";
import { clockTicks } from "../../base/charts/timeTicks.ts";

const stepsDays = [1, 2, 4, 7, 14, 28, 56, 91, 182, 364];

/** Round times to mark on a plot, at most about `most`: hours within three days, else whole days of the device's own clock. */
export function plotTicks(
  from: number,
  to: number,
  { most, locale }: { most: number; locale: string },
): readonly PlotTick[] {
  if (to - from <= 3 * dayMs) return clockTicks(from, to, { most, locale, daysFromH: 26 });
  const days = (to - from) / dayMs;
  const step = stepsDays.find((one) => days / one <= most) ?? Math.ceil(days / most);
  const label = dateFormat(locale, { day: "numeric", month: "short" });
  const ticks: PlotTick[] = [];
  const day = new Date(from);
  day.setHours(0, 0, 0, 0);
  for (day.setDate(day.getDate() + 1); day.getTime() <= to; day.setDate(day.getDate() + step))
    ticks.push({ at: day.getTime(), text: label.format(day) });
  return ticks;
}
