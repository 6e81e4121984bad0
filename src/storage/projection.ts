import { airMovesOf, type AirSince } from "../logbook/air/airLog.ts";
import { stampOf, stampWith } from "../logbook/log/stamp.ts";
import { type Entry, type StreamKind, compareEntries } from "../logbook/entries/entry.ts";
import { parseStream } from "../logbook/entries/entryKinds.ts";
import type { Melt, Pour, Run } from "../logbook/fire/fireStates.ts";
import { recipeFrom, roomFrom } from "../logbook/log/fold.ts";
import { settledLog, type SettledLog } from "../logbook/log/settledLog.ts";
import { bucketFrom } from "../logbook/bucket/foldBucket.ts";
import { meltFrom } from "../logbook/pour/foldMelt.ts";
import { pourFrom } from "../logbook/pour/foldPour.ts";
import { runFrom } from "../logbook/fire/foldRun.ts";
import { shopFrom } from "../logbook/shop/foldShop.ts";
import type { AirReading, Bucket, Piece, Recipe, Room, Shop } from "../logbook/piece/piece.ts";

/** Where a row is looked for: what is in work, pieces on the rack as well as fires, what is through, and what was put away. */
export type Shelf = "work" | "done" | "archived";

type States = {
  readonly piece: Piece;
  readonly room: Room;
  readonly bucket: Bucket;
  readonly recipe: Recipe;
  readonly shop: Shop;
  readonly run: Run;
  readonly melt: Melt;
  readonly pour: Pour;
};
/** What a stream comes to, kept beside it so that a list needs no replay. Can be made again from the log at any time. */
export type ProjectionRow = { readonly [K in StreamKind]: RowOf<K> }[StreamKind];
export type RowOf<K extends StreamKind> = {
  readonly stream: string;
  readonly kind: K;
  readonly shelf: Shelf;
  readonly state: States[K];
  /** Changes with every line that joins the stream or leaves it (`stampOf`); a row of an older program has none. */
  readonly stamp?: number | undefined;
  /** Rooms only: the entry its name and altitude come from; null for a built-in room as it came. */
  readonly setId?: string | null | undefined;
  /** Rooms only: since when the air moved how, which a logger's block may not say for itself. */
  readonly airMoves?: readonly AirSince[] | undefined;
};

/** The row for a stream and all its entries; null where they come to nothing, as a piece that was never started. */
export const projectionOf = (stream: string, entries: readonly Entry[]): ProjectionRow | null =>
  rowOf(settledLog(stream, entries.toSorted(compareEntries)));

/** The same from a log that is settled already. */
export function rowOf({ stream, entries, settled: { standing }, piece }: SettledLog): ProjectionRow | null {
  const split = parseStream(stream);
  if (split === null || entries.length === 0) return null;
  const { kind, id } = split;
  const stamp = stampOf(entries);
  switch (kind) {
    case "piece": {
      const state = piece();
      return state && { stream, kind, shelf: shelfOf(state), state, stamp };
    }
    case "room": {
      const state = roomFrom(id, standing);
      const setId = standing.findLast((entry) => entry.type === "room-set")?.id ?? null;
      const airMoves = airMovesOf(standing);
      return (
        state && { stream, kind, shelf: state.retired ? "archived" : "work", state, setId, airMoves, stamp }
      );
    }
    case "bucket": {
      const state = bucketFrom(id, standing);
      return state && { stream, kind, shelf: state.retired ? "archived" : "work", state, stamp };
    }
    case "recipe": {
      const state = recipeFrom(id, standing);
      return state && { stream, kind, shelf: state.retired === true ? "archived" : "work", state, stamp };
    }
    case "shop":
      return { stream, kind, shelf: "work", state: shopFrom(standing), stamp };
    case "run": {
      const state = runFrom(id, standing);
      return state && { stream, kind, shelf: untilEnded(state), state, stamp };
    }
    case "melt": {
      const state = meltFrom(id, standing);
      return state && { stream, kind, shelf: untilEnded(state), state, stamp };
    }
    case "pour": {
      const state = pourFrom(id, standing);
      return state && { stream, kind, shelf: untilEnded(state), state, stamp };
    }
  }
}

/** A piece is through when it is scrapped, or finished and its outcome told; until then hands may be wanted. */
const shelfOf = (piece: Piece): Shelf =>
  piece.archived
    ? "archived"
    : piece.phase === "scrapped" || (piece.phase === "finished" && piece.outcome !== null)
      ? "done"
      : "work";

const untilEnded = ({ ended }: { readonly ended: object | null }): Shelf =>
  ended === null ? "work" : "done";

/**
 * A room's row with one more line of readings, all newer than the last: the many lines behind it need not be read
 * again. `last` is the newest of them.
 */
export function withReading(row: RowOf<"room">, line: Entry, last: AirReading): RowOf<"room"> {
  const moves = row.airMoves ?? [];
  const [said] = airMovesOf([line]);
  const airMoves = said === undefined || said.air === moves.at(-1)?.air ? moves : [...moves, said];
  // A row without a stamp stays so: a sum begun in the middle would stand for nothing.
  const stamp = row.stamp === undefined ? undefined : stampWith(row.stamp, line);
  return { ...row, state: { ...row.state, last }, airMoves, stamp };
}
