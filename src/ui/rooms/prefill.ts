import type { AirReading } from "../../logbook/piece.ts";
import type { AirClass } from "../../trade/airClasses.ts";
import type { Format } from "../format/units.ts";

export type ReadingDraft = { readonly airC: number; readonly rh: number; readonly air: AirClass };

/** What a room is taken for before its first reading: a usual workshop, to be stepped from. */
const usual: ReadingDraft = { airC: 20, rh: 0.55, air: "still" };

/** One tap of the temperature stepper, °C: half a degree, or one degree Fahrenheit. */
export const tempStepC = (format: Format): number => (format.unit("temp") === "°F" ? 5 / 9 : 0.5);

/** The last reading, on the marks the steppers stop at, so that the next one is a tap or two away. */
export function prefill(last: AirReading | null, format: Format): ReadingDraft {
  const { airC, rh, air } = last ?? usual;
  const mark = format.unit("temp") === "°F" ? 1 : 0.5;
  const shown = Math.round(format.toShown("temp", airC) / mark) * mark;
  return { airC: format.fromShown("temp", shown), rh: Math.round(rh * 100) / 100, air };
}
