import { dryingSumsVersion } from "../../../logbook/drying/dryingSums.ts";
import type { SaidAnewWhy, SaidThen } from "../../../logbook/drying/said.ts";
import { coverStateWords } from "./coverWords.ts";
import { soonTime } from "./time.ts";
import type { Format } from "./units.ts";
import { saidThen as t } from "../words/saidThen.ts";
import { counts } from "../words/counts.ts";

/**
 * What was said of a coat at the dip that covered it, and what is worked out since where that says otherwise: "Said
 * then: not dry, 52% of its water left (40% to 61%). With the reading logged later for 10:40: 61% of its water left."
 */
export function saidThenWords(said: SaidThen, now: number, format: Format): string {
  const { anew } = said;
  const then = t["saidThen.saidThenThenWords"]({ thenWords: thenWords(said, format) });
  if (anew === null) return then;
  const newer = said.sumsVersion === dryingSumsVersion ? "" : t["saidThen.byNewerCalculations"];
  return t["saidThen.thenWithWhyWordsnewerAnewWords"]({
    saidThen: then,
    whyWords: whyWords(anew.why, now, format.locale),
    newer,
    anewWords: anewWords(anew, format),
  });
}

function thenWords({ cover, dryness, leftShare, leftLow, leftHigh }: SaidThen, format: Format): string {
  if (cover === "unknown") return t["then.drynessNotKnownNo"];
  if (cover === "drying" && dryness === "dry") return t["then.dryByTheAir"];
  const state = cover === "drying" ? t["then.notDry"] : coverStateWords[cover];
  if (dryness === "dry" || cover === "dry" || leftShare === null) return state;
  const share = (value: number): string => format.show("percent", value);
  const [low, high] = [share(leftLow ?? leftShare), share(leftHigh ?? leftShare)];
  const band = low === high ? "" : t["then.lowToHigh"]({ low, high });
  return t["then.stateShareOfIts"]({ state, share: share(leftShare), band });
}

const anewWords = ({ dryness, leftShare }: NonNullable<SaidThen["anew"]>, format: Format): string =>
  dryness === "dry"
    ? "dry"
    : leftShare === null
      ? t["anew.notKnown"]
      : t["anew.leftShareOfItsWater"]({ leftShare: format.show("percent", leftShare) });

const whyWords = (why: readonly SaidAnewWhy[], now: number, locale: string): string =>
  why.map((one) => oneWhy(one, now, locale)).join(" and ");

function oneWhy({ of, how, count, at }: SaidAnewWhy, now: number, locale: string): string {
  if (of === "dip")
    return t["oneWhy.theDipsTimeCorrectedclause"]({
      clause: at === null ? "" : t["oneWhy.toSoonTime"]({ soonTime: soonTime(at, now, locale) }),
    });
  const thing = of === "air" ? "reading" : "check";
  const things = of === "air" ? counts.readings(count) : counts.checks(count);
  switch (how) {
    case "added":
      return at === null
        ? t["oneWhy.added"]({ things })
        : t["oneWhy.added.theThingLoggedLater"]({ thing, soonTime: soonTime(at, now, locale) });
    case "struck":
      return t["oneWhy.struck"]({ things });
    case "changed":
      return t["oneWhy.changed"]({ thing });
  }
}
