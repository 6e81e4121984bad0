import { dryingSumsVersion } from "../../../logbook/drying/dryingSums.ts";
import type { SaidAnewWhy, SaidThen } from "../../../logbook/drying/said.ts";
import { coverStateWords } from "./coverWords.ts";
import { soonTime } from "./time.ts";
import type { Format } from "./units.ts";

/**
 * What was said of a coat at the dip that covered it, and what is worked out since where that says otherwise: "Said
 * then: not dry, 52% of its water left (40% to 61%). With the reading logged later for 10:40: 61% of its water left."
 */
export function saidThenWords(said: SaidThen, now: number, format: Format): string {
  const { anew } = said;
  const then = `Said then: ${thenWords(said, format)}.`;
  if (anew === null) return then;
  const newer = said.sumsVersion === dryingSumsVersion ? "" : ", by newer calculations";
  return `${then} With ${whyWords(anew.why, now, format.locale)}${newer}: ${anewWords(anew, format)}.`;
}

function thenWords({ cover, dryness, leftShare, leftLow, leftHigh }: SaidThen, format: Format): string {
  if (cover === "unknown") return "dryness not known, no room reading";
  if (cover === "drying" && dryness === "dry") return "dry by the air, minimum drying time not over";
  const state = cover === "drying" ? "not dry" : coverStateWords[cover];
  if (dryness === "dry" || cover === "dry" || leftShare === null) return state;
  const share = (value: number): string => format.show("percent", value);
  const [low, high] = [leftLow ?? leftShare, leftHigh ?? leftShare].map(share);
  const band = low === high ? "" : ` (${low} to ${high})`;
  return `${state}, ${share(leftShare)} of its water left${band}`;
}

const anewWords = ({ dryness, leftShare }: NonNullable<SaidThen["anew"]>, format: Format): string =>
  dryness === "dry"
    ? "dry"
    : leftShare === null
      ? "not known"
      : `${format.show("percent", leftShare)} of its water left`;

const whyWords = (why: readonly SaidAnewWhy[], now: number, locale: string): string =>
  why.map((one) => oneWhy(one, now, locale)).join(" and ");

function oneWhy({ of, how, count, at }: SaidAnewWhy, now: number, locale: string): string {
  if (of === "dip") return `the dip's time corrected${at === null ? "" : ` to ${soonTime(at, now, locale)}`}`;
  const thing = of === "air" ? "reading" : "check";
  const things = count === 1 ? `1 ${thing}` : `${count} ${thing}s`;
  switch (how) {
    case "added":
      return at === null
        ? `${things} of that time logged later`
        : `the ${thing} logged later for ${soonTime(at, now, locale)}`;
    case "struck":
      return `${things} of that time deleted since`;
    case "changed":
      return `${thing}s of that time changed since`;
  }
}
