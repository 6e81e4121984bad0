import { millisecondsInDay as dayMs, millisecondsInMinute as minuteMs } from "date-fns/constants";
import { isSameDay } from "date-fns/isSameDay";
import type { AirAhead, DampSpell } from "../../../logbook/air/airAhead.ts";
import type { DipProposal, Span } from "../../../logbook/dip/dipProposal.ts";
import { dateFormat } from "../../base/format/formatters.ts";
import { stuccoWords } from "../../base/format/coatWords.ts";
import { coverWhen } from "../../base/format/coverWords.ts";
import { reviewWhen } from "../../base/format/fireWords.ts";
import { clockTime, dayTime, soonTime } from "../../base/format/time.ts";
import type { Format } from "../../base/format/units.ts";
import type { BucketHours } from "./bucketSpans.ts";
import type { WantedCoat } from "../../../logbook/dip/dipWishes.ts";
import type { TimelineRow } from "./timelineRows.ts";

/** Where a piece stands on the timeline, short enough for its row. */
export function rowWords({ standing, wants, isHeld }: TimelineRow, locale: string): string {
  const { now, cover, forFire } = standing;
  const say = (at: number): string => clockOrDay(at, now, locale);
  if (wants === "review") return forFire === null ? "no time" : `final dry ${reviewWhen(forFire, now, say)}`;
  if (cover === null) return "ready for its first coat";
  return `${isHeld ? "hold, no further coat; " : ""}${coverWhen(cover, now, say)}`;
}

/** "18:40" today, "Thu 08:30" within a week, else with its date: a row has no room for more. */
export function clockOrDay(at: number, now: number, locale: string): string {
  if (isSameDay(at, now)) return clockTime(at, locale);
  const isNear = Math.abs(at - now) < 6 * dayMs;
  const day: Intl.DateTimeFormatOptions = isNear ? { weekday: "short" } : { day: "numeric", month: "short" };
  return `${dateFormat(locale, day).format(at)} ${clockTime(at, locale)}`;
}

/** "22:00 to tomorrow 09:00: damp, up to 89%; too damp 00:00 to 07:00: nothing comes to ready then". */
export function dampNightWords(
  { from, to, mostRh, tooDamp }: DampNight,
  now: number,
  format: Format,
): string {
  const rh = format.show("percent", mostRh);
  const whole = spellWords({ from, to }, now, format.locale);
  const [first] = tooDamp;
  const last = tooDamp.at(-1);
  if (first === undefined || last === undefined) return `${whole}: damp, up to ${rh}; drying is slow`;
  if (first.from === from && last.to === to && tooDamp.length === 1)
    return `${whole}: too damp, up to ${rh}; nothing dries`;
  const worst = tooDamp.map((spell) => spellWords(spell, now, format.locale)).join(" and ");
  return `${whole}: damp, up to ${rh}; too damp ${worst}: nothing dries then`;
}

function spellWords({ from, to }: Span, now: number, locale: string): string {
  const begin = from <= now ? "now" : soonTime(from, now, locale);
  const end = isSameDay(Math.max(from, now), to) ? clockTime(to, locale) : soonTime(to, now, locale);
  return `${begin} to ${end}`;
}

/** A stretch of damp air without a break, with the parts of it that are too damp for anything to come to ready. */
export type DampNight = Span & { readonly mostRh: number; readonly tooDamp: readonly Span[] };

export function dampNights(damp: readonly DampSpell[]): readonly DampNight[] {
  const nights: DampNight[] = [];
  for (const { from, to, mostRh, isTooDamp } of damp) {
    const tooDamp = isTooDamp ? [{ from, to }] : [];
    const last = nights.at(-1);
    if (last === undefined || last.to !== from) nights.push({ from, to, mostRh, tooDamp });
    else
      nights[nights.length - 1] = {
        from: last.from,
        to,
        mostRh: Math.max(last.mostRh, mostRh),
        tooDamp: [...last.tooDamp, ...tooDamp],
      };
  }
  return nights;
}

/** What the room's damp stretches are known by. */
export function basisOfAir({ basis, lastReadAt }: AirAhead, now: number, format: Format): string {
  const read = `Read ${soonTime(lastReadAt, now, format.locale)}`;
  return basis === "repeat-yesterday"
    ? `${read}; then as yesterday`
    : `${read}; then assumed to stay the same`;
}

const counts = [
  "no",
  "one",
  "two",
  "three",
  "four",
  "five",
  "six",
  "seven",
  "eight",
  "nine",
  "ten",
  "eleven",
  "twelve",
] as const;
const countWord = (count: number): string => counts[count] ?? String(count);

/** "Dip these four at 18:10", then "these two tomorrow at 08:00". */
export function visitWords(visit: DipProposal["visits"][number], now: number, format: Format): string {
  const pieces = visit.dips.reduce((sum, dip) => sum + dip.pieces.length, 0);
  const these = pieces === 1 ? "this one" : `these ${countWord(pieces)}`;
  return `Dip ${these} ${visitTime(visit.at, now, format)}`;
}

/** "now", "at 18:10", "tomorrow at 08:00". */
function visitTime(at: number, now: number, { locale }: Format): string {
  if (at - now < 5 * minuteMs) return "now";
  const clock = clockTime(at, locale);
  if (isSameDay(at, now)) return `at ${clock}`;
  const day = dayTime(at, now, locale);
  return `${day.slice(0, day.length - clock.length).trim()} at ${clock}`;
}

/** "80–120 mesh": what is thrown on it, each stucco once. */
export function stuccosWords(coats: readonly WantedCoat[]): string {
  const words = coats.flatMap(({ standing: { next } }) =>
    next === null ? [] : [stuccoWords(next.stuccoId)],
  );
  return [...new Set(words)].join(" and ");
}

/** "08:00–10:00 and 17:00–21:00". */
export function bucketHoursWords(hours: BucketHours, locale: string): string {
  if (hours.length === 0) return "none set";
  const clock = (minutes: number): string => clockTime(new Date(2026, 0, 5, 0, minutes).getTime(), locale);
  const spans = hours.map(({ fromMin, toMin }) => `${clock(fromMin)}–${clock(toMin)}`);
  const last = spans.at(-1) ?? "";
  return spans.length === 1 ? last : `${spans.slice(0, -1).join(", ")} and ${last}`;
}
