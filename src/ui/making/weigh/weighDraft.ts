import type { Format } from "../../base/format/units.ts";
import { padNumber, type PadText } from "../../base/glove/keypadText.ts";

/** In which unit the balance is read: the small one (g, oz) or the large one (kg, lb). */
export type WeighUnit = "g" | "kg";

/** What stands on the display, g; null while there is no number. */
export function typedMassG({ text }: PadText, unit: WeighUnit, format: Format): number | null {
  const number = padNumber(text);
  if (number === null) return null;
  const massG = unit === "g" ? format.fromShown("g", number) : 1000 * format.fromShown("kg", number);
  return Math.round(massG * 1000) / 1000;
}

/**
 * The scale's step, g: the one set for this device, or the last place typed where that is finer, for "2410.0" was read
 * off a scale of 0.1 g; undefined where neither is known. A number that was stepped to says nothing of the scale.
 */
export function scaleOf(
  { text, isWhole }: PadText,
  { unit, setG, format }: { readonly unit: WeighUnit; readonly setG: number | null; readonly format: Format },
): number | undefined {
  const places = isWhole ? 0 : (text.split(".")[1]?.length ?? 0);
  const isMetric = format.unit("g") === "g";
  const typedG = isMetric && places > 0 ? (unit === "g" ? 1 : 1000) / 10 ** places : Infinity;
  const finestG = Math.min(setG ?? Infinity, typedG);
  return finestG === Infinity ? undefined : finestG;
}
