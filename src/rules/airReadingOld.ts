import { practice } from "../trade/practice.ts";
import type { Standing } from "../logbook/standing.ts";
import { figure } from "./finding.ts";
import { coatStillDrying, hoursBetween } from "./stage.ts";
import type { FindingOf } from "./variants.ts";

/** A coat is drying and nobody has looked at the room for hours, or ever. */
export function airReadingOld(standing: Standing): readonly FindingOf<"air-reading-old">[] {
  const outer = coatStillDrying(standing);
  if (outer === null) return [];
  const reading = standing.readings.findLast(({ at }) => at <= standing.now);
  const ageH = reading === undefined ? null : hoursBetween(reading.at, standing.now);
  const { value: limitH, source } = practice.readingOldH;
  if (ageH !== null && ageH <= limitH) return [];
  return [
    {
      rule: "air-reading-old",
      variant: ageH === null ? "none" : "old",
      level: "watch",
      figures: { ageH: figure(ageH, "h"), limitH: figure(limitH, "h") },
      texts: {},
      entries: [outer.coat.id, ...(reading === undefined ? [] : [reading.id])],
      source,
    },
  ];
}
