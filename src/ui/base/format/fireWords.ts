import type { FireAnswer } from "../../../logbook/piece/standing.ts";
import { noReadyWords } from "./readyWords.ts";
import { finalDryTexts as t } from "../words/finalDryTexts.ts";

/** "review not before 18:40", "over since 18:40", or why there is no time. */
export function reviewWhen(
  { dryAt, reason }: Pick<FireAnswer, "dryAt" | "reason">,
  now: number,
  say: (at: number) => string,
): string {
  if (dryAt !== null)
    return dryAt <= now
      ? t["reviewWhen.overSinceSay"]({ say: say(dryAt) })
      : t["reviewWhen.reviewFromSay"]({ say: say(dryAt) });
  if (reason === null) return t["reviewWhen.noTimeCanBe"];
  return reason === "damp-air" ? t["reviewWhen.theRoomsAirStays"] : noReadyWords(reason);
}
