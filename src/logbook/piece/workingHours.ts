import { tzOffset } from "@date-fns/tz";
import {
  millisecondsInDay as dayMs,
  millisecondsInHour as hourMs,
  millisecondsInMinute as minuteMs,
} from "date-fns/constants";

/** The working day by the clock on the wall: from seven in the morning to seven in the evening; judgement. */
const working = { fromH: 7, toH: 19 } as const;

/**
 * Hours of working days between two times (epoch ms), on the wall clock of `zone`, an IANA name. Weekends count as days:
 * many small shops work then. Without a zone, or with one nobody knows, every hour counts. A change of clocks in
 * between shifts it by an hour at most. Never below 0.
 */
export function workingHours({
  from,
  to,
  zone,
}: {
  from: number;
  to: number;
  zone: string | undefined;
}): number {
  const offsetMs = zone === undefined ? null : zoneOffsetMs(to, zone);
  if (offsetMs === null) return Math.max(0, (to - from) / hourMs);
  return Math.max(0, hoursUpTo(to + offsetMs) - hoursUpTo(from + offsetMs));
}

/** Working hours from the first of January 1970 to a time on the wall. */
function hoursUpTo(wallMs: number): number {
  const days = Math.floor(wallMs / dayMs);
  const hour = (wallMs - days * dayMs) / hourMs;
  const today = Math.min(working.toH, Math.max(working.fromH, hour)) - working.fromH;
  return days * (working.toH - working.fromH) + today;
}

/** What the wall clock is ahead of Greenwich at a time, ms; null for a zone nobody knows. */
function zoneOffsetMs(at: number, zone: string): number | null {
  const offsetMin = zone === "" ? NaN : tzOffset(zone, new Date(at));
  return Number.isFinite(offsetMin) ? offsetMin * minuteMs : null;
}
