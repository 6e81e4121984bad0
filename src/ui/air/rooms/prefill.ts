import type { EntryBodies } from "../../../logbook/entries/entry.ts";
import type { AirReading } from "../../../logbook/piece/piece.ts";
import type { AirClass } from "../../../trade/airClasses.ts";
import { ordinaryRoom } from "../../../trade/ordinaryRoom.ts";
import type { Format } from "../../base/format/units.ts";

/** A reading on its way into the log; null where nobody has set it yet. */
export type ReadingDraft = {
  readonly airC: number | null;
  readonly rh: number | null;
  readonly air: AirClass | null;
};

type Reading = Pick<EntryBodies["air-read"], "airC" | "rh" | "air">;

const nothing: ReadingDraft = { airC: null, rh: null, air: null };

/** Where the first press of an empty stepper begins. */
export const stepsFrom = ordinaryRoom.value;

/** One tap of the temperature stepper, °C: half a degree, or one degree Fahrenheit. */
export const tempStepC = (format: Format): number => (format.unit("temp") === "°F" ? 5 / 9 : 0.5);

/**
 * The last reading, on the marks the steppers stop at, so that the next one is a tap or two away. Before the first
 * reading nothing is filled in: a figure nobody read must not stand ready to be logged.
 */
export function prefill(last: AirReading | null, format: Format): ReadingDraft {
  if (last === null) return nothing;
  const { airC, rh, air } = last;
  const mark = format.unit("temp") === "°F" ? 1 : 0.5;
  const shown = Math.round(format.toShown("temp", airC) / mark) * mark;
  return { airC: format.fromShown("temp", shown), rh: Math.round(rh * 100) / 100, air };
}

/** The draft as a reading, or what is missing from it in words. */
export function readingOf({
  airC,
  rh,
  air,
}: ReadingDraft):
  { readonly ok: true; readonly reading: Reading } | { readonly ok: false; readonly missing: string } {
  if (airC !== null && rh !== null && air !== null) return { ok: true, reading: { airC, rh, air } };
  const missing = [
    ...(airC === null ? ["temperature"] : []),
    ...(rh === null ? ["humidity"] : []),
    ...(air === null ? ["air movement"] : []),
  ];
  const last = missing.at(-1) ?? "";
  const rest = missing.slice(0, -1).join(", ");
  return { ok: false, missing: `Set the ${rest === "" ? last : `${rest} and ${last}`} first.` };
}
