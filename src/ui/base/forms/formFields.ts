import { fields as table, type FieldKey } from "../../../logbook/entries/fields.ts";
import { entryRange, type NumberRange } from "../../../logbook/entries/ranges.ts";
import type { Format, Quantity } from "../format/units.ts";

/** What a form says beside each field: one sentence a field, by the draft's own key. */
export type FieldErrors = Readonly<Record<string, string | undefined>>;

export type Checked<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly errors: FieldErrors };

/** One field of a form: what it starts as, and how what was given is read. A complaint about itself has the key "". */
export type Field<I, O> = {
  readonly start: I;
  readonly read: (given: I, format: Format) => Checked<O>;
};

export type NumberFacts = { readonly quantity: Quantity; readonly range: NumberRange };
export type NumberFieldSpec<O> = Field<number | null, O> & NumberFacts;

/** All fields of one form by the draft's keys. */
export type Fields = Readonly<
  Record<
    string,
    { readonly start: unknown; readonly read: (given: never, format: Format) => Checked<unknown> }
  >
>;

export type DraftOf<F extends Fields> = {
  readonly [K in keyof F]: F[K] extends { readonly start: infer I } ? I : never;
};

export type ReadOf<F extends Fields> = {
  readonly [K in keyof F]: Extract<ReturnType<F[K]["read"]>, { readonly ok: true }>["value"];
};

const fine = <T>(value: T): Checked<T> => ({ ok: true, value });
const fault = (sentence: string) => ({ ok: false, errors: { "": sentence } }) as const;

type FigureSays = {
  readonly remedy: string;
  /** What the complaint calls it, where the form means something narrower than the table's word. */
  readonly what: string;
};

type FigureOwn = FigureSays & {
  /** The form's own unit or range, where it differs from the log's; `why` says what for. */
  readonly own?: Partial<NumberFacts> & { readonly why: string };
};

function figureField<O>(
  key: FieldKey,
  says: FigureOwn,
  empty: Checked<O> | null,
): NumberFieldSpec<number | O> {
  const { quantity = table[key].quantity, range = entryRange(key) } = says.own ?? {};
  const { low, high } = range;
  return {
    start: null,
    quantity,
    range,
    read: (given, format) => {
      const expected = `expected ${format.show(quantity, low)} to ${format.show(quantity, high)}`;
      if (typeof given !== "number" || !Number.isFinite(given))
        return empty ?? fault(`Found no ${says.what}, ${expected}. ${says.remedy}`);
      return given >= low && given <= high
        ? fine(given)
        : fault(`Found ${format.show(quantity, given)} for the ${says.what}, ${expected}. ${says.remedy}`);
    },
  };
}

/** A figure that must be there and lie in its range; the error says what was found, what was expected, what to do. */
export const figure = (key: FieldKey, says: FigureOwn): NumberFieldSpec<number> =>
  figureField<never>(key, says, null);

/** The same for a figure that may be left empty; empty is undefined, so that the entry lacks the key. */
export const figureOrNone = (key: FieldKey, says: FigureOwn): NumberFieldSpec<number | undefined> =>
  figureField(key, says, fine(undefined));

/** The same where the entry keeps an empty figure as null. */
export const figureOrNull = (key: FieldKey, says: FigureOwn): NumberFieldSpec<number | null> =>
  figureField(key, says, fine(null));

const trimmed = (given: unknown): string => (typeof given === "string" ? given.trim() : "");
const tooLong = (text: string, longest: number, what: string) =>
  fault(`Found ${text.length} letters, expected ${longest} at most. Shorten the ${what}.`);

/** Words need no unit to be complained of. */
type Words<O> = { readonly start: string; readonly read: (given: string) => Checked<O> };

/** Words that must be there. */
export const words = (what: string, remedy: string, longest = 2000): Words<string> => ({
  start: "",
  read: (given) => {
    const text = trimmed(given);
    if (text === "") return fault(`Found no ${what}. ${remedy}`);
    return text.length > longest ? tooLong(text, longest, what) : fine(text);
  },
});

const longestNote = 4000;

/** Words that may be left empty; empty is undefined. */
export const wordsOrNone: Field<string, string | undefined> = {
  start: "",
  read: (given) => {
    const text = trimmed(given);
    if (text.length > longestNote) return tooLong(text, longestNote, "note");
    return fine(text === "" ? undefined : text);
  },
};

