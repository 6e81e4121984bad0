import { tzOffset } from "@date-fns/tz";
import { millisecondsInDay as dayMs, millisecondsInMinute as minuteMs } from "date-fns/constants";

const quarterMs = 15 * minuteMs;

/**
 * The moments, epoch ms in order, at which clocks of a zone show a time written as if it were UTC (`localMs`): one as
 * a rule, two in the hour that comes twice, none in the hour that is left out.
 */
export type ZoneClock = (localMs: number) => readonly number[];

/**
 * The clock of an IANA zone, "UTC" or a fixed "+02:00"; null where there is no such zone.
 *
 * Offsets come from the browser's own tables. They are asked once a day where none changes near it, else once a
 * quarter of an hour: no zone has ever moved at another time.
 */
export function zoneClock(zone: string): ZoneClock | null {
  const fixedMs = fixedOffsetMs(zone);
  if (fixedMs !== null) return (localMs) => [localMs - fixedMs];
  const offsetMs = offsetsOf(zone);
  if (offsetMs === null) return null;
  return (localMs) => {
    const dayStart = Math.floor(localMs / dayMs) * dayMs;
    const before = offsetMs(dayStart - dayMs);
    const after = offsetMs(dayStart + 2 * dayMs);
    if (before === after) return [localMs - before];
    // A clock set back shows the earlier moment at the larger offset.
    return [Math.max(before, after), Math.min(before, after)]
      .map((offset) => ({ offset, atMs: localMs - offset }))
      .filter(({ offset, atMs }) => offsetMs(Math.floor(atMs / quarterMs) * quarterMs) === offset)
      .map(({ atMs }) => atMs);
  };
}

/** "Z", "UTC", "GMT", "+2", "+02", "+0200", "+02:00", each with UTC or GMT before it if it likes; else null. */
export function fixedOffsetMs(text: string): number | null {
  const found = /^(?:utc|gmt|z)?\s*(?:([+-−])(\d{1,2}):?(\d{2})?)?$/i.exec(text.trim());
  if (found === null || text.trim() === "") return null;
  const [, sign, hours = "0", minutes = "0"] = found;
  if (Number(hours) > 14 || Number(minutes) > 59) return null;
  return (sign === undefined || sign === "+" ? 1 : -1) * (Number(hours) * 60 + Number(minutes)) * minuteMs;
}

function offsetsOf(zone: string): ((atMs: number) => number) | null {
  if (!isZone(zone)) return null;
  const known = new Map<number, number>();
  return (atMs) => {
    const ready = known.get(atMs);
    if (ready !== undefined) return ready;
    const offset = tzOffset(zone, new Date(atMs)) * minuteMs;
    known.set(atMs, offset);
    return offset;
  };
}

/** The library takes any name with an offset in it; a file may only name a zone there is. */
function isZone(timeZone: string): boolean {
  try {
    Intl.DateTimeFormat("en", { timeZone });
    return true;
  } catch {
    return false;
  }
}
