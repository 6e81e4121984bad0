import type { ComponentProps } from "react";
import { PhotoPicker } from "../parts/PhotoPicker.tsx";
import type { Quantity } from "../format/units.ts";
import { changeOf, factsOf, type Bound, type KeysFor } from "./bound.ts";
import type { ChoiceOption } from "./Choice.tsx";
import { NumberField } from "./NumberField.tsx";
import { PickField } from "./PickField.tsx";
import { SelectField } from "./SelectField.tsx";
import { TextField } from "./TextField.tsx";
import { TickList } from "./TickList.tsx";
import { WhenField } from "./WhenField.tsx";

type Part<D extends object, N extends string, K> = {
  readonly form: Bound<D, N>;
  readonly at: K;
  readonly label: string;
  readonly hint?: string | undefined;
};

/** What else a choice changes, such as what rested on the old one. */
type Also<D, V> = { readonly also?: ((value: V) => Partial<D>) | undefined };

/** The unit comes from the form's own field; a sum, which has no fields, names it. */
type UnitOf<K, N> = K extends N
  ? { readonly quantity?: Quantity | undefined }
  : { readonly quantity: Quantity };

/**
 * A figure of the form. `min` and `max` are said at the key stroke; without them the form's limits are, and of an
 * entry only that it can't be below nothing: its range is asked when it is saved.
 */
export function NumberOf<
  D extends object,
  K extends KeysFor<D, number | null | undefined>,
  N extends string = never,
>(
  props: Part<D, N, K> &
    UnitOf<K, N> &
    Also<D, number | null> & { readonly min?: number | undefined; readonly max?: number | undefined },
) {
  const { form, at, label, hint, also } = props;
  const facts = factsOf(form.fields, at);
  const limit = form.limits?.[at];
  const quantity = props.quantity ?? facts?.quantity ?? "plain";
  const isNeverBelow = facts !== undefined && facts.range.low >= 0 && quantity !== "temp";
  return (
    <NumberField
      label={label}
      quantity={quantity}
      hint={hint}
      min={props.min ?? limit?.low ?? (isNeverBelow ? 0 : undefined)}
      max={props.max ?? limit?.high}
      value={(form.draft[at] as number | null | undefined) ?? null}
      onChange={(value) => form.set({ ...changeOf<D>(at, value), ...also?.(value) })}
      error={form.errors?.[at]}
    />
  );
}

/** Words of the form. */
export function TextOf<D extends object, K extends KeysFor<D, string>, N extends string = never>({
  form,
  at,
  label,
  hint,
  multiline,
}: Part<D, N, K> & { readonly multiline?: boolean }) {
  return (
    <TextField
      label={label}
      hint={hint}
      multiline={multiline}
      value={form.draft[at] as string}
      onChange={(value) => form.set(changeOf(at, value))}
      error={form.errors?.[at]}
    />
  );
}

/** One of a few, as keys. */
export function PickOf<D extends object, K extends KeysFor<D, string | null>, N extends string = never>({
  form,
  at,
  also,
  ...rest
}: Part<D, N, K> &
  Also<D, NonNullable<D[K]> & string> & {
    readonly options: readonly ChoiceOption<NonNullable<D[K]> & string>[];
  }) {
  return (
    <PickField
      {...rest}
      value={form.draft[at] as (NonNullable<D[K]> & string) | null}
      onChange={(value) => form.set({ ...changeOf<D>(at, value), ...also?.(value) })}
      error={form.errors?.[at]}
    />
  );
}

/** One of many, by the phone's own picker; `empty` is null where one of them must stand. */
export function SelectOf<
  D extends object,
  K extends KeysFor<D, string | null | undefined>,
  N extends string = never,
>({
  form,
  at,
  also,
  ...rest
}: Part<D, N, K> &
  Also<D, D[K]> & {
    readonly options: readonly { readonly value: NonNullable<D[K]> & string; readonly label: string }[];
  } & (null extends D[K] ? { readonly empty?: string | null } : { readonly empty: null })) {
  return (
    <SelectField
      {...rest}
      value={(form.draft[at] as (NonNullable<D[K]> & string) | null | undefined) ?? null}
      onChange={(value) => form.set({ ...changeOf<D>(at, value), ...also?.(value as D[K]) })}
      error={form.errors?.[at]}
    />
  );
}

/** Any number out of a list. */
export function TickOf<
  D extends object,
  K extends KeysFor<D, readonly string[]>,
  N extends string = never,
>({
  form,
  at,
  also,
  label,
  options,
}: Omit<Part<D, N, K>, "hint"> &
  Also<D, D[K]> & Pick<ComponentProps<typeof TickList>, "options">) {
  return (
    <TickList
      label={label}
      options={options}
      ticked={form.draft[at] as readonly string[]}
      onChange={(value) => form.set({ ...changeOf<D>(at, value), ...also?.(value as D[K]) })}
      error={form.errors?.[at]}
    />
  );
}

/** Yes or no, as two keys. */
export function YesNoOf<D extends object, K extends KeysFor<D, boolean>, N extends string = never>({
  form,
  at,
  label,
  hint,
  also,
  yes = "Yes",
  no = "No",
}: Part<D, N, K> & Also<D, boolean> & { readonly yes?: string; readonly no?: string }) {
  return (
    <PickField
      label={label}
      hint={hint}
      options={[
        { value: "no", label: no },
        { value: "yes", label: yes },
      ]}
      value={form.draft[at] === true ? "yes" : "no"}
      onChange={(value) => form.set({ ...changeOf<D>(at, value === "yes"), ...also?.(value === "yes") })}
      error={form.errors?.[at]}
    />
  );
}

/** When it was: now until it is said otherwise. */
export function WhenOf<D extends object, K extends KeysFor<D, number | null>, N extends string = never>({
  form,
  at,
  label,
}: Omit<Part<D, N, K>, "hint">) {
  return (
    <WhenField
      label={label}
      at={form.draft[at] as number | null}
      onChange={(value) => form.set(changeOf(at, value))}
    />
  );
}

/** Pictures that go with the entry. */
export function PhotosOf<D extends object, K extends KeysFor<D, readonly string[]>>({
  form,
  at,
}: {
  readonly form: Bound<D>;
  readonly at: K;
}) {
  return (
    <PhotoPicker
      photos={form.draft[at] as readonly string[]}
      onChange={(photos) => form.set(changeOf(at, photos))}
    />
  );
}
