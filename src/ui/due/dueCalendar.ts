import { type CalendarEvent, calendarFile } from "../../device/calendarFile.ts";
import type { DueTime } from "./dueTimes.ts";

export const prodId = "-//Dipbook//Dipbook//EN";
const lastsMin = 15;

/** One event a due time. Its name stays the same and `sequence` rises, so that a second file moves the first one's events. */
export function eventOf(due: DueTime, sequence: number, say: (at: number) => string): CalendarEvent {
  const allows = due.allows === "review" ? "ready for review" : "next coat may go on";
  const range =
    due.early === null || due.late === null
      ? "No surer time can be given."
      : `Between ${say(due.early)} and ${say(due.late)} by the room’s air.`;
  return {
    uid: `${due.id}@dipbook`,
    sequence,
    startMs: due.dueMs,
    durationMin: lastsMin,
    summary: `${due.name}: coat ${due.coat} likely dry`,
    description: `${due.name}: coat ${due.coat} is likely dry, ${allows}. ${range} Feel it before you dip.`,
  };
}

/** The calendar file of these due times, ready to hand over. `now` is epoch ms. */
export function dueCalendar(
  dues: readonly DueTime[],
  { now, sequence, say }: { now: number; sequence: number; say: (at: number) => string },
): Blob {
  const events = dues.map((due) => eventOf(due, sequence, say));
  return new Blob([calendarFile({ events, now, prodId })], { type: "text/calendar;charset=utf-8" });
}
