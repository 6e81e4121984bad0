import { z } from "zod";
import type { NumberRange } from "../../../logbook/entries/ranges.ts";
import type { Format, Quantity } from "../format/units.ts";

/** What a form says beside each field: one sentence a field, by the draft's own key. */
export type FieldErrors = Readonly<Record<string, string | undefined>>;

export type FigureLimits = {
  readonly what: string;
  readonly quantity: Quantity;
  readonly range: NumberRange;
  readonly remedy: string;
};

/** A figure that must be there and lie in its range; the error says what was found, what was expected, what to do. */
export function figure(format: Format, { what, quantity, range: { low, high }, remedy }: FigureLimits) {
  const expected = `expected ${format.show(quantity, low)} to ${format.show(quantity, high)}`;
  const outside = (issue: { readonly input?: unknown }) =>
    `Found ${format.show(quantity, Number(issue.input))} for the ${what}, ${expected}. ${remedy}`;
  return z
    .number({ error: `Found no ${what}, ${expected}. ${remedy}` })
    .min(low, { error: outside })
    .max(high, { error: outside });
}

/** The same for a figure that may be left empty; empty is null. */
export const figureOrNone = (format: Format, limits: FigureLimits) => figure(format, limits).nullable();

const lettersIn = (input: unknown): number => (typeof input === "string" ? input.length : 0);

/** Words that must be there. */
export const words = (what: string, remedy: string, longest = 2000) =>
  z
    .string()
    .trim()
    .min(1, { error: `Found no ${what}. ${remedy}` })
    .max(longest, {
      error: (issue) =>
        `Found ${lettersIn(issue.input)} letters, expected ${longest} at most. Shorten the ${what}.`,
    });

/** Words that may be left empty; empty is undefined. */
export const wordsOrNone = z
  .string()
  .trim()
  .max(4000, {
    error: (issue) => `Found ${lettersIn(issue.input)} letters, expected 4000 at most. Shorten the note.`,
  })
  .transform((text) => (text === "" ? undefined : text));

/** One of a list; null until chosen. */
export const oneOf = <const T extends string>(values: readonly T[], what: string) =>
  z.enum(values as unknown as readonly [T, ...T[]], { error: `Nothing chosen for ${what}. Tap one.` });

export const photoIds = z.array(z.string()).transform((ids) => (ids.length === 0 ? undefined : ids));

export type Checked<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly errors: FieldErrors };

/** Reads a draft through its schema; the first complaint a field stands. */
export function check<T>(schema: z.ZodType<T>, draft: unknown): Checked<T> {
  const read = schema.safeParse(draft);
  if (read.success) return { ok: true, value: read.data };
  const errors: Record<string, string> = {};
  for (const issue of read.error.issues) errors[issue.path.join(".")] ??= issue.message;
  return { ok: false, errors };
}

/** A body without the keys that say nothing, so that a log and its backup are the same to the letter. */
export function withoutEmpty<T extends object>(body: T): T {
  return Object.fromEntries(Object.entries(body).filter(([, value]) => value !== undefined)) as T;
}
