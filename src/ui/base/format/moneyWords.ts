import type { Format } from "./units.ts";

/** "3.20 EUR a kilogram": the number and the word are the shop's own. Null when no price is told. */
export function priceWords(
  price: number | undefined,
  currency: string | undefined,
  { each, format }: { readonly each: string; readonly format: Format },
): string | null {
  if (price === undefined) return null;
  return [format.number(price, 2), currency ?? "", each].filter((part) => part !== "").join(" ");
}

export const powerWords = (powerKW: number, format: Format): string => `${format.number(powerKW, 1)}\u00a0kW`;
