import { millisecondsInMinute as minuteMs } from "date-fns/constants";

/** A piece that waits for a coat. Times are epoch ms. */
export type DipWish = {
  readonly id: string;
  /** What goes on in one dip: the same bucket and kind of coat. */
  readonly group: string;
  /** When it is ready by the likely and by the late guess: both the present when it is ready now. */
  readonly likely: number | null;
  readonly late: number | null;
  /** A prime coat should be covered by then; null where nothing presses. */
  readonly coverBy: number | null;
};

export type Span = { readonly from: number; readonly to: number };

export type ProposedPiece = {
  readonly id: string;
  /** The guess by which it is ready at that moment. */
  readonly by: "late" | "likely";
  /** True when its prime coat will have hung bare past its time even so. */
  readonly isBareTooLong: boolean;
};

export type Visit = {
  readonly at: number;
  readonly dips: readonly { readonly group: string; readonly pieces: readonly ProposedPiece[] }[];
};

export type DipProposal = {
  readonly visits: readonly Visit[];
  readonly left: readonly { readonly id: string; readonly why: "no-time" | "after-the-hours" }[];
};

const roundMs = 5 * minuteMs;

/** A wish in the first of the hours that serve it: the earliest and the latest moment in them. */
type Placed = ProposedPiece & {
  readonly group: string;
  readonly span: number;
  readonly from: number;
  readonly to: number;
};

/**
 * When to go to the bucket, and with which pieces: one coat ahead, between `now` and the end of `hours`.
 *
 * Each piece goes in the first of the hours in which it is ready by the late guess; by the likely one only where the
 * late one is unknown or lies past all hours, or its prime coat would hang bare too long otherwise. Within these hours it takes as few
 * visits as can be (points through intervals, the earliest end first), each as soon as its last piece is ready,
 * rounded up to five minutes where all can wait. Overlapping hours are taken as one.
 */
export function dipProposal({
  wishes,
  hours,
  now,
}: {
  readonly wishes: readonly DipWish[];
  readonly hours: readonly Span[];
  readonly now: number;
}): DipProposal {
  const spans = joined(hours, now);
  const placed: Placed[] = [];
  const left: { id: string; why: "no-time" | "after-the-hours" }[] = [];
  for (const wish of wishes) {
    const place = placeOf(wish, spans, now);
    if (place !== null) placed.push(place);
    else left.push({ id: wish.id, why: (wish.late ?? wish.likely) === null ? "no-time" : "after-the-hours" });
  }
  const visits = spans.flatMap((_, i) => visitsWithin(placed.filter(({ span }) => span === i)));
  return { visits, left };
}

/** The hours from now on, in order, those that touch as one. */
function joined(hours: readonly Span[], now: number): readonly Span[] {
  const ahead = hours
    .map(({ from, to }) => ({ from: Math.max(from, now), to }))
    .filter(({ from, to }) => to >= from)
    .toSorted((a, b) => a.from - b.from);
  const spans: Span[] = [];
  for (const span of ahead) {
    const last = spans.at(-1);
    if (last === undefined || span.from > last.to) spans.push(span);
    else spans[spans.length - 1] = { from: last.from, to: Math.max(last.to, span.to) };
  }
  return spans;
}

function placeOf(wish: DipWish, spans: readonly Span[], now: number): Placed | null {
  const { id, group, coverBy } = wish;
  const placeBy = (by: "late" | "likely"): Placed | null => {
    const ready = wish[by];
    if (ready === null) return null;
    const readyAt = Math.max(ready, now);
    const index = spans.findIndex(({ to }) => to >= readyAt);
    const span = spans[index];
    if (span === undefined) return null;
    const from = Math.max(readyAt, span.from);
    const to = Math.max(from, Math.min(span.to, coverBy ?? Infinity));
    return { id, group, by, span: index, from, to, isBareTooLong: coverBy !== null && from > coverBy };
  };
  const late = placeBy("late");
  if (late !== null && !late.isBareTooLong) return late;
  const likely = placeBy("likely");
  if (late === null || likely === null) return late ?? likely;
  return likely.from < late.from ? likely : late;
}

function visitsWithin(placed: readonly Placed[]): readonly Visit[] {
  const visits: Visit[] = [];
  let waiting = placed;
  for (;;) {
    if (waiting.length === 0) return visits;
    const firstEnd = Math.min(...waiting.map(({ to }) => to));
    const together = waiting.filter(({ from }) => from <= firstEnd);
    waiting = waiting.filter(({ from }) => from > firstEnd);
    const soonest = Math.max(...together.map(({ from }) => from));
    const rounded = Math.ceil(soonest / roundMs) * roundMs;
    visits.push({ at: rounded <= firstEnd ? rounded : soonest, dips: dipsOf(together) });
  }
}

function dipsOf(together: readonly Placed[]): Visit["dips"] {
  const groups = new Map<string, ProposedPiece[]>();
  for (const { id, group, by, isBareTooLong } of together) {
    const pieces = groups.get(group) ?? [];
    groups.set(group, pieces);
    pieces.push({ id, by, isBareTooLong });
  }
  return [...groups].map(([group, pieces]) => ({ group, pieces }));
}
