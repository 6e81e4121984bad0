import type { Stay } from "./hanging.ts";

/** The air of a time, by identity of the first and last cut in each stay. `isWhole`: what lies about the end counts too; else only what lies before it. */
export function airGrounds(
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
