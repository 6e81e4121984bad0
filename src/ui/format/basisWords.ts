import type { CoatDrying } from "../../logbook/standing.ts";
import { airClasses } from "../../trade/airClasses.ts";
import { duration } from "./time.ts";
import type { Format } from "./units.ts";

/** What a ready time rests on, a line each. */
export function basisWords(
  { basis, evidence, condensed, carriedKgM2, startKgM2 }: CoatDrying,
  format: Format,
): readonly string[] {
  const { readings, lastReadingAgeMs, longestGapMs, forecast, ownFactor, air } = basis;
  const lines: string[] = [];
  if (evidence !== null)
    lines.push(`Your own check, “${evidenceWords(evidence, format)}”, outweighs the sum.`);
  if (readings === 0) lines.push("No reading of the room's air since it was dipped.");
  else {
    const age = lastReadingAgeMs === null ? "" : `, the last ${duration(lastReadingAgeMs)} old`;
    lines.push(`${readings === 1 ? "1 reading" : `${readings} readings`} of the room's air${age}.`);
    if (longestGapMs > 12 * 3_600_000)
      lines.push(`The longest stretch without a reading is ${duration(longestGapMs)}.`);
  }
  if (air !== null) lines.push(`Air movement: ${airClasses[air].label.toLowerCase()}.`);
  if (forecast === "repeat-yesterday") lines.push("From here on it takes the air to go as it did yesterday.");
  if (forecast === "hold-last") lines.push("From here on it takes the air to stay as last read.");
  lines.push(
    ownFactor === null
      ? "Drying factor: the starting value, not yet your shop's own."
      : `Your shop's own drying factor: ${format.number(ownFactor, 2)}.`,
  );
  if (carriedKgM2 > 0 && startKgM2 > 0)
    lines.push(
      `${format.show("percent", carriedKgM2 / startKgM2)} of its water came up from the coat beneath.`,
    );
  if (condensed) lines.push("Water condensed on it for a while.");
  return lines;
}

function evidenceWords({ seen }: NonNullable<CoatDrying["evidence"]>, format: Format): string {
  switch (seen.method) {
    case "touch":
      return `felt ${seen.verdict}`;
    case "weight":
      return `weighed ${format.show("g", seen.massG)}`;
    case "surface":
      return `surface ${format.show("temp", seen.surfaceC)}`;
  }
}
