import { soonTime } from "../format/time.ts";
import type { DueTime } from "./dueTimes.ts";

const thenWords: Record<DueTime["then"], string> = {
  "next-coat": "feel it, then the next coat",
  review: "feel it, then review before burnout",
};

/** "Heron: coat 4 likely dry – feel it, then the next coat". */
export function dueWords(due: Pick<DueTime, "name" | "coat" | "then" | "seen">): string {
  return `${due.name}: coat ${due.coat} ${due.seen ? "dry" : "likely dry"} – ${thenWords[due.then]}`;
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

/** "likely 18:40, between 17:10 and 21:30". */
export function dueTimeWords(
  due: Pick<DueTime, "dueMs" | "early" | "late" | "seen">,
  now: number,
  locale: string,
): string {
  const say = (at: number): string => soonTime(at, now, locale);
  if (due.seen) return `dry since ${say(due.dueMs)}, as seen`;
  const range =
    due.early === null || due.late === null
      ? due.early === null
        ? ""
        : `, not before ${say(due.early)}`
      : `, between ${say(due.early)} and ${say(due.late)}`;
  return `likely ${say(due.dueMs)}${range}`;
}
