import type { BucketCup } from "../../../logbook/bucket/bucketCups.ts";
import type { DensityRead, ReadingStanding, SecondsRead } from "../../../logbook/bucket/bucketReading.ts";
import { cupOf } from "../../../trade/cups.ts";
import type { Format } from "./units.ts";
import { numberFormat } from "./formatters.ts";

/** mm²/s is what every cup's table is in; no shop reads a cup in other units. */
export const viscosityText = (viscosityMm2S: number, format: Pick<Format, "number">): string =>
  `${format.number(viscosityMm2S, viscosityMm2S < 100 ? 1 : 0)}\u00a0mm²/s`;

/** "Blue tape (Zahn 4)", or the name alone where it says its kind. */
export function cupName(cup: BucketCup): string {
  const label = cup.kind === null ? null : (cupOf(cup.kind)?.label ?? null);
  return label === null || label === cup.name ? cup.name : `${cup.name} (${label})`;
}

/** "23.0": a stopwatch's digits don't jump when a tenth is nought. */
export const watchText = (seconds: number, locale: string): string =>
  numberFormat(locale, { minimumFractionDigits: 1, maximumFractionDigits: 1 }).format(seconds);

/** What the seconds come to, and how far that can be trusted. */
export function viscosityWords(
  { seconds, viscosity }: SecondsRead,
  format: Pick<Format, "number" | "show">,
): string {
  const shown = format.show("s", seconds);
  if (viscosity === null) return "The kind of cup is not known: compare these seconds only with this cup.";
  if (!viscosity.ok)
    return `${shown} is too short for this cup. Use a cup with a smaller hole, or compare only with this one.`;
  const about = viscosityText(viscosity.viscosityMm2S, format);
  const span = `${format.number(viscosity.lowS, 0)} to ${format.show("s", viscosity.highS)}`;
  switch (viscosity.range) {
    case "below":
      return `Below the standard's range (${span}): ${about} is an index only. Compare it only with readings from this cup.`;
    case "above":
      return `Above the standard's range (${span}): ${about} is an index only. A cup with a wider hole reads better.`;
    case "within":
      return `About ${about}, within the standard's range (${span}). Slurry thins as it is stirred: use it as an index in this shop.`;
  }
}

/** "1.683 ± 0.003 g/cm³, weighed". */
export function densityWords({ densityGCm3, plusMinusGCm3, how }: DensityRead, format: Format): string {
  const shown = format.show("density", densityGCm3);
  if (plusMinusGCm3 === null) return `${shown}, by instrument`;
  return `${format.number(densityGCm3, 3)} ± ${format.show("density", plusMinusGCm3)}, ${how}`;
}

/** A reading in one line: what was measured, nothing more. */
export function readingLine({ reading, seconds, density, cup }: ReadingStanding, format: Format): string {
  const { slurryC, pH } = reading;
  const parts = [
    seconds === null ? null : `${format.show("s", seconds.seconds)}${cup === null ? "" : ` in ${cup.name}`}`,
    slurryC === undefined ? null : format.show("temp", slurryC),
    density === null ? null : format.show("density", density.densityGCm3),
    pH === undefined ? null : `pH ${format.number(pH, 2)}`,
  ].filter((part) => part !== null);
  return parts.length === 0 ? "Looked at, not measured" : parts.join(", ");
}
