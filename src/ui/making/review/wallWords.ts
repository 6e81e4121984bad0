import type { WallStanding } from "../../../logbook/piece/standing.ts";
import type { Format } from "../../base/format/units.ts";

type Judged = NonNullable<WallStanding["judged"]>;

export const bandWords: Record<Judged["band"], string> = {
  carries: "carries the head by the sum",
  marginal: "marginal: add a coat or lower the head",
  thin: "thin: expect cracks; add coats, pack it in sand",
  fails: "reckoned to fail: do not pour it unsupported",
};

export const missingWords: Record<WallStanding["missing"][number], string> = {
  alloy: "the alloy",
  head: "the head (lip of the cup down to the lowest wall)",
  part: "the broadest flat or widest round of the wall",
  coats: "the coats",
};

/** Nothing finer than half a millimetre is claimed of a wall that is needed. */
export function neededWords({ requiredMm, requiredLowMm, requiredHighMm }: Judged, format: Format): string {
  const show = (mm: number) => format.show("mm", Math.round(mm * 2) / 2);
  return `${show(requiredMm)} (${show(requiredLowMm)} to ${show(requiredHighMm)})`;
}

export const factorWords = (factor: number, format: Format): string =>
  factor > 99 ? "over 99" : format.number(factor, factor < 2 ? 2 : 1);
