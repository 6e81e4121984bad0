import type { StreamKind } from "../logbook/entries/entry.ts";
import type { ProjectionRow, RowOf, Shelf } from "./projection.ts";
import type { ShopDb } from "./rows.ts";

const everywhere: readonly Shelf[] = ["work", "done", "archived"];

/** The states of a kind that lie on these shelves, shelf after shelf; a row that holds none is left out. */
export async function statesOf<K extends StreamKind>(
  db: ShopDb,
  kind: K,
  shelves: readonly Shelf[] = everywhere,
): Promise<readonly RowOf<K>["state"][]> {
  return sorted(await Promise.all(lying(db, kind, shelves)), kind).states;
}

export type Listed<K extends StreamKind> = {
  readonly states: readonly RowOf<K>["state"][];
  /** Streams whose row holds no state: making the summaries again mends them. */
  readonly rotten: readonly string[];
  /** The stamps of the others, where their rows have one. */
  readonly stamps: readonly (readonly [stream: string, stamp: number])[];
};

/** The same, with the streams of the rows that hold no state, and the stamps of those that do. */
export async function listedOf<K extends StreamKind>(
  db: ShopDb,
  kind: K,
  shelves: readonly Shelf[] = everywhere,
): Promise<Listed<K>> {
  return sorted(await Promise.all(lying(db, kind, shelves)), kind);
}

// A question a shelf: one for several would go through the rows by cursor, one at a time.
const lying = (db: ShopDb, kind: StreamKind, shelves: readonly Shelf[]) =>
  shelves.map((shelf) => db.projections.where("[kind+shelf]").equals([kind, shelf]).toArray());

function sorted<K extends StreamKind>(found: readonly (readonly ProjectionRow[])[], kind: K): Listed<K> {
  const rows = found.flat().filter((row) => isKind(row, kind));
  const [sound, rotten] = [rows.filter(hasState), rows.filter((row) => !hasState(row))];
  return {
    states: sound.map(({ state }) => state),
    rotten: rotten.map(({ stream }) => stream),
    stamps: sound.flatMap(stampsOf),
  };
}

/** A row's stamp; none where an older program wrote it. */
export const stampsOf = ({ stream, stamp }: ProjectionRow): readonly (readonly [string, number])[] =>
  stamp === undefined ? [] : [[stream, stamp]];

/** A row comes from the store, where a fault of the disk or of an older program may have left anything. */
export const hasState = ({ state }: { readonly state: unknown }): boolean =>
  typeof state === "object" && state !== null;

const isKind = <K extends StreamKind>(row: ProjectionRow, kind: K): row is ProjectionRow & RowOf<K> =>
  row.kind === kind;
