import { sentence } from "../../base/format/sentence.ts";
import type { FinalDry, FireAnswer } from "../../../logbook/piece/standing.ts";
import { geometryClasses, type GeometryClass } from "../../../trade/geometryClasses.ts";
import { practice } from "../../../trade/practice.ts";
import { dryBy } from "../../base/format/coverWords.ts";
import { reviewWhen } from "../../base/format/fireWords.ts";
import { noReadyWords } from "../../base/format/readyWords.ts";
import { atTime, soonTime } from "../../base/format/time.ts";
import type { Format } from "../../base/format/units.ts";

export const placeWords = (geometry: GeometryClass): string => geometryClasses[geometry].label.toLowerCase();

const whyWords: Record<FinalDry["practice"]["why"], string> = {
  open: "an open shell",
  deep: "a shell with a deep recess",
  blind: "a shell with a blind core",
  thick: "a thick shell",
};

/** "review not before tomorrow 06:10", "over since 14:10", or why there is no time. */
export const leastWords = (answer: FireAnswer, now: number, locale: string): string =>
  reviewWhen(answer, now, (at) => soonTime(at, now, locale));

/** Which rule sets the end of the final dry, a sentence or two. */
export function fireReasonWords(answer: FireAnswer, now: number, format: Format): string {
  const felt =
    answer.touchedAt === null || answer.state === "dry"
      ? ""
      : ` Felt dry ${atTime(answer.touchedAt, now, format.locale)}: a touch does not count before fire.`;
  return `${ruleWords(answer, now, format)}${felt}`;
}

function ruleWords(answer: FireAnswer, now: number, format: Format): string {
  const { by, airAt, hours, place, reason, dryAt } = answer;
  const damp = format.show("percent", practice.rhFinalDry.value);
  switch (by) {
    case "air":
      return `By the air its slowest place, ${placeWords(place)}, is dry by then at the latest.`;
    case "hours":
      return `${airAt === null ? "" : `Dry by the air ${atTime(airAt, now, format.locale)}. `}${
        hours === null
          ? ""
          : `The final dry of ${whyWords[hours.why]} takes ${format.show("h", hours.hours)}.`
      }`;
    case "damp-air":
      return `Until then the room is above ${damp}: in that air the shell keeps water.`;
    case "fire":
    case "steady":
    case "target":
    case "surface":
    case "resistance":
      return `Dry ${dryBy(by)}${dryAt === null ? "" : `, ${soonTime(dryAt, now, format.locale)}`}.`;
    case null:
      if (reason === "damp-air") return `The room stays above ${damp}: in that air the shell keeps water.`;
      return reason === null ? "No time can be given." : `${sentence(noReadyWords(reason))}.`;
  }
}

/** Why the hours are those, a sentence. */
export function usualWords({ practice: hung }: FinalDry, format: Format): string {
  const { why, hours, leastH, mostH, meanRh, isOwn } = hung;
  const limit = format.show("percent", practice.finalDryRh.value);
  const range =
    leastH === mostH
      ? format.show("h", leastH)
      : `${format.show("h", leastH)} in air up to ${limit}, ${format.show("h", mostH)} in damper air`;
  const usual = `${isOwn ? "Your minimum" : "The usual minimum"} for ${whyWords[why]}: ${range}.`;
  if (meanRh === null) return `${usual} No room reading, so the shorter one counts.`;
  return `${usual} Here the mean is ${format.show("percent", meanRh)}: ${format.show("h", hours)} count.`;
}
