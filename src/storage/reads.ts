import { Dexie } from "dexie";
import { builtInBucketIds, builtInRoomIds } from "../logbook/builtIns.ts";
import { streamOf, shopStream, type Entry, type StreamKind } from "../logbook/entry.ts";
import { foldBucket, foldPiece, foldRecipe, foldRoom, foldShop } from "../logbook/fold.ts";
import type { AirReading, Bucket, Piece, Recipe, Room, Shop } from "../logbook/piece.ts";
import type { Surroundings } from "../logbook/standing.ts";
import { startingRecipes } from "../trade/startingRecipes.ts";
import type { ProjectionRow, RowOf, Shelf } from "./projection.ts";
import { readingsSince } from "./roomReadings.ts";
import type { ShopDb } from "./shopDb.ts";
import { readStream, type SetAside } from "./streams.ts";

const hourMs = 3_600_000;
/** Air this long before a coat still tells what the room was like when it went on. */
const beforeCoatMs = 48 * hourMs;
/** Shells hang for weeks between coats; past two months the rack looks no further back. */
const rackReachMs = 60 * 24 * hourMs;

export type RackData = Surroundings & { readonly pieces: readonly Piece[] };
export type PieceData = Surroundings & {
  readonly piece: Piece;
  /** Every line of the piece in order, struck ones and strikes included. */
  readonly entries: readonly Entry[];
  readonly setAside: readonly SetAside[];
};

/** Pieces in work, or with `archived` those that are through or put away, with all the sums need beside them. */
export function readRack(
  db: ShopDb,
  now: number,
  { archived = false }: { readonly archived?: boolean | undefined } = {},
): Promise<RackData> {
  return db.transaction("r", db.projections, db.entries, async () => {
    const shelves: readonly Shelf[] = archived ? ["done", "archived"] : ["work"];
    const pieces = (await Promise.all(shelves.map((shelf) => onShelf(db, shelf)))).flat();
    const since = Math.max(firstCoatAt(pieces, now) - beforeCoatMs, now - rackReachMs);
    return { pieces, ...(await surroundings(db, since)) };
  });
}

/** One piece with its whole log; null when there is no such piece. */
export function readPiece(db: ShopDb, id: string, now: number): Promise<PieceData | null> {
  return db.transaction("r", db.projections, db.entries, async () => {
    const { entries, setAside } = await readStream(db, streamOf("piece", id));
    const piece = foldPiece(id, entries);
    if (piece === null) return null;
    return {
      piece,
      entries,
      setAside,
      ...(await surroundings(db, firstCoatAt([piece], now) - beforeCoatMs)),
    };
  });
}

export const readRooms = (db: ShopDb): Promise<readonly Room[]> =>
  statesOf(
    db,
    "room",
    builtInRoomIds.map((id) => foldRoom(id, [])),
  );

/** A room with its readings from `since` (epoch ms) on, oldest first, and the one that held before them. */
export function readRoom(
  db: ShopDb,
  id: string,
  since = 0,
): Promise<{ readonly room: Room; readonly readings: readonly AirReading[] } | null> {
  return db.transaction("r", db.projections, db.entries, async () => {
    const row = await db.projections.get(streamOf("room", id));
    const room = row?.kind === "room" ? row.state : foldRoom(id, []);
    return room === null ? null : { room, readings: await readingsSince(db, id, since) };
  });
}

export const readBuckets = (db: ShopDb): Promise<readonly Bucket[]> =>
  statesOf(
    db,
    "bucket",
    builtInBucketIds.map((id) => foldBucket(id, [])),
  );

/** A bucket with every line of its log. */
export async function readBucket(
  db: ShopDb,
  id: string,
): Promise<{ readonly bucket: Bucket; readonly entries: readonly Entry[] } | null> {
  const { entries } = await readStream(db, streamOf("bucket", id));
  const bucket = foldBucket(id, entries);
  return bucket === null ? null : { bucket, entries };
}

export const readRecipes = (db: ShopDb): Promise<readonly Recipe[]> =>
  statesOf(
    db,
    "recipe",
    startingRecipes.map(({ id }) => foldRecipe(id, [])),
  );

export async function readShop(db: ShopDb): Promise<Shop> {
  const row = await db.projections.get(shopStream);
  return row?.kind === "shop" ? row.state : foldShop([]);
}

async function surroundings(db: ShopDb, since: number): Promise<Surroundings> {
  const [rooms, recipes, shop] = await Promise.all([readRooms(db), readRecipes(db), readShop(db)]);
  const readings = await Promise.all(
    rooms.map(async ({ id }) => [id, await readingsSince(db, id, since)] as const),
  );
  return { rooms: byId(rooms), readings: new Map(readings), recipes: byId(recipes), shop };
}

const onShelf = async (db: ShopDb, shelf: Shelf): Promise<readonly Piece[]> => {
  const rows = await db.projections.where("[kind+shelf]").equals(["piece", shelf]).toArray();
  return rows.flatMap((row) => (row.kind === "piece" ? [row.state] : []));
};

/** When the first coat of any piece whose wall has not met metal yet went on; now when there is none. */
const firstCoatAt = (pieces: readonly Piece[], now: number): number =>
  pieces.reduce((first, { coats, pours }) => {
    const [coat] = coats;
    return coat === undefined || pours.length > 0 ? first : Math.min(first, coat.dippedAt);
  }, now);

type Listed = "room" | "bucket" | "recipe";

/** Rows of a kind, retired ones included, after the built-in ones; a built-in one that was changed stands in its place. */
async function statesOf<K extends Listed>(
  db: ShopDb,
  kind: K,
  builtIn: readonly (RowOf<K>["state"] | null)[],
): Promise<readonly RowOf<K>["state"][]> {
  const rows = await db.projections
    .where("[kind+shelf]")
    .between([kind, Dexie.minKey], [kind, Dexie.maxKey], true, true)
    .toArray();
  const all = new Map<string, RowOf<K>["state"]>();
  for (const state of builtIn) if (state !== null) all.set(state.id, state);
  for (const row of rows) if (isKind(row, kind)) all.set(row.state.id, row.state);
  return [...all.values()];
}

const isKind = <K extends StreamKind>(row: ProjectionRow, kind: K): row is ProjectionRow & RowOf<K> =>
  row.kind === kind;

const byId = <T extends { readonly id: string }>(all: readonly T[]): ReadonlyMap<string, T> =>
  new Map(all.map((one) => [one.id, one]));
