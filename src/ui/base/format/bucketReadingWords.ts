import type { BucketCup } from "../../../logbook/bucket/bucketCups.ts";
import type { DensityRead, ReadingStanding, SecondsRead } from "../../../logbook/bucket/bucketReading.ts";
import { cupOf } from "../../../trade/cups.ts";
import type { Format } from "./units.ts";
import { numberFormat } from "./formatters.ts";
import { slurryReading as t } from "../words/slurryReading.ts";

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
  if (viscosity === null) return t["viscosity.theKindOfCup"];
  if (!viscosity.ok) return t["viscosity.shownIsTooShort"]({ shown });
  const about = viscosityText(viscosity.viscosityMm2S, format);
  const span = t["viscosity.partToHighS"]({
    part: format.number(viscosity.lowS, 0),
    highS: format.show("s", viscosity.highS),
  });
  switch (viscosity.range) {
    case "below":
      return t["viscosity.below"]({ span, about });
    case "above":
      return t["viscosity.above"]({ span, about });
    case "within":
      return t["viscosity.within"]({ about, span });
  }
}

/** "1.683 ± 0.003 g/cm³, weighed". */
export function densityWords({ densityGCm3, plusMinusGCm3, how }: DensityRead, format: Format): string {
  const shown = format.show("density", densityGCm3);
  if (plusMinusGCm3 === null) return t["density.shownByInstrument"]({ shown });
  return `${format.number(densityGCm3, 3)} ± ${format.show("density", plusMinusGCm3)}, ${how}`;
}

/** A reading in one line: what was measured, nothing more. */
export function readingLine({ reading, seconds, density, cup }: ReadingStanding, format: Format): string {
  const { slurryC, pH } = reading;
  const parts = [
    seconds === null
      ? null
      : `${format.show("s", seconds.seconds)}${cup === null ? "" : t["reading.inName"]({ name: cup.name })}`,
    slurryC === undefined ? null : format.show("temp", slurryC),
    density === null ? null : format.show("density", density.densityGCm3),
    pH === undefined ? null : t["reading.pHPart"]({ part: format.number(pH, 2) }),
  ].filter((part) => part !== null);
  return parts.length === 0 ? t["reading.lookedAtNotMeasured"] : parts.join(", ");
}
