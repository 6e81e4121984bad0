import type { LogResult } from "../state/shop.tsx";
import { useFormat } from "../state/useFormat.ts";
import type { Format } from "../format/units.ts";
import { checkFields, type Checked, type DraftOf, type Fields, type ReadOf, startOf } from "./formFields.ts";
import { useForm, type AfterSave, type Form } from "./useForm.ts";

export type EntryForm<F extends Fields, V = ReadOf<F>> = Form<DraftOf<F>> & {
  readonly fields: F;
  /** Reads the draft, each complaint beside its field; null where there is one. */
  readonly read: () => V | null;
  /** Reads the draft and, where nothing is to be complained of, writes it. */
  readonly save: (write: (read: V) => Promise<LogResult>, done?: AfterSave) => Promise<void>;
};

type Ways<F extends Fields, V> = {
  /** What is known to begin with. */
  readonly start?: Partial<DraftOf<F>> | undefined;
  readonly about?: string | undefined;
  /** How the draft is read, where fields speak of each other. */
  readonly check: (draft: DraftOf<F>, format: Format) => Checked<V>;
};

/** A form bound to its fields: draft, ranges, complaints, refusal, and the one way to write it. */
export function useEntryForm<F extends Fields>(
  key: string,
  fields: F,
  ways?: Omit<Ways<F, never>, "check"> & { readonly check?: never },
): EntryForm<F>;
export function useEntryForm<F extends Fields, V>(key: string, fields: F, ways: Ways<F, V>): EntryForm<F, V>;
export function useEntryForm<F extends Fields>(
  key: string,
  fields: F,
  { start, about, check }: Partial<Ways<F, unknown>> = {},
): EntryForm<F, unknown> {
  const format = useFormat();
  const form = useForm<DraftOf<F>>(key, startOf(fields, start), about);
  const read = () => {
    const { draft } = form;
    const found = check === undefined ? checkFields(fields, draft, format) : check(draft, format);
    form.tell(found.ok ? {} : found.errors);
    return found.ok ? found.value : null;
  };
  const save: EntryForm<F, unknown>["save"] = async (write, done) => {
    const value = read();
    if (value !== null) await form.send(() => write(value), done);
  };
  return { ...form, fields, read, save };
}
