import { type CalendarEvent, calendarFile } from "../../../device/calendarFile.ts";
import type { DueTime } from "./dueTimes.ts";

export const prodId = "-//Dipbook//Dipbook//EN";
const lastsMin = 15;

/** One event a due time. Its name stays the same and `sequence` rises, so that a second file moves the first one's events. */
export function eventOf(due: DueTime, sequence: number, say: (at: number) => string): CalendarEvent {
  return {
    uid: `${due.id}@dipbook`,
    sequence,
    startMs: due.dueMs,
    durationMin: lastsMin,
    ...eventWords(due, say),
  };
}

function eventWords(
  due: DueTime,
  say: (at: number) => string,
): Pick<CalendarEvent, "summary" | "description"> {
  const { name, coat, dueMs } = due;
  if (due.allows === "review")
    return {
      summary: `${name}: final dry, review from ${say(dueMs)}`,
      description: `${name}: all coats on. Final dry: review from ${say(dueMs)}. Review it before burnout.`,
    };
  const { dryAt } = due.cover;
  const latest = dryAt === null ? "No latest time can be given." : `Dry ${say(dryAt)} at the latest.`;
  return {
    summary: `${name}: check if coat ${coat} is dry`,
    description: `${name}: check coat ${coat} from ${say(dueMs)}. ${latest} Check it before you dip.`,
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
