import { practice } from "../trade/practice.ts";
import type { Standing } from "../logbook/piece/standing.ts";
import { figure } from "./finding.ts";
import { coatsAreDone, coatStillDrying } from "./stage.ts";
import type { FindingOf } from "./variants.ts";

/** Air in which the coat that hangs now will not get dry, or not dry enough to be the last one before fire. */
export function airTooDamp(standing: Standing): readonly FindingOf<"air-too-damp">[] {
  const outer = coatStillDrying(standing);
  const reading = standing.readings.findLast(({ at }) => at <= standing.now);
  if (outer === null || reading === undefined) return [];
  const isFinal = coatsAreDone(standing);
  const limit = reading.rh > practice.rhNeverDry.value ? practice.rhNeverDry : practice.rhFinalDry;
  if (reading.rh <= limit.value || (limit === practice.rhFinalDry && !isFinal)) return [];
  const isNever = limit === practice.rhNeverDry;
  return [
    {
      rule: "air-too-damp",
      variant: isNever ? (isFinal ? "final" : "drying") : "final-caution",
      level: isNever ? (isFinal ? "hold" : "watch") : "note",
      figures: {
        rh: figure(reading.rh, "share"),
        limit: figure(limit.value, "share"),
        airC: figure(reading.airC, "C"),
      },
      texts: {},
      entries: [outer.coat.id, reading.id],
      source: limit.source,
    },
  ];
}
