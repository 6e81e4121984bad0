import { parseNumber } from "../format/numberText.ts";
import { nextStep } from "../parts/nextStep.ts";

/** A key of the pad: a digit, the decimal mark, or back by one. */
export type PadKey = "0" | "1" | "2" | "3" | "4" | "5" | "6" | "7" | "8" | "9" | "mark" | "back";

/** What stands on the display, and whether the next digit begins anew instead of being set behind it. */
export type PadText = { readonly text: string; readonly isWhole: boolean };

const longest = 8;

/** The display after a key. The mark is a point: the display writes it in the reader's own way. */
export function padPressed({ text, isWhole }: PadText, key: PadKey): PadText {
  if (key === "back") return { text: isWhole ? "" : text.slice(0, -1), isWhole: false };
  if (key === "mark") {
    if (isWhole || text === "") return { text: "0.", isWhole: false };
    return text.includes(".") || text.length >= longest ? { text, isWhole } : { text: `${text}.`, isWhole };
  }
  const before = isWhole || text === "0" ? "" : text;
  return before.length >= longest ? { text, isWhole } : { text: before + key, isWhole: false };
}

/** The number on the display; null while there is none. */
export const padNumber = (text: string): number | null => parseNumber(text.replace(/\.$/, ""), "en");

/** The display a step up or down; from an empty one it begins at `from`. */
export function padStepped(
  text: string,
  of: {
    readonly step: number;
    readonly from: number;
    readonly digits: number;
    readonly low: number;
    readonly high: number;
  },
): PadText {
  const value = padNumber(text);
  const next = value === null ? of.from : nextStep({ value, step: of.step, min: of.low, max: of.high });
  return { text: next.toFixed(of.digits), isWhole: true };
}
