import { effective } from "../logbook/effective.ts";
import type { Entry, StreamKind } from "../logbook/entry.ts";
import { parseStream } from "../logbook/entryKinds.ts";
import { foldBucket, foldPiece, foldRecipe, foldRoom, foldShop } from "../logbook/fold.ts";
import type { AirReading, Bucket, Piece, Recipe, Room, Shop } from "../logbook/piece.ts";

/** Where a row is looked for: pieces in work on the rack, those that are through, and what was put away. */
export type Shelf = "work" | "done" | "archived";

type States = {
  readonly piece: Piece;
  readonly room: Room;
  readonly bucket: Bucket;
  readonly recipe: Recipe;
  readonly shop: Shop;
};
/** What a stream comes to, kept beside it so that a list needs no replay. Can be made again from the log at any time. */
export type ProjectionRow = { readonly [K in StreamKind]: RowOf<K> }[StreamKind];
export type RowOf<K extends StreamKind> = {
  readonly stream: string;
  readonly kind: K;
  readonly shelf: Shelf;
  readonly state: States[K];
  /** Rooms only: the entry its name and altitude come from; null for a built-in room as it came. */
  readonly setId?: string | null | undefined;
};

/** The row for a stream and all its entries; null where they come to nothing, as a piece that was never started. */
export function projectionOf(stream: string, entries: readonly Entry[]): ProjectionRow | null {
  const split = parseStream(stream);
  if (split === null || entries.length === 0) return null;
  const { kind, id } = split;
  switch (kind) {
    case "piece": {
      const state = foldPiece(id, entries);
      return state && { stream, kind, shelf: shelfOf(state), state };
    }
    case "room": {
      const state = foldRoom(id, entries);
      const setId = effective(entries).findLast((entry) => entry.type === "room-set")?.id ?? null;
      return state && { stream, kind, shelf: state.retired ? "archived" : "work", state, setId };
    }
    case "bucket": {
      const state = foldBucket(id, entries);
      return state && { stream, kind, shelf: state.retired ? "archived" : "work", state };
    }
    case "recipe": {
      const state = foldRecipe(id, entries);
      return state && { stream, kind, shelf: state.retired === true ? "archived" : "work", state };
    }
    case "shop":
      return { stream, kind, shelf: "work", state: foldShop(entries) };
  }
}

/** A piece is through when it is scrapped, or finished and its outcome told; until then hands may be wanted. */
const shelfOf = (piece: Piece): Shelf =>
  piece.archived
    ? "archived"
    : piece.phase === "scrapped" || (piece.phase === "finished" && piece.outcome !== null)
      ? "done"
      : "work";

/** A room's row with one more reading, newer than the last: the many readings behind it need not be read again. */
export const withReading = (row: RowOf<"room">, reading: AirReading): RowOf<"room"> => ({
  ...row,
  state: { ...row.state, last: reading },
});
