import type { FieldErrors } from "../../base/forms/fieldSchema.ts";
import { NumberField } from "../../base/forms/NumberField.tsx";
import { TextField } from "../../base/forms/TextField.tsx";

type Price = { readonly pricePerKWh: number | null; readonly currency: string };

/** What a kilowatt hour costs, in the shop's own money. */
export function PriceFields({
  draft,
  set,
  errors,
}: {
  readonly draft: Price;
  readonly set: (changes: Partial<Price>) => void;
  readonly errors: FieldErrors;
}) {
  return (
    <details>
      <summary>What a kWh costs</summary>
      <NumberField
        label="Price of a kWh"
        quantity="plain"
        min={0}
        value={draft.pricePerKWh}
        onChange={(pricePerKWh) => set({ pricePerKWh })}
        error={errors["pricePerKWh"]}
      />
      <TextField
        label="In"
        value={draft.currency}
        onChange={(currency) => set({ currency })}
        hint="EUR, USD, …"
        error={errors["currency"]}
      />
    </details>
  );
}
