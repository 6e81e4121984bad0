import type { PowerKnown } from "../../../logbook/fire/furnaceMemory.ts";
import type { Format } from "../../base/format/units.ts";
import type { MeltTimes } from "../../../logbook/casting/heatSum.ts";

/** "45 to 80 min", never finer than two figures: such times are no better known. */
export function rangeMinutes({ lowS, likelyS, highS }: MeltTimes): string {
  const minutes = (s: number): string => twoFigures(s / 60).toString();
  return `about ${minutes(likelyS)} min (${minutes(lowS)} to ${minutes(highS)})`;
}

/** "12 s", "3 min", "1.5 h": a time to two figures. */
export function shortSpan(s: number): string {
  if (s < 90) return `${twoFigures(s)} s`;
  if (s < 90 * 60) return `${twoFigures(s / 60)} min`;
  return `${twoFigures(s / 3600)} h`;
}

function twoFigures(value: number): number {
  return Number(value.toPrecision(2));
}

/** Where the useful power comes from. */
export function powerBasis(
  { basis, melts, likelyW, lowW, highW, source }: PowerKnown,
  format: Format,
): string {
  const kW = (w: number): string => format.show("kW", w / 1000);
  const range = `${kW(likelyW)} (${kW(lowW)} to ${kW(highW)})`;
  const count = melts === 1 ? "one melt" : `${melts} melts`;
  switch (basis) {
    case "learned":
      return `Useful power ${range}, learned from ${count} of this furnace.`;
    case "learned-other":
      return `Useful power ${range}, from ${count} with the other kind of start; ${source}.`;
    case "own-share":
      return `Useful power ${range}, from the share set for this furnace.`;
    case "starting":
      return `Useful power ${range}, a starting value: ${source}. Its own melts will give a better one.`;
  }
}
