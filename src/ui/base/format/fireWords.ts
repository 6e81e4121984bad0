import type { FireAnswer } from "../../../logbook/piece/standing.ts";
import { noReadyWords } from "./readyWords.ts";

/** "review not before 18:40", "over since 18:40", or why there is no time. */
export function reviewWhen(
  { dryAt, reason }: Pick<FireAnswer, "dryAt" | "reason">,
  now: number,
  say: (at: number) => string,
): string {
  if (dryAt !== null) return dryAt <= now ? `over since ${say(dryAt)}` : `review not before ${say(dryAt)}`;
  if (reason === null) return "no time can be given";
  return reason === "damp-air" ? "the room's air stays too damp to end it" : noReadyWords(reason);
}
