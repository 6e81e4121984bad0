import type { AirCsvGuess } from "../../../../workers/airCsv/guessAirCsv.ts";
import type { Merged } from "../../../../workers/airCsv/packAir.ts";
import type { PlanGap } from "../../../../workers/airCsv/airCsvPlan.ts";
import { dayTime } from "../../../base/format/time.ts";
import type { Format } from "../../../base/format/units.ts";

export const counted = (count: number, one: string, format: Format, many = `${one}s`): string =>
  count === 1 ? `1 ${one}` : `${format.number(count, 0)} ${many}`;

/** Why there is nothing to be guessed. */
export function notGuessedWords(why: Extract<AirCsvGuess, { ok: false }>["why"] | NotDone): string {
  switch (why) {
    case "empty":
      return "This file is empty.";
    case "no-rows":
      return "No line in this file holds a time and numbers. Use the logger’s readings as text (CSV): look for “export” in its software.";
    case "aborted":
      return "Stopped.";
    case "failed":
      return "The file could not be read. If it is on a card or stick, reinsert that and choose the file again.";
    case "no-worker":
      return "This browser could not start the file reader. Reload the page, or try another browser.";
  }
}

export type NotDone = "aborted" | "failed" | "no-worker";

const gapNames: Readonly<Record<PlanGap, string>> = {
  time: "the time",
  temp: "the temperature",
  humidity: "the humidity or the dew point",
};

export const planGapWords = (gaps: readonly PlanGap[]): string =>
  `Choose below which column holds ${gaps.map((gap) => gapNames[gap]).join(", and which ")}.`;

/** What was left out because it is there already, one sentence each; none where nothing was. */
export function mergedWords(
  { inFile, differing, stored, wasInOrder }: Merged,
  format: Format,
): readonly string[] {
  return [
    stored > 0
      ? `${counted(stored, "reading", format)} ${stored === 1 ? "is" : "are"} in the log already and ${stored === 1 ? "stays as it is" : "stay as they are"}.`
      : "",
    inFile > 0
      ? `${counted(inFile, "line", format)} ${inFile === 1 ? "repeats" : "repeat"} the time of an earlier line; the first counts.`
      : "",
    differing > 0
      ? `${counted(differing, "of these", format, "of these")} ${differing === 1 ? "differs" : "differ"} from the first by more than ${format.show("tempDiff", 0.2)} or ${format.show("percent", 0.02)}.`
      : "",
    wasInOrder ? "" : "The lines were not in time order and have been sorted.",
  ].filter((text) => text !== "");
}

/** "12,408 readings, 3 January 08:00 to 4 March 09:55". */
export function spanWords(
  { count, from, to }: { readonly count: number; readonly from: number; readonly to: number },
  format: Format,
  now: number,
): string {
  const when =
    from === to
      ? dayTime(from, now, format.locale)
      : `${dayTime(from, now, format.locale)} to ${dayTime(to, now, format.locale)}`;
  return `${counted(count, "reading", format)}, ${when}`;
}
