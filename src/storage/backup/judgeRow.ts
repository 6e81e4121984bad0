import { envelopeSchema, parseEntry, type ParseFault } from "../entrySchema.ts";
import type { StoredEntry } from "../rows.ts";

/**
 * What a line of a backup is worth: "entry" can be read; "aside" can't, by this program, and is kept as it is, as it
 * was where it came from; "bad" can't be kept either.
 */
export type Judged =
  | { readonly kind: "entry" | "aside"; readonly row: StoredEntry; readonly fault: ParseFault | null }
  | { readonly kind: "bad"; readonly fault: ParseFault };

/** `mayBeAside`: the line's own checksum holds, or it was told apart where it was saved. A newer one always may. */
export function judgeRow(row: unknown, mayBeAside: boolean): Judged {
  const parsed = parseEntry(row);
  if (parsed.ok) return { kind: "entry", row: row as StoredEntry, fault: null };
  const { fault } = parsed;
  const may = mayBeAside || fault.code === "newer-version";
  return may && isKeepable(row) ? { kind: "aside", row, fault } : { kind: "bad", fault };
}

/** A logger's day of a reading every ten seconds, told by a newer program, is still well below. */
const keepableLetters = 1_000_000;
/** Far deeper than any entry; what goes on without end can't be put in the store. */
const keepableDepth = 40;

const isShallow = (value: unknown, left: number): boolean =>
  typeof value !== "object" ||
  value === null ||
  (left > 0 && Object.values(value).every((inner) => isShallow(inner, left - 1)));

/** Only what the store needs of a line is asked: that it can be found again and put in its place. */
function isKeepable(value: unknown): value is StoredEntry {
  try {
    return (
      envelopeSchema.safeParse(value).success &&
      isShallow(value, keepableDepth) &&
      JSON.stringify(value).length <= keepableLetters
    );
  } catch {
    // Nested so deep that it can't be written down again.
    return false;
  }
}

/** A value as text with its keys in order, so that two copies of one line read the same however they were written. */
export const canonical = (value: unknown): string =>
  JSON.stringify(value, (_key, inner: unknown) =>
    typeof inner === "object" && inner !== null && !Array.isArray(inner)
      ? Object.fromEntries(Object.entries(inner).sort(([a], [b]) => (a < b ? -1 : 1)))
      : inner,
  );
