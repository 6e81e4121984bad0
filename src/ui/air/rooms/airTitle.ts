import type { Format } from "../../base/format/units.ts";

type Air = { readonly airC: number; readonly rh: number };

/** Between what a room's air went, in one line. */
export function airTitle(readings: readonly Air[], format: Format): string {
  if (readings.length === 0) return "Not read in these hours";
  const span = (values: readonly number[], show: (value: number) => string): string => {
    const [low, high] = [show(Math.min(...values)), show(Math.max(...values))];
    return low === high ? `steady at ${low}` : `${low} to ${high}`;
  };
  const temp = span(
    readings.map(({ airC }) => airC),
    (c) => format.show("temp", c),
  );
  const rh = span(
    readings.map((reading) => reading.rh),
    (share) => format.show("percent", share),
  );
  return `Air ${temp}, humidity ${rh}`;
}
