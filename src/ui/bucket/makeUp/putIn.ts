import type { Makings } from "../../../logbook/entries/bucketBodies.ts";
import { ranges, type NumberRange } from "../../../logbook/entries/ranges.ts";
import type { Format, Quantity } from "../../base/format/units.ts";

export type AmountKey = "waterKg" | "solKg" | "flourKg" | "litre";

export type PutInDraft = Makings & {
  readonly what: "top-up" | "batch";
  /** Litres a new batch comes to; 0 is not told. */
  readonly litre: number;
  readonly lid: "on" | "off";
  /** Silica of the sol that goes in, where it is another than the bucket's. */
  readonly solSilica: number | null;
};

export type AmountAsked = {
  readonly name: string;
  readonly title: string;
  readonly hint: string;
  readonly quantity: Quantity;
  readonly step: number;
  readonly from: number;
  readonly range: NumberRange;
};

const asked: Readonly<Record<AmountKey, AmountAsked>> = {
  waterKg: {
    name: "Water",
    title: "Water added",
    hint: "Distilled or deionised only",
    quantity: "litre",
    step: 0.1,
    from: 0.5,
    range: ranges.makingsKg,
  },
  solKg: {
    name: "Binder",
    title: "Binder added",
    hint: "Colloidal silica as it comes",
    quantity: "kg",
    step: 0.1,
    from: 1,
    range: ranges.makingsKg,
  },
  flourKg: {
    name: "Flour",
    title: "Flour added",
    hint: "Last, slowly, under stirring",
    quantity: "kg",
    step: 0.1,
    from: 1,
    range: ranges.makingsKg,
  },
  litre: {
    name: "New volume",
    title: "New slurry volume",
    hint: "By dip stick. Skip it if not measured",
    quantity: "litre",
    step: 0.5,
    from: 20,
    range: ranges.bucketL,
  },
};

export const amountAsked = (key: AmountKey, { isBatch }: { readonly isBatch: boolean }): AmountAsked =>
  isBatch && key !== "waterKg" && key !== "litre" ? { ...asked[key], from: 10, step: 1 } : asked[key];

/** In the order they go in: liquids before flour. */
export const amountsOf = ({ isBatch }: { readonly isBatch: boolean }): readonly AmountKey[] =>
  isBatch ? ["solKg", "waterKg", "flourKg", "litre"] : ["waterKg", "solKg", "flourKg"];

export const amountText = (key: AmountKey, value: number, format: Format): string =>
  value === 0 ? (key === "litre" ? "not measured" : "none") : format.show(asked[key].quantity, value);

/** Water alone makes up for what dried off; sol and flour together are fresh slurry; anything else corrects. */
export function whyOf({ flourKg, solKg, waterKg }: Makings): "evaporation" | "correction" | "fresh" {
  if (flourKg === 0 && solKg === 0) return "evaporation";
  return flourKg > 0 && solKg > 0 && waterKg === 0 ? "fresh" : "correction";
}
