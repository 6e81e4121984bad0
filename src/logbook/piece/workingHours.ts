const hourMs = 3_600_000;
const dayMs = 24 * hourMs;

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

const formats = new Map<string, Intl.DateTimeFormat | null>();

/** What the wall clock is ahead of Greenwich at a time, ms; null for a zone nobody knows. */
function zoneOffsetMs(at: number, zone: string): number | null {
  let format = formats.get(zone);
  if (format === undefined) {
    format = formatOf(zone);
    formats.set(zone, format);
  }
  if (format === null) return null;
  const parts = new Map(format.formatToParts(at).map(({ type, value }) => [type, Number(value)]));
  const part = (type: Intl.DateTimeFormatPartTypes): number => parts.get(type) ?? 0;
  const wall = Date.UTC(part("year"), part("month") - 1, part("day"), part("hour"), part("minute"));
  return wall - Math.floor(at / 60_000) * 60_000;
}

function formatOf(timeZone: string): Intl.DateTimeFormat | null {
  const numeric = { year: "numeric", month: "numeric", day: "numeric", hour: "numeric" } as const;
  try {
    return new Intl.DateTimeFormat("en-GB", { ...numeric, minute: "numeric", hourCycle: "h23", timeZone });
  } catch {
    return null;
  }
}
