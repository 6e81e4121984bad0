import type { AirPoint, DayView } from "../../../../physics/drying/dayView.ts";
import type { ForecastError } from "../../../../physics/drying/forecastError.ts";
import { practice } from "../../../../trade/practice.ts";
import { clockTime } from "../../../base/format/time.ts";
import type { Format, Quantity } from "../../../base/format/units.ts";
import type { DayForecast, Spell } from "../../../../logbook/air/dayAir.ts";

/** "12.4 °C, 81%, dew point 9.2 °C, takes up 2.1 g/m³": one moment of air. */
export function pointWords({ tempC, rh, dewC, deficitGM3 }: AirPoint, format: Format): string {
  return [
    format.show("temp", tempC),
    format.show("percent", rh),
    dewC === null ? "no dew point" : `dew point ${format.show("temp", dewC)}`,
    `takes up ${format.show("gM3", deficitGM3)}`,
  ].join(", ");
}

/** What a day was like as a whole; null where nothing was read. */
export function dayWords(
  { spans, knownShare, doseGHM3 }: DayView,
  hours: number,
  format: Format,
): string | null {
  if (spans === null) return null;
  const { tempC, rh, dewC, deficitGM3 } = spans;
  const range = (quantity: Quantity, { low, high }: { low: number; high: number }): string =>
    `${format.number(format.toShown(quantity, low), format.digits(quantity))} to ${format.show(quantity, high)}`;
  const known = knownShare * hours;
  const average = known > 0 ? `, ${format.show("gM3", doseGHM3 / known)} on average` : "";
  const dew = dewC === null ? "" : `, dew point ${range("temp", dewC)}`;
  return `${range("temp", tempC)}, ${range("percent", rh)}${dew}; takes up ${range("gM3", deficitGM3)}${average}.`;
}

/** "Over 70% from 22:10 to 06:40, at most 86%." */
export function spellWords({ from, to, most }: Spell, format: Format): string {
  const limit = format.show("percent", practice.rhFinalDry.value);
  return `Damp: over ${limit} from ${clockTime(from, format.locale)} to ${clockTime(to, format.locale)}, at most ${format.show("percent", most)}.`;
}

export const dayLimitWords = (format: Format): string =>
  `Over ${format.show("percent", practice.rhFinalDry.value)} a last coat doesn’t count as fully dry. Over ${format.show("percent", practice.rhNeverDry.value)} no coat gets dry.`;

/** How the hours ahead were made, and how far that has been off. */
export function errorWords(error: ForecastError, basis: DayForecast["basis"], format: Format): string {
  if (basis === "hold-last")
    return "Less than 20 hours of readings without a gap, so the last reading is held. In a room that cools at night that is too optimistic.";
  const made = "The next 24 hours repeat yesterday’s air, shifted by today’s difference.";
  if (!error.ok)
    return `${made} Its error is not known yet: ${counted(error.days)} of ${error.wanted} compared.`;
  const off = [
    format.show("tempDiff", error.tempK),
    `${format.show("percent", error.rh)} humidity`,
    `${format.show("tempDiff", error.dewK)} dew point`,
    format.show("gM3", error.deficitGM3),
  ].join(", ");
  return `${made} This forecast was off by a median of ${off} (${counted(error.days)}). The band is that wide: half of the hours were inside it.`;
}

const counted = (days: number): string => (days === 1 ? "1 day" : `${days} days`);
