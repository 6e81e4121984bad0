import { builtInBucketIds, builtInRoomIds } from "../logbook/builtIns.ts";
import { streamOf, shopStream, type Entry } from "../logbook/entry.ts";
import type { Run } from "../logbook/fireStates.ts";
import { foldPiece, foldRecipe, foldRoom } from "../logbook/fold.ts";
import { foldBucket } from "../logbook/foldBucket.ts";
import { foldShop } from "../logbook/foldShop.ts";
import type { AirReading, Bucket, Piece, Recipe, Room, Shop } from "../logbook/piece.ts";
import type { Surroundings } from "../logbook/standing.ts";
import { startingRecipes } from "../trade/startingRecipes.ts";
import type { ShopLearning } from "../physics/shopLearning.ts";
import { learnedFromRow, learningKey } from "./learningRow.ts";
import { hasState, listedOf, statesOf } from "./listed.ts";
import type { Shelf } from "./projection.ts";
import { readingsSince } from "./roomReadings.ts";
import type { ShopDb } from "./shopDb.ts";
import { readStream, type SetAside } from "./streams.ts";

const hourMs = 3_600_000;
/** Air this long before a coat still tells what the room was like when it went on. */
const beforeCoatMs = 48 * hourMs;
/** Shells hang for weeks between coats; past two months the rack looks no further back. */
const rackReachMs = 60 * 24 * hourMs;

export type RackData = Surroundings & {
  readonly pieces: readonly Piece[];
  /** Streams of pieces whose summary can't be read. */
  readonly rotten?: readonly string[] | undefined;
};
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
  return db.transaction("r", db.projections, db.entries, db.settings, async () => {
    const shelves: readonly Shelf[] = archived ? ["done", "archived"] : ["work"];
    const { states: pieces, rotten } = await listedOf(db, "piece", shelves);
    const since = Math.max(firstCoatAt(pieces, now) - beforeCoatMs, now - rackReachMs);
    return { pieces, rotten, ...(await readSurroundings(db, since)), runs: await runsOf(db, pieces) };
  });
}

/** One piece with its whole log; null when there is no such piece. */
export function readPiece(db: ShopDb, id: string, now: number): Promise<PieceData | null> {
  return db.transaction("r", db.projections, db.entries, db.settings, async () => {
    const { entries, setAside } = await readStream(db, streamOf("piece", id));
    const piece = foldPiece(id, entries);
    if (piece === null) return null;
    return {
      piece,
      entries,
      setAside,
      ...(await readSurroundings(db, firstCoatAt([piece], now) - beforeCoatMs)),
      runs: await runsOf(db, [piece]),
    };
  });
}

/** Name and lines of a piece without its surroundings; null when there is no line of it. */
export async function readPieceLog(
  db: ShopDb,
  id: string,
): Promise<{ readonly name: string | null; readonly entries: readonly Entry[] } | null> {
  const { entries } = await readStream(db, streamOf("piece", id));
  if (entries.length === 0) return null;
  const start = entries.find((entry) => entry.type === "piece-started");
  return { name: start?.type === "piece-started" ? start.body.plan.name : null, entries };
}

export const readRooms = async (db: ShopDb): Promise<readonly Room[]> =>
  withBuiltIn(
    await statesOf(db, "room"),
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
    const room = row?.kind === "room" && hasState(row) ? row.state : foldRoom(id, []);
    return room === null ? null : { room, readings: await readingsSince(db, id, since) };
  });
}

export const readBuckets = async (db: ShopDb): Promise<readonly Bucket[]> =>
  withBuiltIn(
    await statesOf(db, "bucket"),
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

export const readRecipes = async (db: ShopDb): Promise<readonly Recipe[]> =>
  withBuiltIn(
    await statesOf(db, "recipe"),
    startingRecipes.map(({ id }) => foldRecipe(id, [])),
  );

export async function readShop(db: ShopDb): Promise<Shop> {
  const row = await db.projections.get(shopStream);
  return row?.kind === "shop" && hasState(row) ? row.state : foldShop([]);
}

/** All that the sums need beside a piece, with each room's readings from `since` on; with Infinity the last one alone. */
export async function readSurroundings(db: ShopDb, since: number): Promise<Surroundings> {
  const [rooms, recipes, buckets, shop, learned] = await Promise.all([
    readRooms(db),
    readRecipes(db),
    readBuckets(db),
    readShop(db),
    readLearning(db),
  ]);
  const readings = await Promise.all(
    rooms.map(async ({ id }) => [id, await readingsSince(db, id, since)] as const),
  );
  return {
    rooms: byId(rooms),
    readings: new Map(readings),
    recipes: byId(recipes),
    buckets: byId(buckets),
    shop,
    learned,
  };
}

/** The kiln runs these pieces were in, by id. */
async function runsOf(db: ShopDb, pieces: readonly Piece[]): Promise<ReadonlyMap<string, Run>> {
  const ids = [...new Set(pieces.flatMap(({ runIds }) => runIds ?? []))];
  const rows = ids.length === 0 ? [] : await db.projections.bulkGet(ids.map((id) => streamOf("run", id)));
  return byId(rows.flatMap((row) => (row?.kind === "run" && hasState(row) ? [row.state] : [])));
}

const readLearning = async (db: ShopDb): Promise<ShopLearning | null> =>
  learnedFromRow((await db.settings.get(learningKey))?.value);

/** When the first coat of any piece whose wall has not met metal yet went on; now when there is none. */
const firstCoatAt = (pieces: readonly Piece[], now: number): number =>
  pieces.reduce((first, { coats, pours }) => {
    // A summary that is damaged inside is said to be so where it is worked out, not here.
    const [coat] = coats ?? [];
    return coat === undefined || pours?.length > 0 ? first : Math.min(first, coat.dippedAt);
  }, now);

/** The states of a kind, retired ones too, after the built-in ones; a built-in one that was changed stands in its place. */
function withBuiltIn<T extends { readonly id: string }>(
  states: readonly T[],
  builtIn: readonly (T | null)[],
): readonly T[] {
  const all = new Map<string, T>();
  for (const state of builtIn) if (state !== null) all.set(state.id, state);
  for (const state of states) all.set(state.id, state);
  return [...all.values()];
}

const byId = <T extends { readonly id: string }>(all: readonly T[]): ReadonlyMap<string, T> =>
  new Map(all.map((one) => [one.id, one]));
