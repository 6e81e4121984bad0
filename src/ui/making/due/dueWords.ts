import { coverWhen } from "../../base/format/coverWords.ts";
import { reviewWhen } from "../../base/format/fireWords.ts";
import { soonTime } from "../../base/format/time.ts";
import type { DueTime } from "../../base/alarm/dueTimes.ts";

/** "Heron: check if coat 4 is dry, then the next coat". */
export function dueWords(due: DueTime): string {
  if (due.allows === "review") return `${due.name}: final dry is over – review before burnout`;
  if (due.isHeld === true) return `${due.name}: check coat ${due.coat} – hold: no further coat yet`;
  const { dryAt } = due.cover;
  return dryAt !== null && dryAt <= due.dueMs
    ? `${due.name}: coat ${due.coat} is dry – ready for the next coat`
    : `${due.name}: check if coat ${due.coat} is dry, then the next coat`;
}

/** "Coat 4: check from 18:40; dry 21:30 at the latest", "Final dry: review not before tomorrow 06:10". */
export function dueTimeWords(due: DueTime, now: number, locale: string): string {
  const say = (at: number): string => soonTime(at, now, locale);
  return due.allows === "review"
    ? `Final dry: ${reviewWhen(due.forFire, now, say)}`
    : `Coat ${due.coat}: ${coverWhen(due.cover, now, say)}${due.isHeld === true ? "; hold: no further coat yet" : ""}`;
}
