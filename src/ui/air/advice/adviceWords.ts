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
      return "Lead air into the pocket";
    case "opened-downwards":
      return "Hang it with the opening down";
  }
}

type AirClassId = keyof typeof airClasses;
const isAirClass = (id: string): id is AirClassId => Object.hasOwn(airClasses, id);
const moveWords: Record<AirClassId, string> = {
  still: "Still air",
  draught: "Let a slight draught through",
  "room-fan": "Set a fan turning the room's air",
  "rack-fan": "Set a fan blowing across the rack",
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
      return "a hose or a small fan into the opening: a sixth of the pocket's resistance, an estimate";
    case "opened-downwards":
      return "damp air is colder and heavier, and drains out: half the pocket's resistance, an estimate";
  }
}

export function cautionWords(caution: PrimeCaution, format: Format): string {
  switch (caution.code) {
    case "wax-moves":
      return `Prime coat on wax: the room should not move by more than ${format.show("tempDiff", caution.mostK)} while it is outermost. Wax grows with warmth and the coat does not.`;
    case "wet-coat-cools":
      return `Prime coat on wax: the wet face would be ${format.show("tempDiff", caution.dropK)} colder than the room, more than the ${format.show("tempDiff", caution.mostK)} it bears. The wax shrinks under it and grows back when the coat has set.`;
    case "too-dry-for-face":
      return `Prime coat: ${format.show("percent", caution.rh)} is drier than the ${format.show("percent", caution.leastRh)} a face coat is kept in. It may crack.`;
    case "hard-air-early":
      return `Prime coat: no hard air on it for its first ${caution.firstS === 3600 ? "hour" : duration(caution.firstS * 1000)}.`;
  }
}

/** Why there is no advice, a sentence. */
export const noneWords: Record<Extract<CoatAdvice, { kind: "none" }>["why"], string> = {
  "no-coat": "There is no coat on it yet.",
  dry: "It is dry: there is nothing to hasten.",
  "no-readings": "No room reading yet. Log one, and this can be calculated.",
  "water-not-known": "How much water is in it is not known: the room was not read while it dried.",
};