/** Few words that may be left empty; empty stays empty. */
export const shortWords = (longest: number, complaint: string): Field<string, string> => ({
  start: "",
  read: (given) => (trimmed(given).length > longest ? fault(complaint) : fine(trimmed(given))),
});

/** One of a list; null until chosen. */
export const oneOf = <const T extends string>(values: readonly T[], what: string): Field<T | null, T> => ({
  start: null,
  read: (given) =>
    given !== null && values.includes(given) ? fine(given) : fault(`Nothing chosen for ${what}. Tap one.`),
});

/** What is given is taken as it is: a choice among keys that can't be wrong, a tick, a time. */
export const asGiven = <T>(start: T): Field<T, T> => ({ start, read: fine });

/** A choice that may be left open; open is undefined. */
export const givenOrNone = <T>(): Field<T | null, T | undefined> => ({
  start: null,
  read: (given) => fine(given ?? undefined),
});

/** An id that must be chosen, out of those that can be. */
export const chosen = (complaint: string, among?: readonly string[]): Field<string | null, string> => ({
  start: null,
  read: (given) =>
    typeof given === "string" && (among?.includes(given) ?? true) ? fine(given) : fault(complaint),
});

/** A tick; without it the entry lacks the key. */
export const ticked: Field<boolean, true | undefined> = {
  start: false,
  read: (given) => fine(given ? true : undefined),
};

export const photoIds: Field<readonly string[], readonly string[] | undefined> = {
  start: [],
  read: (given) => fine(given.length === 0 ? undefined : given),
};

/** The draft of a form nothing was written in yet, but for what is known to begin with. */
export function startOf<F extends Fields>(fields: F, known: Partial<DraftOf<F>> = {}): DraftOf<F> {
  const starts = Object.fromEntries(Object.entries(fields).map(([key, { start }]) => [key, start]));
  return { ...starts, ...known } as DraftOf<F>;
}

/** Some of the fields, where the others are not asked. */
export const onlyOf = <F extends Fields, K extends keyof F>(fields: F, keys: readonly K[]): Pick<F, K> =>
  Object.fromEntries(keys.map((key) => [key, fields[key]])) as Pick<F, K>;

/** Reads a draft through its fields; the first complaint a field stands. `across` is asked once each field is fine. */
export function checkFields<F extends Fields>(
  fields: F,
  draft: DraftOf<F>,
  format: Format,
  across: (read: ReadOf<F>) => FieldErrors = () => ({}),
): Checked<ReadOf<F>> {
  const given = draft as Readonly<Record<string, never>>;
  const errors: Record<string, string | undefined> = {};
  const value: Record<string, unknown> = {};
  for (const [key, { read }] of Object.entries(fields)) {
    const found = read(given[key] as never, format);
    if (found.ok) value[key] = found.value;
    else
      for (const [below, sentence] of Object.entries(found.errors))
        errors[below === "" ? key : `${key}.${below}`] = sentence;
  }
  if (Object.keys(errors).length > 0) return { ok: false, errors };
  const between = across(value as ReadOf<F>);
  return Object.values(between).some((sentence) => sentence !== undefined)
    ? { ok: false, errors: between }
    : { ok: true, value: value as ReadOf<F> };
}

/** Rows of one kind, each read through the same fields; a complaint stands at its own row. */
export function rowsOf<F extends Fields, O>(
  fields: F,
  {
    most,
    none,
    tooMany,
    toRow,
  }: {
    readonly most: number;
    readonly none: string;
    readonly tooMany: (count: number) => string;
    readonly toRow: (read: ReadOf<F>) => O;
  },
): Field<readonly DraftOf<F>[], readonly O[]> {
  return {
    start: [],
    read: (given, format) => {
      if (given.length === 0) return fault(none);
      if (given.length > most) return fault(tooMany(given.length));
      const read = given.map((row) => checkFields(fields, row, format));
      const errors = read.flatMap((row, at) =>
        row.ok
          ? []
          : Object.entries(row.errors).map(([key, sentence]) => [`${at}.${key}`, sentence] as const),
      );
      if (errors.length > 0) return { ok: false, errors: Object.fromEntries(errors) };
      return fine(read.flatMap((row) => (row.ok ? [toRow(row.value)] : [])));
    },
  };
}

/** A body without the keys that say nothing, so that a log and its backup are the same to the letter. */
export function withoutEmpty<T extends object>(body: T): T {
  return Object.fromEntries(Object.entries(body).filter(([, value]) => value !== undefined)) as T;
}
