import type { CoverAnswer, DryMinimum } from "../../../logbook/piece/standing.ts";
import { noReadyWords } from "./readyWords.ts";
import { sentence } from "./sentence.ts";
import { atTime, soonTime } from "./time.ts";

type Times = Pick<CoverAnswer, "checkAt" | "dryAt" | "by" | "airAt" | "minimum" | "reason">;

export const coverStateWords: Record<CoverAnswer["state"], string> = {
  dry: "dry",
  check: "perhaps dry",
  drying: "drying",
  unknown: "not known",
};

const byWords: Record<NonNullable<CoverAnswer["by"]>, string> = {
  air: "by the air",
  minimum: "by the air",
  touch: "by touch",
  steady: "by weight",
  target: "by weight",
  surface: "by surface temperature",
  resistance: "by resistance",
  fire: "by fire",
};

export const dryBy = (by: CoverAnswer["by"]): string => (by === null ? "" : byWords[by]);

const minimumWords: Record<DryMinimum["from"], string> = {
  recipe: "the recipe's minimum",
  bucket: "the bucket's minimum",
  shop: "your minimum",
  starting: "the usual minimum",
};

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
  const until = `${minimumName(minimum)} ${minimum.until <= now ? "ran" : "runs"} to ${say(minimum.until)}`;
  if (by === "minimum" && airAt !== null) return `Dry by the air ${at(airAt)}; ${until}.`;
  if (dryAt !== null && dryAt <= now) return `Dry ${dryBy(by)}, ${say(dryAt)}.`;
  const latest = dryAt === null ? "" : ` Dry by the air ${at(dryAt)} at the latest.`;
  if (checkAt === null)
    return reason === null ? "No time can be given." : `${sentence(noReadyWords(reason))}.`;
  if (reason === "no-readings")
    return checkAt <= now
      ? "No drying time without a room reading: check it, and log the room's temperature and humidity."
      : `No room reading. ${sentence(until)}: check it then.`;
  if (checkAt <= now) return `Perhaps dry since ${say(checkAt)}: check it.${latest}`;
  return checkAt === minimum.until
    ? `${sentence(until)}: check it then.${latest}`
    : `Check it from ${say(checkAt)}.${latest}`;
}

/** A touch that found it dry and does not count, and when one will; null where there is none. */
export function touchLine({ touch }: CoverAnswer, now: number, locale: string): string | null {
  if (touch === null) return null;
  const felt = `Felt dry ${atTime(touch.at, now, locale)}`;
  if (touch.countsFrom === null) return `${felt}. A touch does not count here: weigh it.`;
  return touch.countsFrom <= now
    ? `${felt}, too early to count: check it again.`
    : `${felt}. Counts from ${soonTime(touch.countsFrom, now, locale)}: check it again then.`;
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
      ? `dry since ${say(dryAt)}`
      : `dry since ${say(dryAt)}, ${dryBy(by)}`;
  if (checkAt === null) return reason === null ? "no time can be given" : noReadyWords(reason);
  if (by === "minimum" && dryAt !== null) return `dry ${say(dryAt)}, when ${minimumName(minimum)} ends`;
  const latest = dryAt === null ? "" : `; dry ${say(dryAt)} at the latest`;
  if (checkAt <= now)
    return reason === "no-readings" ? noReadyWords(reason) : `perhaps dry since ${say(checkAt)}${latest}`;
  return `check from ${say(checkAt)}${latest}`;
}
