import { dewPointC, saturationDeficitGM3 } from "../../../physics/air/air.ts";
import { airClasses } from "../../../trade/airClasses.ts";
import type { AirClass } from "../../../trade/airClasses.ts";
import type { Format } from "../../base/format/units.ts";

/** What each class of air movement looks like in a room: our own words for the speeds of `airClasses`. */
const looks: Record<AirClass, string> = {
  still: "Doors shut, no fan; smoke rises straight up",
  draught: "A thread hung on the rack just stirs",
  "room-fan": "A fan turns the room's air, not aimed at the pieces",
  "rack-fan": "A fan blows across the rack; a strip of paper flutters",
  strong: "A fan close by; a strip of paper streams out flat",
  tunnel: "A closed drying box with air forced through it",
};

export const airClassOptions: readonly { value: AirClass; label: string; hint: string }[] = (
  ["still", "draught", "room-fan", "rack-fan", "strong", "tunnel"] as const
).map((value) => ({ value, label: airClasses[value].label, hint: looks[value] }));

/** "21 °C, 55%, fan on the rack". */
export function readingWords(
  reading: { readonly airC: number; readonly rh: number; readonly air: AirClass },
  format: Format,
): string {
  const air = airClasses[reading.air].label.toLowerCase();
  return `${format.show("temp", reading.airC)}, ${format.show("percent", reading.rh)}, ${air}`;
}

/**
 * How thirsty the air is, in words a room can be changed by: its dew point, and how much water it
 * can still take up.
 */
export function thirstWords(air: { readonly airC: number; readonly rh: number }, format: Format): string {
  const dew = dewPointC({ tempC: air.airC, rh: air.rh });
  const takes = saturationDeficitGM3({ tempC: air.airC, rh: air.rh });
  const dewText = dew === null ? "no dew point" : `dew point ${format.show("temp", dew)}`;
  return `${dewText}; takes up ${format.show("gM3", takes)} of water`;
}
