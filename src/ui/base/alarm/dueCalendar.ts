import { type CalendarEvent, calendarFile } from "../../../device/calendarFile.ts";
import type { RingDue } from "./ringDue.ts";

export const prodId = "-//Dipbook//Dipbook//EN";

/** One event a due time. Its name stays the same and `sequence` rises, so that a second file moves the first one's events. */
export const eventOf = (due: RingDue, sequence: number, say: (at: number) => string): CalendarEvent => ({
  uid: `${due.id}@dipbook`,
  sequence,
  startMs: due.dueMs,
  ...due.calendar(say),
});

/** The calendar file of these due times, ready to hand over. `now` is epoch ms. */
export function dueCalendar(
  dues: readonly RingDue[],
  { now, sequence, say }: { now: number; sequence: number; say: (at: number) => string },
): Blob {
  const events = dues.map((due) => eventOf(due, sequence, say));
  return new Blob([calendarFile({ events, now, prodId })], { type: "text/calendar;charset=utf-8" });
}
