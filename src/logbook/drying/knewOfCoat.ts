import { millisecondsInDay as dayMs } from "date-fns/constants";
import { countUpTo } from "../air/airLine.ts";
import type { SaidOfBeneath } from "../entries/pieceBodies.ts";
import { stampOf, stampOfNumbers, stampSpan } from "../log/stamp.ts";
import type { AirReading, Coat, Piece } from "../piece/piece.ts";
import type { Surroundings } from "../piece/surroundings.ts";
import type { KnowsAnew } from "./said.ts";
import { wettedAt } from "./dryMinimum.ts";

/** So long after its last dip nothing that is read of the air changes what is said of a coat. */
export const settledMs = 60 * dayMs;

type Marked = { readonly at: number; readonly mark: number };
/** Lines of one sort: how many, and the sum of their marks; each can be told apart in it. */
type Known = {
  readonly count: number;
  readonly mark: number;
  readonly lines: () => readonly Marked[];
  /** Sums the mark would be without one line, where taking it out lets another in. */
  readonly instead: readonly { readonly at: number; readonly mark: number }[];
};

type Span = { readonly piece: Piece; readonly coat: Coat; readonly until: number };

/** What the log holds of a coat's time up to `until`, epoch ms: the air about it, and what was seen and weighed of it. */
export function knewOfCoat(span: Span, surroundings: Pick<Surroundings, "readings">): SaidOfBeneath["knew"] {
  return { air: tokenOf(airOf(span, surroundings)), checks: tokenOf(checksOf(span)) };
}

/** What came to the log, or left it, since it held `then`; empty where nothing has. */
export function knowsAnew(
  then: SaidOfBeneath["knew"],
  span: Span,
  surroundings: Pick<Surroundings, "readings">,
): readonly KnowsAnew[] {
  return [
    ...anew("air", then.air, airOf(span, surroundings)),
    ...anew("checks", then.checks, checksOf(span)),
  ];
}

const tokenOf = ({ count, mark }: Known): string => `${count} ${mark.toString(36)}`;

const less = (sum: number, mark: number): number => (sum - mark + stampSpan) % stampSpan;

function anew(of: KnowsAnew["of"], then: string, now: Known): readonly KnowsAnew[] {
  if (then === tokenOf(now)) return [];
  const [counted = "", marked = ""] = then.split(" ");
  const [count, mark] = [Number(counted), Number.parseInt(marked, 36)];
  const more = now.count - count;
  if (!Number.isSafeInteger(more) || more === 0) {
    const replaced = now.instead.find((one) => one.mark === mark);
    if (replaced !== undefined) return [{ of, how: "added", count: 1, at: replaced.at }];
    return [{ of, how: "changed", count: 0, at: null }];
  }
  if (more < 0) return [{ of, how: "struck", count: -more, at: null }];
  const one = more > 1 ? undefined : now.lines().find((line) => less(now.mark, line.mark) === mark);
  return [{ of, how: "added", count: more, at: one?.at ?? null }];
}

/** The readings of the rooms it hung in while the coat was the outer one, and the one that held when it went on. */
function airOf({ piece, coat, until }: Span, { readings }: Pick<Surroundings, "readings">): Known {
  const to = Math.min(until, wettedAt(coat) + settledMs);
  const parts = piece.rooms.flatMap(({ roomId, from }, i) => {
    const begin = i === 0 ? coat.dippedAt : Math.max(coat.dippedAt, from);
    const end = Math.min(to, piece.rooms[i + 1]?.from ?? Infinity);
    const all = readings.get(roomId);
    if (all === undefined || end < begin) return [];
    const before = countUpTo(all, begin);
    return [{ all, first: Math.max(0, before - 1), held: before > 0, end: countUpTo(all, end) }];
  });
  const mark = parts.reduce((sum, { all, first, end }) => (sum + sumOf(all, first, end)) % stampSpan, 0);
  return {
    count: parts.reduce((sum, { first, end }) => sum + end - first, 0),
    mark,
    lines: () =>
      parts.flatMap(({ all, first, end }) =>
        all.slice(first, end).map((reading) => ({ at: reading.at, mark: markOf(reading) })),
      ),
    instead: parts.flatMap(({ all, first, held }) => {
      const [before, holds] = [all[first - 1], all[first]];
      if (!held || before === undefined || holds === undefined) return [];
      return [{ at: holds.at, mark: (less(mark, markOf(holds)) + markOf(before)) % stampSpan }];
    }),
  };
}

/** What was seen of the coat, the weighings of it before its dip, and its own times. */
function checksOf({ piece, coat, until }: Span): Known {
  const index = piece.coats.findIndex(({ id }) => id === coat.id);
  const lines = [
    { id: "dip", at: coat.dippedAt },
    ...coat.redips.filter(({ at }) => at <= until),
    ...piece.dryness.filter(({ coatId, at }) => coatId === coat.id && at <= until),
    ...piece.weighings.filter(({ coats, at }) => coats === index && at <= coat.dippedAt),
  ].map(({ id, at }) => ({ at, mark: stampOf([{ id, at, recordedAt: 0 }]) }));
  return {
    count: lines.length,
    mark: lines.reduce((sum, { mark }) => (sum + mark) % stampSpan, 0),
    lines: () => lines,
    instead: [],
  };
}

const sums = new WeakMap<readonly AirReading[], Float64Array>();

/** By what was read, not by its line: written again with the same numbers it says the same. */
const markOf = ({ airC, rh, air, at }: AirReading): number => stampOfNumbers([at, airC, rh], air);

/** The sum of a stretch of a room's readings; each list is gone through once, whatever coats ask of it. */
function sumOf(all: readonly AirReading[], first: number, end: number): number {
  let upTo = sums.get(all);
  if (upTo === undefined) {
    upTo = new Float64Array(all.length + 1);
    for (const [i, reading] of all.entries()) upTo[i + 1] = ((upTo[i] ?? 0) + markOf(reading)) % stampSpan;
    sums.set(all, upTo);
  }
  return less(upTo[end] ?? 0, upTo[first] ?? 0);
}
