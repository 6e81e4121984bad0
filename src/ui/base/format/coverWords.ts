import type { CoverAnswer, DryMinimum } from "../../../logbook/piece/standing.ts";
import { noReadyWords } from "./readyWords.ts";
import { sentence } from "./sentence.ts";
import { atTime, soonTime } from "./time.ts";
import { coverTexts as t, coverStateTexts, byTexts, minimumTexts } from "../words/coverTexts.ts";

type Times = Pick<CoverAnswer, "checkAt" | "dryAt" | "by" | "airAt" | "minimum" | "reason">;

export const coverStateWords: Record<CoverAnswer["state"], string> = coverStateTexts;

const byWords: Record<NonNullable<CoverAnswer["by"]>, string> = byTexts;

export const dryBy = (by: CoverAnswer["by"]): string => (by === null ? "" : byWords[by]);

const minimumWords: Record<DryMinimum["from"], string> = minimumTexts;

export const minimumName = ({ from }: DryMinimum): string => minimumWords[from];

/** Which rule speaks, in one line: "Dry by the air at 10:40; your minimum runs to 12:00." */
export function coverLine(cover: CoverAnswer, now: number, locale: string): string {
  const touch = touchLine(cover, now, locale);
  return touch === null ? ruleLine(cover, now, locale) : `${ruleLine(cover, now, locale)} ${touch}`;
}

function ruleLine(cover: Times, now: number, locale: string): string {
  const { checkAt, dryAt, by, airAt, minimum, reason } = cover;
  const at = (time: number): string => atTime(time, now, locale);
  const say = (time: number): string => soonTime(time, now, locale);
  const until = t["rule.minimumNameClauseToSay"]({
    minimumName: minimumName(minimum),
    clause: minimum.until <= now ? "ran" : "runs",
    say: say(minimum.until),
  });
  if (by === "minimum" && airAt !== null) return t["rule.dryByTheAir"]({ at: at(airAt), until });
  if (dryAt !== null && dryAt <= now) return t["rule.dryDryBySay"]({ dryBy: dryBy(by), say: say(dryAt) });
  const latest = dryAt === null ? "" : t["rule.dryByTheAirAgain"]({ at: at(dryAt) });
  if (checkAt === null) return reason === null ? t["rule.noTimeCanBe"] : `${sentence(noReadyWords(reason))}.`;
  if (reason === "no-readings")
    return checkAt <= now
      ? t["rule.noDryingTimeWithout"]
      : t["rule.noRoomReadingSentence"]({ sentence: sentence(until) });
  if (checkAt <= now) return t["rule.perhapsDrySinceSay"]({ say: say(checkAt), latest });
  return checkAt === minimum.until
    ? t["rule.sentenceCheckItThen"]({ sentence: sentence(until), latest })
    : t["rule.checkItFromSay"]({ say: say(checkAt), latest });
}

/** A touch that found it dry and does not count, and when one will; null where there is none. */
export function touchLine({ touch }: CoverAnswer, now: number, locale: string): string | null {
  if (touch === null) return null;
  const felt = t["touch.feltDryAtTime"]({ atTime: atTime(touch.at, now, locale) });
  if (touch.countsFrom === null) return t["touch.feltATouchDoes"]({ felt });
  return touch.countsFrom <= now
    ? t["touch.feltTooEarlyTo"]({ felt })
    : t["touch.feltCountsFromSoonTime"]({ felt, soonTime: soonTime(touch.countsFrom, now, locale) });
}

/**
 * What a coat that still dries asks for, as the one line that leads: "Drying: check by touch from 16:20". Null once it may
 * be checked, and where no time can be given. `isDeep`: a hand does not reach its slowest place.
 */
export function dryingLead(
  { state, checkAt, by, minimum }: Pick<CoverAnswer, "state" | "checkAt" | "by" | "minimum">,
  { now, locale, isDeep }: { readonly now: number; readonly locale: string; readonly isDeep: boolean },
): string | null {
  if (state !== "drying" || checkAt === null) return null;
  if (by === "minimum")
    return `Drying: ${minimumName(minimum)} runs to ${soonTime(minimum.until, now, locale)}`;
  return `Drying: ${isDeep ? "weigh it" : "check by touch"} from ${soonTime(checkAt, now, locale)}`;
}

/** The same short enough for a card or a row: "check from 12:00; dry 15:10 at the latest". */
export function coverWhen(
  { checkAt, dryAt, by, minimum, reason }: Times,
  now: number,
  say: (at: number) => string,
): string {
  if (dryAt !== null && dryAt <= now)
    return by === "air" || by === "minimum"
      ? t["coverWhen.drySinceSay"]({ say: say(dryAt) })
      : t["coverWhen.drySinceSayDryBy"]({ say: say(dryAt), dryBy: dryBy(by) });
  if (checkAt === null) return reason === null ? t["coverWhen.noTimeCanBe"] : noReadyWords(reason);
  if (by === "minimum" && dryAt !== null)
    return t["coverWhen.drySayWhenMinimumName"]({ say: say(dryAt), minimumName: minimumName(minimum) });
  const latest = dryAt === null ? "" : t["coverWhen.drySayAtThe"]({ say: say(dryAt) });
  if (checkAt <= now)
    return reason === "no-readings"
      ? noReadyWords(reason)
      : t["coverWhen.perhapsDrySinceSaylatest"]({ say: say(checkAt), latest });
  return t["coverWhen.checkFromSaylatest"]({ say: say(checkAt), latest });
}
