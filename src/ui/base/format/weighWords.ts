import type { WeighToTell } from "../../../logbook/drying/weighToTell.ts";
import { balanceWords } from "./saidWords.ts";
import { dayName, soonTime } from "./time.ts";
import type { Format } from "./units.ts";

/** "a 0.1 g scale". */
const scaleWords = (scaleG: number, format: Format): string => `a ${balanceWords(scaleG, format)} scale`;

/** "at 16:40", "tomorrow 06:10". */
function whenWords(at: number, now: number, locale: string): string {
  const time = soonTime(at, now, locale);
  return dayName(at, now, locale) === "today" ? `at ${time}` : time;
}

const missingWords: Readonly<Record<NonNullable<WeighToTell["missing"]>, string>> = {
  air: "Log the room's temperature and humidity so a weighing can show it.",
  "damp-air": "The air is too damp to weigh for dryness. Bring it to 70% or less first.",
  area: "Enter the surface area, or weigh it once, so a weighing can show it.",
  "too-slow": "In this air a weighing takes more than a week. Blow air into its slowest place.",
};

/** When to weigh so that it can tell, and on what scale; or what is missing for it. */
export function weighWords(toTell: WeighToTell, now: number, format: Format): string {
  if (toTell.missing !== null) return missingWords[toTell.missing];
  const { firstAt, nextAt, scaleG, finerScaleG, finerAt } = toTell;
  const on = `on ${scaleWords(scaleG, format)}`;
  const at = whenWords(nextAt, now, format.locale);
  const says =
    firstAt === null
      ? `Weigh it now and again ${at} ${on}: the same weight then means dry.`
      : nextAt <= now
        ? `Weigh it again now ${on}: the same weight means dry.`
        : `Weigh it again ${at} ${on}: the same weight then means dry.`;
  if (finerScaleG === null || finerAt === null || nextAt <= now) return says;
  const finer = finerAt <= now ? "now" : whenWords(finerAt, now, format.locale);
  return `${says} ${scaleWords(finerScaleG, format).replace(/^a/, "A")} can show it ${finer}.`;
}
