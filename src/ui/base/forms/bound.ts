import type { FieldErrors, NumberFacts } from "./formFields.ts";
import type { Limits } from "../../../logbook/casting/limits.ts";

/** What a part of a form is bound to: the draft, its setter, and what is known of its fields. */
export type Bound<D extends object, N extends string = never> = {
  readonly draft: D;
  readonly set: (changes: Partial<D>) => void;
  readonly errors?: FieldErrors | undefined;
  /** Fields of an entry: unit and range are theirs, and the range is asked when it is saved. */
  readonly fields?: Readonly<Record<N, unknown>> | undefined;
  /** Of a sum that follows each key stroke: the range is said at once. */
  readonly limits?: Limits<D> | undefined;
};

/** The form of a sum: every figure is held to its limits as it is typed. */
export type SumForm<D extends object> = Bound<D> & { readonly limits: Limits<D> };

/** The keys of a draft that hold one kind of value. */
export type KeysFor<D, V> = { [K in keyof D]-?: D[K] extends V ? K : never }[keyof D] & string;

export const changeOf = <D extends object>(at: string, value: unknown): Partial<D> =>
  ({ [at]: value }) as Partial<D>;

export const factsOf = (fields: Readonly<Record<string, unknown>> | undefined, at: string) =>
  fields?.[at] as NumberFacts | undefined;
