import type { ReactNode } from "react";
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

type FigurePart<D extends object, N extends string, K> = Part<D, N, K> &
  Also<D, number | null> & { readonly min?: number | undefined; readonly max?: number | undefined };

/**
 * A figure of the form. `min` and `max` are said at the key stroke; without them the form's limits are, and of an
 * entry only that it can't be below nothing: its range is asked when it is saved.
 */
export function NumberOf<D extends object, N extends string, K extends N & KeysFor<D, number | null>>(
  props: FigurePart<D, N, K> & { readonly quantity?: never },
): ReactNode;
/** The same of a sum, whose form has no fields: the unit is named here. */
export function NumberOf<D extends object, K extends KeysFor<D, number | null | undefined>>(
  props: FigurePart<D, never, K> & { readonly quantity: Quantity },
): ReactNode;
export function NumberOf<D extends object, K extends keyof D & string>(
  props: FigurePart<D, string, K> & { readonly quantity?: Quantity | undefined },
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

/** One of a few, as keys. Where the draft may hold none: `empty` is a key for that, `unset` the one shown for it. */
export function PickOf<
  D extends object,
  K extends KeysFor<D, string | null | undefined>,
  N extends string = never,
>({
  form,
  at,
  also,
  options,
  empty,
  unset,
  ...rest
}: Part<D, N, K> &
  Also<D, NonNullable<D[K]> & string> & {
    readonly options: readonly ChoiceOption<NonNullable<D[K]> & string>[];
    readonly empty?: string | undefined;
    readonly unset?: (NonNullable<D[K]> & string) | undefined;
  }) {
  type Value = NonNullable<D[K]> & string;
  const none = "none" as Value;
  const found = (form.draft[at] as Value | null | undefined) ?? unset ?? null;
  return (
    <PickField
      {...rest}
      options={empty === undefined ? options : [...options, { value: none, label: empty }]}
      value={empty === undefined ? found : (found ?? none)}
      onChange={(value) => {
        const chosen = empty !== undefined && value === none ? null : value;
        form.set({ ...changeOf<D>(at, chosen), ...(chosen === null ? {} : also?.(chosen)) });
      }}
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

type Items<V> = V extends readonly (infer T extends string)[] ? T : never;

/** Any number out of a list. */
export function TickOf<D extends object, K extends KeysFor<D, readonly string[]>, N extends string = never>({
  form,
  at,
  also,
  label,
  options,
}: Omit<Part<D, N, K>, "hint"> &
  Also<D, D[K]> & {
    readonly options: readonly {
      readonly value: Items<D[K]>;
      readonly label: string;
      readonly hint?: string;
    }[];
  }) {
  return (
    <TickList
      label={label}
      options={options}
      ticked={form.draft[at] as readonly Items<D[K]>[]}
      onChange={(value) => form.set({ ...changeOf<D>(at, value), ...also?.(value as D[K]) })}
      error={form.errors?.[at]}
    />
  );
}

/** One thing that is so or not, as a tick under its heading. */
export function FlagOf<D extends object, K extends KeysFor<D, boolean>, N extends string = never>({
  form,
  at,
  label,
  name,
  hint,
}: Part<D, N, K> & { readonly name: string }) {
  return (
    <TickList
      label={label}
      options={[{ value: at, label: name, ...(hint === undefined ? {} : { hint }) }]}
      ticked={form.draft[at] === true ? [at] : []}
      onChange={(ticked) => form.set(changeOf(at, ticked.length > 0))}
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
export function PhotosOf<D extends object>({
  form,
  at,
}: {
  readonly form: Bound<D>;
  readonly at: KeysFor<D, readonly string[]>;
}) {
  return (
    <PhotoPicker
      photos={form.draft[at] as readonly string[]}
      onChange={(photos) => form.set(changeOf(at, photos))}
    />
  );
}
