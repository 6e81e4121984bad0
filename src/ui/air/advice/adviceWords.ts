import { millisecondsInHour as hourMs } from "date-fns/constants";
import type { AdvisedChange, PrimeCaution, Remedy } from "../../../physics/drying/dryingAdvice.ts";
import type { CoatAdvice } from "../../../logbook/drying/coatAdvice.ts";
import { airClasses } from "../../../trade/airClasses.ts";
import { duration } from "../../base/format/time.ts";
import type { Format } from "../../base/format/units.ts";

/** "4 h 10 min": hours as the rest of the app tells them. */
export const wholeHoursWords = (hours: number): string =>
  hours < 1 / 60 ? "under a minute" : duration(hours * hourMs);

/** What to do, a short command. */
export function remedyWords(remedy: Remedy, format: Format): string {
  switch (remedy.kind) {
    case "warmer":
      return `Warm the room by ${format.show("tempDiff", remedy.byK)}`;
    case "dehumidified":
      return `Dehumidify to ${format.show("percent", remedy.toRh)}`;
    case "air-class":
      return isAirClass(remedy.id) ? moveWords[remedy.id] : remedy.id;
    case "air-into-pocket":
      return "Blow air into the pocket";
    case "opened-downwards":
      return "Hang it with the opening down";
  }
}

type AirClassId = keyof typeof airClasses;
const isAirClass = (id: string): id is AirClassId => Object.hasOwn(airClasses, id);
const moveWords: Record<AirClassId, string> = {
  still: "Still air",
  draught: "Let in a slight draught",
  "room-fan": "Run a fan to stir the room's air",
  "rack-fan": "Blow a fan across the rack",
  strong: "Aim a strong fan at it",
  tunnel: "Put it in a drying tunnel",
};

/** What that is taken to mean in the sum. */
export function meansWords({ remedy, air }: AdvisedChange, format: Format): string {
  switch (remedy.kind) {
    case "warmer":
      return `to ${format.show("temp", air.tempC)}; the same water in warmer air is ${format.show("percent", air.rh)}`;
    case "dehumidified":
      return `at the same ${format.show("temp", air.tempC)}`;
    case "air-class":
      return isAirClass(remedy.id) ? `about ${format.show("speed", airClasses[remedy.id].speedMS)}` : "";
    case "air-into-pocket":
      return "a hose or small fan into the opening; an estimate";
    case "opened-downwards":
      return "damp air is heavier and drains out; an estimate";
  }
}

export function cautionWords(caution: PrimeCaution, format: Format): string {
  switch (caution.code) {
    case "wax-moves":
      return `Prime coat on wax: keep the room within ${format.show("tempDiff", caution.mostK)} while this coat is outermost. Wax grows when warm, the coat does not.`;
    case "wet-coat-cools":
      return `Prime coat on wax: the wet face gets ${format.show("tempDiff", caution.dropK)} colder than the room, more than the limit of ${format.show("tempDiff", caution.mostK)}. The wax shrinks, then grows back under the set coat.`;
    case "too-dry-for-face":
      return `Prime coat: ${format.show("percent", caution.rh)} is drier than the ${format.show("percent", caution.leastRh)} limit for a face coat. It may crack.`;
    case "hard-air-early":
      return `Prime coat: no direct fan for the first ${caution.firstS === 3600 ? "hour" : duration(caution.firstS * 1000)}.`;
  }
}

/** Why there is no advice, a sentence. */
export const noneWords: Record<Extract<CoatAdvice, { kind: "none" }>["why"], string> = {
  "no-coat": "There is no coat on it yet.",
  dry: "It is dry already.",
  "no-readings": "No room reading yet. Log one, and this can be calculated.",
  "water-not-known": "The water left is not known: the room’s air was not logged while it dried.",
};
