import type { CostLack } from "../../../logbook/piece/pieceCost.ts";
import type { MaterialMove } from "../../../logbook/shop/stockView.ts";
import type { MaterialKind } from "../../../logbook/entries/shopBodies.ts";
import type { Material } from "../../../logbook/shop/shopThings.ts";
import { flourOf } from "../../../trade/flours.ts";
import { kindWords, stuccoWords } from "../../base/format/coatWords.ts";
import { priceWords } from "../../base/format/moneyWords.ts";
import type { Format } from "../../base/format/units.ts";

/** "2.00 EUR a kg", in the unit of mass of this person; null where no price is told. */
export function priceText({ pricePerKg, currency }: Material, format: Format): string | null {
  const price = pricePerKg === undefined ? undefined : pricePerKg / format.toShown("kg", 1);
  return priceWords(price, currency, { each: `a ${format.unit("kg")}`, format });
}

const nouns: Partial<Record<MaterialKind, string>> = {
  flour: "of this flour",
  sol: "binders",
  stucco: "of this grade",
};

/** What a use is looked up by: the flour, the cut, or that it is a binder at all. Null where nothing is taken off by itself. */
function soughtBy({ kind, flourId, stuccoId }: Material): string | null {
  if (kind === "sol") return "sol";
  const id = kind === "flour" ? flourId : kind === "stucco" ? stuccoId : undefined;
  return id === undefined ? null : `${kind} ${id}`;
}

/** Said of a material that is not the only one of its flour, cut, or a binder: what is used is taken off the first. Else null. */
export function sharedText(material: Material, materials: readonly Material[]): string | null {
  const sought = soughtBy(material);
  const all = materials.filter((other) => !other.retired && soughtBy(other) === sought);
  const [first] = all;
  const noun = nouns[material.kind];
  if (first === undefined || all.length < 2 || material.retired || sought === null || noun === undefined)
    return null;
  const many = `${all.length} materials are ${noun}`;
  return first.id === material.id
    ? `${many}: all use is taken off this one, the first.`
    : `${many}: all use is taken off the first, ${first.name}. Count both, or retire the first once it is empty.`;
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
