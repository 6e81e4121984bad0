import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import { calendarText, contentLine, utcStamp } from "./calendarLine.ts";

export type CalendarEvent = {
  /** The same for the same due time of the same piece, always: a calendar then updates and doesn't double it. */
  readonly uid: string;
  /** Rises by one with every export of a changed time, from 0. */
  readonly sequence: number;
  readonly startMs: number;
  readonly durationMin: number;
  readonly summary: string;
  readonly description: string;
};

/**
 * A calendar file whose events ring at their start, as text for `text/calendar; charset=utf-8`.
 *
 * RFC 5545: times in UTC, so no VTIMEZONE; each VEVENT (3.6.1) has one VALARM (3.6.6) of ACTION:DISPLAY with
 * TRIGGER:PT0S (3.8.6.3). No METHOD: this is a file to import, not an invitation. `now` (epoch ms) is the DTSTAMP.
 * A start between two seconds rings at the later one, so never before it is due. Throws RangeError on an empty uid,
 * a sequence that is not a whole number from 0, a duration not over 0, and a time outside the years 1 to 9999.
 */
export function calendarFile({
  events,
  now,
  prodId,
}: {
  readonly events: readonly CalendarEvent[];
  readonly now: number;
  readonly prodId: string;
}): string {
  const stamp = utcStamp(now);
  return [
    "BEGIN:VCALENDAR",
    "VERSION:2.0",
    `PRODID:${calendarText(prodId)}`,
    "CALSCALE:GREGORIAN",
    ...events.flatMap((event) => eventLines(event, stamp)),
    "END:VCALENDAR",
  ]
    .map(contentLine)
    .join("");
}

function eventLines(event: CalendarEvent, stamp: string): readonly string[] {
  const { uid, sequence, startMs, durationMin, summary, description } = event;
  if (uid === "") throw new RangeError("uid must not be empty");
  if (!Number.isSafeInteger(sequence) || sequence < 0)
    throw new RangeError(`sequence must be a whole number from 0, found ${sequence}`);
  if (!(durationMin > 0)) throw new RangeError(`durationMin must be over 0, found ${durationMin}`);
  const title = calendarText(summary);
  return [
    "BEGIN:VEVENT",
    `UID:${calendarText(uid)}`,
    `DTSTAMP:${stamp}`,
    `SEQUENCE:${sequence}`,
    `DTSTART:${utcStamp(startMs)}`,
    `DTEND:${utcStamp(startMs + durationMin * minuteMs)}`,
    `SUMMARY:${title}`,
    `DESCRIPTION:${calendarText(description)}`,
    "TRANSP:TRANSPARENT",
    "BEGIN:VALARM",
    "ACTION:DISPLAY",
    "TRIGGER:PT0S",
    `DESCRIPTION:${title}`,
    "END:VALARM",
    "END:VEVENT",
  ];
}
