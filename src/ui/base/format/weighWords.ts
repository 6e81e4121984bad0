import type { WeighToTell } from "../../../logbook/drying/weighToTell.ts";
import { balanceWords } from "./saidWords.ts";
import { dayName, soonTime } from "./time.ts";
import type { Format } from "./units.ts";
import { weighTexts as t, missingTexts } from "../words/weighTexts.ts";

/** "a 0.1 g scale". */
const scaleWords = (scaleG: number, format: Format): string =>
  t["scale.aBalanceWordsScale"]({ balanceWords: balanceWords(scaleG, format) });

/** "at 16:40", "tomorrow 06:10". */
function whenWords(at: number, now: number, locale: string): string {
  const time = soonTime(at, now, locale);
  return dayName(at, now, locale) === "today" ? t["when.atTime"]({ time }) : time;
}

const missingWords: Readonly<Record<NonNullable<WeighToTell["missing"]>, string>> = missingTexts;

/** When to weigh so that it can tell, and on what scale; or what is missing for it. */
export function weighWords(toTell: WeighToTell, now: number, format: Format): string {
  if (toTell.missing !== null) return missingWords[toTell.missing];
  const { firstAt, nextAt, scaleG, finerScaleG, finerAt } = toTell;
  const on = t["weigh.onScaleWords"]({ scaleWords: scaleWords(scaleG, format) });
  const at = whenWords(nextAt, now, format.locale);
  const says =
    firstAt === null
      ? t["weigh.weighItNowAnd"]({ at, on })
      : nextAt <= now
        ? t["weigh.weighItAgainNow"]({ on })
        : t["weigh.weighItAgainAt"]({ at, on });
  if (finerScaleG === null || finerAt === null || nextAt <= now) return says;
  const finer = finerAt <= now ? "now" : whenWords(finerAt, now, format.locale);
  return t["weigh.saysScaleWordsCanShow"]({
    says,
    scaleWords: scaleWords(finerScaleG, format).replace(/^a/, "A"),
    finer,
  });
}
