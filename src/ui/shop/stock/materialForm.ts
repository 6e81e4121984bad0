import { z } from "zod";
import type { EntryBodies } from "../../../logbook/entries/entry.ts";
import { ranges } from "../../../logbook/entries/ranges.ts";
import type { Material } from "../../../logbook/shop/shopThings.ts";
import type { MaterialKind } from "../../../logbook/entries/shopBodies.ts";
import type { Format } from "../../base/format/units.ts";
import { figureOrNone, oneOf, withoutEmpty, words } from "../../base/forms/fieldSchema.ts";

export const materialKinds = [
  { value: "flour", label: "Flour" },
  { value: "sol", label: "Binder" },
  { value: "stucco", label: "Stucco" },
  { value: "metal", label: "Metal" },
  { value: "other", label: "Other" },
] as const satisfies readonly { value: MaterialKind; label: string }[];

export type MaterialDraft = {
  readonly name: string;
  readonly kind: MaterialKind | null;
  readonly flourId: string | null;
  readonly stuccoId: string | null;
  readonly pricePerKg: number | null;
  readonly currency: string;
  readonly weeksToCome: number | null;
  readonly packKg: number | null;
  readonly keepsMonths: number | null;
};

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

export function materialSchema(format: Format): z.ZodType<Body> {
  const remedy = "Correct it, or leave it empty if it is not known.";
  const number = (
    what: string,
    quantity: "plain" | "kg",
    range: { readonly low: number; readonly high: number },
  ) => figureOrNone(format, { what, quantity, range, remedy });
  return z
    .object({
      name: words("name", "Write what stands on the bag.", 120),
      kind: oneOf(["flour", "sol", "stucco", "metal", "other"], "what it is"),
      flourId: z.string().nullable(),
      stuccoId: z.string().nullable(),
      pricePerKg: number("price", "plain", ranges.price),
      currency: z.string().trim().max(12, { error: "Found a long word, expected a currency. Shorten it." }),
      weeksToCome: number("weeks to come", "plain", ranges.weeks),
      packKg: number("pack", "kg", ranges.stockKg),
      keepsMonths: number("months it keeps", "plain", ranges.months),
    })
    .superRefine(({ pricePerKg, currency }, context) => {
      if (pricePerKg !== null && currency === "")
        context.addIssue({
          code: "custom",
          path: ["currency"],
          message: "Found a price, expected its currency. Write it as you like.",
        });
    })
    .transform(({ kind, flourId, stuccoId, currency, ...rest }) =>
      withoutEmpty({
        name: rest.name,
        kind,
        flourId: kind === "flour" ? (flourId ?? undefined) : undefined,
        stuccoId: kind === "stucco" ? (stuccoId ?? undefined) : undefined,
        pricePerKg: rest.pricePerKg ?? undefined,
        currency: currency === "" ? undefined : currency,
        weeksToCome: rest.weeksToCome ?? undefined,
        packKg: rest.packKg ?? undefined,
        keepsMonths: rest.keepsMonths ?? undefined,
      }),
    );
}
