import type { Quantity } from "../format/units.ts";
import { NumberField } from "./NumberField.tsx";
import type { Limits } from "./limits.ts";

export type DraftForm<D> = { readonly draft: D; readonly set: (changes: Partial<D>) => void };

type NumberKey<D> = { [K in keyof D]: D[K] extends number | null ? K : never }[keyof D] & string;

/** One figure of a draft, held to its limits. */
export function DraftNumber<D extends object>({
  form: { draft, set },
  limits,
  name,
  label,
  quantity,
  hint,
}: {
  readonly form: DraftForm<D>;
  readonly limits: Limits<D>;
  readonly name: NumberKey<D>;
  readonly label: string;
  readonly quantity: Quantity;
  readonly hint?: string | undefined;
}) {
  const range = limits[name];
  return (
    <NumberField
      label={label}
      quantity={quantity}
      value={draft[name] as number | null}
      onChange={(value) => set({ [name]: value } as Partial<D>)}
      hint={hint}
      min={range?.low}
      max={range?.high}
    />
  );
}
