import { soonTime } from "../format/time.ts";
import type { DueTime } from "./dueTimes.ts";

const allowsWords: Record<DueTime["allows"], string> = {
  "next-coat": "feel it, then the next coat",
  review: "feel it, then review before burnout",
};

/** "Heron: coat 4 likely dry – feel it, then the next coat". */
export function dueWords(due: Pick<DueTime, "name" | "coat" | "allows" | "seen">): string {
  return `${due.name}: coat ${due.coat} ${due.seen ? "dry" : "likely dry"} – ${allowsWords[due.allows]}`;
}

/** "Came due while the app was closed: Heron, Bust and 2 more". */
export function cameDueWords(dues: readonly Pick<DueTime, "name">[]): string {
  const [first, second, ...more] = dues.map(({ name }) => name);
  const names =
    second === undefined
      ? first
      : more.length === 0
        ? `${first} and ${second}`
        : `${first}, ${second} and ${more.length} more`;
  return `Came due while the app was closed: ${names}`;
}

/** "likely 18:40, between 17:10 and 21:30"; once past, "likely dry since 18:40, surely by 21:30". */
export function dueTimeWords(
  due: Pick<DueTime, "dueMs" | "early" | "late" | "seen">,
  now: number,
  locale: string,
): string {
  const say = (at: number): string => soonTime(at, now, locale);
  const { dueMs, early, late, seen } = due;
  if (seen && dueMs <= now) return `dry since ${say(dueMs)}, as seen`;
  if (dueMs <= now) {
    if (late === null) return `likely dry since ${say(dueMs)}`;
    return late > now
      ? `likely dry since ${say(dueMs)}, surely by ${say(late)}`
      : `dry since ${say(late)} at the latest`;
  }
  if (early !== null && late !== null) return `likely ${say(dueMs)}, between ${say(early)} and ${say(late)}`;
  return early === null ? `likely ${say(dueMs)}` : `likely ${say(dueMs)}, not before ${say(early)}`;
}
