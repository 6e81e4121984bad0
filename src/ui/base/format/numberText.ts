import { numberFormat } from "./formatters.ts";

/**
 * The number a person typed, or null when it is none. A comma counts as the decimal mark unless it stands in the
 * place of a thousands mark in a locale that writes one ("1,200" in American English).
 */
export function parseNumber(text: string, locale: string): number | null {
  const bare = text
    .trim()
    .replace(/[\s\u00a0\u202f']/g, "")
    .replace("−", "-");
  if (bare === "") return null;
  const commaGroups = decimalMark(locale) === "." && /^-?\d{1,3}(,\d{3})+(\.\d+)?$/.test(bare);
  const plain = commaGroups ? bare.replaceAll(",", "") : bare.replace(",", ".");
  if (!/^-?(\d+\.?\d*|\.\d+)$/.test(plain)) return null;
  return Number(plain);
}

/** The number as it stands in a field: no thousands marks, no trailing zeros. */
export function fieldText(value: number, digits: number): string {
  const text = value.toFixed(digits);
  const short = text.includes(".") ? text.replace(/\.?0+$/, "") : text;
  return short === "-0" ? "0" : short;
}

function decimalMark(locale: string): string {
  return (
    numberFormat(locale)
      .formatToParts(1.5)
      .find((part) => part.type === "decimal")?.value ?? "."
  );
}
