import { heavyFromMm, startAboveK, type PourHeat } from "../../../logbook/pour/pourHeat.ts";
import type { Format } from "../../base/format/units.ts";

/** Why a plan starts at this heat: the end of a range that begins in the middle of a sentence. */
export function pourHeatReason({ work, startFrom }: PourHeat, format: Format): string {
  const range =
    work === "heavy" ? `heavy work (${format.show("mm", heavyFromMm.value)} and more)` : "light work";
  switch (startFrom) {
    case "low-end":
      return `the low end for ${range}, as a hot shell needs less than sand`;
    case "superheat":
      return `in the range for ${range}, up to ${format.show("tempDiff", startAboveK.value)} above full melting`;
    case "least":
      return `the coldest that still fills ${work === "heavy" ? "heavy" : "light"} work`;
  }
}
