import type { EntryBodies } from "../../../logbook/entries/entry.ts";
import { ranges, within } from "../../../logbook/entries/ranges.ts";
import type { AirClass } from "../../../trade/airClasses.ts";
import type { ValueOf } from "../sensors/useSensor.ts";

type Body = EntryBodies["air-read"];

/** What a sensor said as a reading; null while temperature or humidity is not known. Pressure counts where it can be right. */
export function sensorReading(
  value: ValueOf<"air">,
  { name, moves }: { readonly name: string; readonly moves: AirClass },
): Body | null {
  const { airC, rh, pressurePa } = value;
  if (airC === null || rh === null) return null;
  const body: Body = { airC, rh, air: moves, sensor: name === "" ? "Bluetooth sensor" : name };
  return pressurePa !== null && within(ranges.pressurePa, pressurePa) ? { ...body, pressurePa } : body;
}
