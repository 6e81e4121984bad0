import { addDays } from "date-fns/addDays";
import { startOfDay } from "date-fns/startOfDay";
import { subDays } from "date-fns/subDays";
import type { Span } from "../../../logbook/dip/dipProposal.ts";
import type { Settings } from "../../../storage/settings.ts";

export type BucketHours = Settings["bucketHours"];

/**
 * The hours at the bucket as moments, on each day from the one before `from` to the one of `to`, cut to that time. By
 * the device's own clock, so that eight stays eight when it is put forward. An end not after its start is over
 * midnight; from a minute to the same minute is nothing.
 */
export function bucketSpans(
  hours: BucketHours,
  { from, to }: { readonly from: number; readonly to: number },
): readonly Span[] {
  const spans: Span[] = [];
  for (let day = subDays(startOfDay(from), 1); day.getTime() <= to; day = addDays(day, 1)) {
    for (const { fromMin, toMin } of hours) {
      if (fromMin === toMin) continue;
      const begin = momentOf(day, fromMin);
      const end = momentOf(day, toMin > fromMin ? toMin : toMin + 24 * 60);
      if (end > from && begin < to) spans.push({ from: Math.max(begin, from), to: Math.min(end, to) });
    }
  }
  return spans.toSorted((a, b) => a.from - b.from);
}

function momentOf(day: Date, minutes: number): number {
  const at = new Date(day);
  at.setHours(0, minutes, 0, 0);
  return at.getTime();
}
