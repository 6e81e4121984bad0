import { fields, type FieldKey } from "./fields.ts";

export type NumberRange = { readonly low: number; readonly high: number };

/** What may be written under a key; sums leave out what lies outside. */
export const entryRange = (key: FieldKey): NumberRange => {
  const [low, high] = fields[key].entry;
  return { low, high };
};

/** The entry range of each key, and some by a name that several keys share. */
export const ranges = {
  ...(Object.fromEntries(Object.keys(fields).map((key) => [key, entryRange(key as FieldKey)])) as Readonly<
    Record<FieldKey, NumberRange>
  >),
  spanMm: entryRange("widthMm"),
  thickMm: entryRange("thickestMm"),
  recipeCoats: entryRange("coats"),
  blockReadings: entryRange("readings"),
  makingsKg: entryRange("flourKg"),
  bucketL: entryRange("litre"),
  silica: entryRange("solSilica"),
  share: entryRange("ovenSolids"),
  gelH: entryRange("gelledAfterH"),
  coatKgM2: entryRange("slurryKgM2"),
  price: entryRange("pricePerKg"),
  weeks: entryRange("weeksToCome"),
  months: entryRange("keepsMonths"),
  kilnL: entryRange("volumeL"),
  kilnMaxC: entryRange("maxC"),
  meltsC: entryRange("solidusC"),
  metalJKgK: entryRange("solidJKgK"),
  gaugeMm: entryRange("patternMm"),
  spots: entryRange("tips"),
} as const satisfies Record<string, NumberRange>;

/** True for a number within its range; NaN and what is not there are not. */
export function within(range: NumberRange, value: number | null | undefined): value is number {
  return typeof value === "number" && value >= range.low && value <= range.high;
}
