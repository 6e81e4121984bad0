import type { CostLack } from "../../logbook/pieceCost.ts";
import type { MaterialMove } from "../../logbook/stockView.ts";
import type { Material } from "../../logbook/shopThings.ts";
import { flourOf } from "../../trade/flours.ts";
import { kindWords, stuccoWords } from "../format/coatWords.ts";
import { priceWords } from "../format/moneyWords.ts";
import type { Format } from "../format/units.ts";

/** "2.00 EUR a kg", in the unit of mass of this person; null where no price is told. */
export function priceText({ pricePerKg, currency }: Material, format: Format): string | null {
  const price = pricePerKg === undefined ? undefined : pricePerKg / format.toShown("kg", 1);
  return priceWords(price, currency, { each: `a ${format.unit("kg")}`, format });
}

export const moveNames: Readonly<Record<MaterialMove["kind"], string>> = {
  received: "Received",
  "made-up": "Made up",
  "dipped-out": "Dipped out",
  lost: "Lost",
  "thrown-away": "Thrown away",
  counted: "Counted",
};

export function lackText(lack: CostLack): string {
  switch (lack.code) {
    case "area":
      return "the area of the piece";
    case "coats":
      return "a recipe, or a first coat";
    case "currencies":
      return "prices in one currency";
    case "bucket":
      return `a bucket for ${kindWords[lack.kind]} coats`;
    case "price":
      return priceLack(lack);
  }
}

function priceLack({ of, id }: Extract<CostLack, { readonly code: "price" }>): string {
  if (of === "sol") return "the price of the binder";
  if (of === "stucco") return `the price of stucco ${id === null ? "" : stuccoWords(id)}`.trim();
  const flour = id === null ? null : flourOf(id);
  return flour === null
    ? "the flour of its bucket, and its price"
    : `the price of ${flour.label.toLowerCase()} flour`;
}

export const moneyText = (value: number, currency: string | null, format: Format): string =>
  [format.number(value, 2), currency].filter((word) => word !== null).join("\u00a0");
