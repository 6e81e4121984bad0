/** An answer beside all it rests on: stamps, figures, words, and objects that never change. */
type Kept = { readonly grounds: readonly unknown[]; readonly value: unknown };

/**
 * What was worked out before, by kind and id, for the next time it is asked. Whoever asks again and again holds one
 * and hands it in; answers are the same with or without it. What streams come to counts by their stamps.
 */
export type Memo = Map<string, Map<string, Kept>>;

export const makeMemo = (): Memo => new Map();

/** Two hundred pieces of twenty coats; a kept coat is some kilobytes. */
const mostKept = 4000;

/** An answer of this kind; each kind has one type, given by the one function that keeps it. */
type Place = { readonly memo: Memo; readonly kind: string; readonly id: string };

/**
 * What is kept, where it rests on the same; else null. `grounds` may be asked of the kept answer itself, as where it
 * says how far it went.
 */
export function recall<T>(
  { memo, kind, id }: Place,
  grounds: readonly unknown[] | ((value: T) => readonly unknown[]),
): T | null {
  const all = memo.get(kind);
  const kept = all?.get(id);
  if (all === undefined || kept === undefined) return null;
  const value = kept.value as T;
  if (!isSame(kept.grounds, typeof grounds === "function" ? grounds(value) : grounds)) return null;
  // Asked for last goes to the end: what was not asked for the longest is let go first.
  all.delete(id);
  all.set(id, kept);
  return value;
}

/** Keeps an answer in place of the one before, and no more than `most` of its kind. */
export function keep<T>(
  { memo, kind, id }: Place,
  { grounds, value, most = mostKept }: { grounds: readonly unknown[]; value: T; most?: number },
): T {
  const all = memo.get(kind) ?? new Map<string, Kept>();
  memo.set(kind, all);
  all.delete(id);
  all.set(id, { grounds, value });
  const [oldest] = all.keys();
  if (all.size > most && oldest !== undefined) all.delete(oldest);
  return value;
}

/** The answer that is kept, or made now and kept; `make` is given the one before, whatever it rested on. */
export function remembered<T extends object>(
  place: Place,
  grounds: readonly unknown[],
  make: (before: T | null) => T,
): T {
  const { memo, kind, id } = place;
  const before = (memo.get(kind)?.get(id)?.value ?? null) as T | null;
  return recall<T>(place, grounds) ?? keep(place, { grounds, value: make(before) });
}

const isSame = (a: readonly unknown[], b: readonly unknown[]): boolean =>
  a.length === b.length && a.every((value, i) => value === b[i]);

/** What streams came to, by stream: the same stamp stands for the same lines, read as far. */
export type Stamps = ReadonlyMap<string, string | number>;

/** A stream's stamp as a ground. One without a stamp, as of an older store, is the same as nothing, not even itself. */
export const groundOf = (stamps: Stamps | undefined, stream: string): unknown =>
  stamps?.get(stream) ?? Symbol(stream);
