import type { EntryBodies } from "../../../logbook/entries/entry.ts";
import type { Material } from "../../../logbook/shop/shopThings.ts";
import type { MaterialKind } from "../../../logbook/entries/shopBodies.ts";
import type { Format } from "../../base/format/units.ts";
import {
  checkFields,
  figureOrNone,
  givenOrNone,
  oneOf,
  shortWords,
  withoutEmpty,
  words,
  type Checked,
  type DraftOf,
} from "../../base/forms/formFields.ts";

export const materialKinds = [
  { value: "flour", label: "Flour" },
  { value: "sol", label: "Binder" },
  { value: "stucco", label: "Stucco" },
  { value: "metal", label: "Metal" },
  { value: "other", label: "Other" },
] as const satisfies readonly { value: MaterialKind; label: string }[];

const remedy = "Correct it, or leave it empty if it is not known.";
export const materialFields = {
  name: words("name", "Write what is marked on the bag.", 120),
  kind: oneOf<MaterialKind>(["flour", "sol", "stucco", "metal", "other"], "what it is"),
  flourId: givenOrNone<string>(),
  stuccoId: givenOrNone<string>(),
  pricePerKg: figureOrNone("pricePerKg", { what: "price", remedy }),
  currency: shortWords(12, "Enter a currency code, such as EUR or USD."),
  weeksToCome: figureOrNone("weeksToCome", { what: "delivery time", remedy }),
  packKg: figureOrNone("packKg", { what: "pack", remedy }),
  keepsMonths: figureOrNone("keepsMonths", { what: "shelf life", remedy }),
};
type MaterialDraft = DraftOf<typeof materialFields>;

export const draftOfMaterial = (material: Material | null, currency = ""): MaterialDraft => ({
  name: material?.name ?? "",
  kind: material?.kind ?? null,
  flourId: material?.flourId ?? null,
  stuccoId: material?.stuccoId ?? null,
  pricePerKg: material?.pricePerKg ?? null,
  currency: material?.currency ?? currency,
  weeksToCome: material?.weeksToCome ?? null,
  packKg: material?.packKg ?? null,
  keepsMonths: material?.keepsMonths ?? null,
});

type Body = Omit<EntryBodies["material-set"], "materialId">;

export function readMaterial(draft: MaterialDraft, format: Format): Checked<Body> {
  const read = checkFields(materialFields, draft, format, ({ pricePerKg, currency }) => ({
    currency: pricePerKg !== undefined && currency === "" ? "Enter the currency of the price." : undefined,
  }));
  if (!read.ok) return read;
  const { kind, flourId, stuccoId, currency } = read.value;
  return {
    ok: true,
    value: withoutEmpty({
      ...read.value,
      flourId: kind === "flour" ? flourId : undefined,
      stuccoId: kind === "stucco" ? stuccoId : undefined,
      currency: currency === "" ? undefined : currency,
    }),
  };
}
