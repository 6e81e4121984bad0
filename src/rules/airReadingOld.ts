import { workingHours } from "../logbook/piece/workingHours.ts";
import { practice } from "../trade/practice.ts";
import type { Standing } from "../logbook/piece/standing.ts";
import { figure } from "./finding.ts";
import { coatStillDrying, hoursBetween } from "./stage.ts";
import type { FindingOf } from "./variants.ts";

/**
 * A coat is drying and nobody has looked at the room for a working day: the night between does not count, for nobody
 * is there. A room that was never read is a note, as long as a coat waits for it.
 */
export function airReadingOld(standing: Standing): readonly FindingOf<"air-reading-old">[] {
  const outer = coatStillDrying(standing);
  if (outer === null) return [];
  const { readings, now, piece } = standing;
  const reading = readings.findLast(({ at }) => at <= now);
  const { value: limitH, source } = practice.readingOldWorkH;
  const isFresh =
    reading !== undefined && workingHours({ from: reading.at, to: now, zone: piece.zone }) <= limitH;
  if (isFresh) return [];
  return [
    {
      rule: "air-reading-old",
      variant: reading === undefined ? "none" : "old",
      level: reading === undefined ? "note" : "watch",
      figures: {
        ageH: figure(reading === undefined ? null : hoursBetween(reading.at, now), "h"),
        limitH: figure(limitH, "h"),
      },
      // Where the reading is to be made.
      texts: { roomId: piece.rooms.at(-1)?.roomId ?? "" },
      entries: [outer.coat.id, ...(reading === undefined ? [] : [reading.id])],
      source,
    },
  ];
}
