import type { Stay } from "../air/hanging.ts";

/** All that a result rests on: numbers as text, the air by its first and last cut in each stay. */
export type Rest = { readonly text: string; readonly air: readonly unknown[] };

/** A result beside what it rests on. */
export type Kept<T> = Rest & T;

/** Two hundred pieces of twenty coats; a kept coat is some kilobytes. */
const mostKept = 4000;

/** The air of a time, by identity. `isWhole`: what lies about the end counts too; else only what lies before it. */
export function restOfAir(
  stays: readonly Stay[],
  span: { readonly from: number; readonly until: number; readonly isWhole: boolean },
): readonly unknown[] {
  return stays.flatMap((stay) => airOf(stay, span));
}

function airOf(
  { from: begin, to: end, air, ordinary }: Stay,
  { from, until, isWhole }: { from: number; until: number; isWhole: boolean },
): readonly unknown[] {
  if (begin > until || end < from) return [];
  const first = Math.max(begin, from);
  const last = Math.min(end, until);
  if (air === null) return [first, last, ordinary];
  const lastIndex = air.indexAt(last);
  const isAhead = !isWhole && air.cutAt(lastIndex)?.at === last;
  return [
    first,
    last,
    air.pocketSM,
    ...(first < air.startsAt ? [air.startsAt, ordinary] : []),
    air.cutAt(air.indexAt(first)),
    air.cutAt(isAhead ? Math.max(0, lastIndex - 1) : lastIndex),
  ];
}

export const isSame = (a: Rest, b: Rest): boolean =>
  a.text === b.text && a.air.length === b.air.length && a.air.every((value, i) => value === b.air[i]);

/** Asked for last goes to the end; what was not asked for the longest is let go. */
export function keep<T>(kept: Map<string, T>, id: string, value: T): void {
  kept.delete(id);
  kept.set(id, value);
  const [oldest] = kept.keys();
  if (kept.size > mostKept && oldest !== undefined) kept.delete(oldest);
}
