import { millisecondsInHour as hourMs } from "date-fns/constants";
import type { CoatDrying } from "../../../logbook/piece/standing.ts";
import { airClasses } from "../../../trade/airClasses.ts";
import { assumedWords } from "./assumedWords.ts";
import { balanceWords } from "./saidWords.ts";
import { duration } from "./time.ts";
import type { Format } from "./units.ts";

/** What a ready time rests on, a line each. */
export function basisWords(
  { basis, condensed, carriedKgM2, startKgM2 }: CoatDrying,
  format: Format,
): readonly string[] {
  const { readings, lastReadingAgeMs, longestGapMs, forecast, ownFactor, learned, air } = basis;
  const lines: string[] = [];
  if (basis.assumed) lines.push(assumedWords(basis, format));
  else if (readings === 0) lines.push("No reading of the room's air since it was dipped.");
  if (readings > 0) {
    const age = lastReadingAgeMs === null ? "" : `, the last ${duration(lastReadingAgeMs)} old`;
    lines.push(`${readings === 1 ? "1 reading" : `${readings} readings`} of the room's air${age}.`);
    if (longestGapMs > 12 * hourMs)
      lines.push(`The longest gap between readings is ${duration(longestGapMs)}.`);
  }
  if (air !== null) lines.push(`Air movement: ${airClasses[air].label.toLowerCase()}.`);
  if (forecast === "repeat-yesterday") lines.push("From now on the air is assumed to repeat yesterday.");
  if (forecast === "hold-last") lines.push("From now on the air is assumed to stay as last read.");
  lines.push(
    ownFactor !== null
      ? `Drying factor ${format.number(ownFactor, 2)}, set by hand.`
      : learned !== null
        ? `Drying factor ${format.number(learned.factor, 2)} (${format.number(learned.low, 2)} to ${format.number(learned.high, 2)}), learned from ${coatsWords(learned.shopPairs)} of yours, ${learned.pairs === 0 ? "none" : coatsWords(learned.pairs)} of this kind.`
        : "Drying factor: starting value, nothing learned yet.",
  );
  if (carriedKgM2 > 0 && startKgM2 > 0)
    lines.push(
      `${format.show("percent", carriedKgM2 / startKgM2)} of its water came up from the coat beneath.`,
    );
  if (condensed) lines.push("Water condensed on it for a while.");
  return lines;
}

const coatsWords = (count: number): string => (count === 1 ? "1 coat" : `${count} coats`);

/** What was said plainly, and what that does to the sum. */
export function plainWords(evidence: NonNullable<CoatDrying["evidence"]>, format: Format): string {
  const found = evidenceWords(evidence, format);
  if (evidence.says === "wet") return `It is wet by your own check (${found}); that overrides the estimate.`;
  switch (evidence.by) {
    case "felt":
      return "You felt it dry. A hand feels only the outer face, so the estimate stays.";
    case "steady":
      return `It has stopped losing weight (${found}): dry at this humidity.`;
    case "target":
      return `It is down to its dry weight (${found}): dry.`;
    case "surface":
      return `It is as warm as the dry shell beside it (${found}): dry where it was measured.`;
    case "resistance":
      return "Its resistance is that of a dry coat: dry where it was measured.";
  }
}

function evidenceWords({ seen }: NonNullable<CoatDrying["evidence"]>, format: Format): string {
  switch (seen.method) {
    case "touch":
      return `felt ${seen.verdict}`;
    case "weight":
      return `weighed ${balanceWords(seen.massG, format)}`;
    case "surface":
      return `surface ${format.show("temp", seen.surfaceC)}`;
    case "colour":
      return `looked ${seen.verdict}`;
    case "resistance":
      return "its resistance";
    case "bag":
      return `bag test ${format.show("percent", seen.rh)}`;
  }
}
