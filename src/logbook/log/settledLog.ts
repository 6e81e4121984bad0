import { compareEntries, type Entry } from "../entries/entry.ts";
import { parseStream } from "../entries/entryKinds.ts";
import type { Piece } from "../piece/piece.ts";
import { evolvePiece } from "../piece/evolvePiece.ts";
import { settleOrdered, type Settled } from "./effective.ts";
import { pieceFrom } from "./fold.ts";

/** One stream's log, sorted and settled once: what a command is decided on and what its row is made from. */
export type SettledLog = {
  readonly stream: string;
  /** In order of the log, what was struck and the strikes too. */
  readonly entries: readonly Entry[];
  readonly settled: Settled;
  /** The piece as all of this log tells it, folded when first asked for; null in the log of anything else. */
  readonly piece: () => Piece | null;
};

/** The log of a stream. `ordered` are its entries alone, in the order of `compareEntries`. */
export function settledLog(stream: string, ordered: readonly Entry[]): SettledLog {
  const settled = settleOrdered(ordered);
  return { stream, entries: ordered, settled, piece: once(() => pieceIn(stream, settled)) };
}

/**
 * The log with one entry more. A plain entry leaves the strikes as they are, and at the end of the log it also
 * carries the piece on by one step; only a strike has the log settled anew, only what lies further back folds anew.
 */
export function withEntry(log: SettledLog, entry: Entry): SettledLog {
  const { stream, entries, settled } = log;
  const added = placed(entries, entry);
  const isAimedAt = (other: Entry): boolean =>
    other.type === "entry-struck" && other.body.struckId === entry.id;
  if (entry.type === "entry-struck" || entries.some(isAimedAt)) return settledLog(stream, added);
  const next: Settled = { ...settled, standing: placed(settled.standing, entry) };
  return { stream, entries: added, settled: next, piece: once(() => pieceWith(log, entry, next)) };
}

function pieceWith(log: SettledLog, entry: Entry, next: Settled): Piece | null {
  const before = log.piece();
  return before !== null && entry.type !== "piece-started" && next.standing.at(-1) === entry
    ? evolvePiece(before, entry, next.follow)
    : pieceIn(log.stream, next);
}

function pieceIn(stream: string, settled: Settled): Piece | null {
  const { kind, id } = parseStream(stream) ?? {};
  return kind === "piece" && id !== undefined ? pieceFrom(id, settled) : null;
}

/** Puts an entry in its place; nearly always that is the last. */
function placed(ordered: readonly Entry[], entry: Entry): readonly Entry[] {
  const after = ordered.findLastIndex((other) => compareEntries(other, entry) <= 0);
  return ordered.toSpliced(after + 1, 0, entry);
}

function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | null = null;
  return () => (made ??= { value: make() }).value;
}
