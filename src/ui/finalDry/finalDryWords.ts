import type { FinalDry } from "../../logbook/standing.ts";
import { geometryClasses, type GeometryClass } from "../../trade/geometryClasses.ts";
import { practice } from "../../trade/practice.ts";
import { noReadyWords } from "../format/readyWords.ts";
import { soonTime } from "../format/time.ts";
import type { Format } from "../format/units.ts";

export const placeWords = (geometry: GeometryClass): string => geometryClasses[geometry].label.toLowerCase();

const whyWords: Record<FinalDry["practice"]["why"], string> = {
  open: "open work",
  deep: "work with a deep place",
  thick: "a thick wall",
};

/** "through since 14:10", "not before tomorrow 06:10", "no time yet". */
export function leastWords({ least }: FinalDry, now: number, locale: string): string {
  if (least.at === null) return "no time can be given yet";
  return least.at <= now
    ? `through since ${soonTime(least.at, now, locale)}`
    : `not before ${soonTime(least.at, now, locale)}`;
}

/** What sets the least wait, a sentence. */
export function reasonWords(dry: FinalDry, format: Format): string {
  const { least, practice: usual, places } = dry;
  const slowest = places[0];
  const damp = format.show("percent", practice.rhFinalDry.value);
  switch (least.reason) {
    case "sum":
      return places.length > 1 && slowest !== undefined
        ? `The sum's late guess for its slowest place, ${placeWords(slowest.geometry)}, sets this.`
        : "The sum's late guess for the last coat sets this.";
    case "practice":
      return `The last coat is dry before that; common practice hangs ${whyWords[usual.why]} for ${format.show("h", usual.hours)} all the same, for what the sum can't see.`;
    case "damp-air":
      return least.at === null
        ? `The room stays over ${damp}: the gel between the grains keeps water, and no last drying ends in it.`
        : `Until then the room is over ${damp}: the gel between the grains keeps water, and no last drying ends in it.`;
    case "no-readings":
    case "air-too-damp":
    case "condensing":
    case "frost":
    case "beyond-forecast":
      return `${sentence(noReadyWords(least.reason))}.`;
  }
}

/** Why the usual hours are those, a sentence. */
export function usualWords({ practice: hung }: FinalDry, format: Format): string {
  const { why, hours, leastH, mostH, meanRh } = hung;
  const range = `${format.number(leastH, 0)} to ${format.show("h", mostH)}`;
  const usual = `Common practice hangs ${whyWords[why]} for ${range} in air under ${format.show("percent", practice.finalDryRh.value)}.`;
  if (meanRh === null) return `${usual} Nobody read the air, so the shorter is taken: read it.`;
  const air = `Here it is ${format.show("percent", meanRh)} on the mean`;
  return `${usual} ${air}: ${format.show("h", hours)} count.`;
}

const sentence = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
