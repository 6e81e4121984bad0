import { millisecondsInHour as hourMs } from "date-fns/constants";
import { builtInBucketIds, builtInRoomIds } from "../logbook/piece/builtIns.ts";
import { streamOf, shopStream, type Entry } from "../logbook/entries/entry.ts";
import type { Run } from "../logbook/fire/fireStates.ts";
import { foldPiece, foldRecipe, foldRoom } from "../logbook/log/fold.ts";
import { foldBucket } from "../logbook/bucket/foldBucket.ts";
import { foldShop } from "../logbook/shop/foldShop.ts";
import type { LearnedDrying } from "../logbook/drying/learnedDrying.ts";
import type { AirReading, Bucket, Piece, Recipe, Room, Shop } from "../logbook/piece/piece.ts";
import type { Surroundings } from "../logbook/piece/surroundings.ts";
import { startingRecipes } from "../trade/startingRecipes.ts";
import { learnedFromRow, learningKey } from "./learningRow.ts";
import { hasState, listedOf, statesOf } from "./listed.ts";
import type { Shelf } from "./projection.ts";
import { readingsIn, readingsSince, type AirSpan } from "./roomReadings.ts";
import type { ShopDb } from "./rows.ts";
import { readStream, type SetAside } from "./streams.ts";

/** Air this long before a coat still tells what the room was like when it went on. */
const beforeCoatMs = 48 * hourMs;
/** So long after its last dip nothing that is read of the air changes what is said of a coat. */
const settledMs = 60 * 24 * hourMs;

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

/**
 * Pieces in work, or with `archivedIds` those of them that are through or put away, with all the sums need beside them.
 */
export function readRack(
  db: ShopDb,
  now: number,
  { archivedIds = null }: { readonly archivedIds?: readonly string[] | null | undefined } = {},
): Promise<RackData> {
  return db.transaction("r", db.projections, db.entries, db.settings, async () => {
    const { states: pieces, rotten } = await listedOf(db, "piece", archivedIds === null ? ["work"] : putAway);
    const asked = archivedIds === null ? pieces : pieces.filter(({ id }) => archivedIds.includes(id));
    const around = await readSurroundings(db, hangingSpans(asked, now));
    return { pieces: asked, rotten, ...around, runs: await runsOf(db, asked) };
  });
}

const putAway: readonly Shelf[] = ["done", "archived"];

/** Pieces that are through or put away, for a list of their names: nothing of their drying is read. */
export const readArchive = (db: ShopDb): Promise<readonly Piece[]> => statesOf(db, "piece", putAway);

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
      ...(await readSurroundings(db, hangingSpans([piece], now))),
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

/** All that the sums need beside a piece, with each room's readings in these spans and the last one. */
export async function readSurroundings(db: ShopDb, spans: readonly AirSpan[]): Promise<Surroundings> {
  const [rooms, recipes, buckets, shop, learned] = await Promise.all([
    readRooms(db),
    readRecipes(db),
    readBuckets(db),
    readShop(db),
    readLearning(db),
  ]);
  const readings = await Promise.all(
    rooms.map(async ({ id }) => [id, await readingsIn(db, id, [...spans, last])] as const),
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

const readLearning = async (db: ShopDb): Promise<LearnedDrying | null> =>
  learnedFromRow((await db.settings.get(learningKey))?.value);

/** The last reading alone, as the one that holds when this opens. */
const last: AirSpan = { from: Infinity, to: Infinity };

/**
 * When pieces hung: from two days before the first coat to the pour, or to now; a shell that was left hanging unpoured
 * is settled after two months. What was true of a coat when it was covered stays true, so its air is read for good.
 */
export function hangingSpans(pieces: readonly Piece[], now: number): readonly AirSpan[] {
  const spans = pieces.flatMap(({ coats, pours }): readonly AirSpan[] => {
    // A summary that is damaged inside is said to be so where it is worked out, not here.
    const [first] = coats ?? [];
    if (first === undefined) return [];
    const wettedAt = coats.reduce(
      (latest, { dippedAt, redips }) => Math.max(latest, dippedAt, ...redips.map(({ at }) => at)),
      -Infinity,
    );
    const settledAt = wettedAt + settledMs;
    const to = pours?.[0]?.at ?? (settledAt < now ? settledAt : Infinity);
    return [{ from: first.dippedAt - beforeCoatMs, to }];
  });
  return joined(spans);
}

/** Spans that overlap as one. */
function joined(spans: readonly AirSpan[]): readonly AirSpan[] {
  const all: AirSpan[] = [];
  for (const span of spans.toSorted((a, b) => a.from - b.from)) {
    const before = all.at(-1);
    if (before !== undefined && span.from <= before.to)
      all[all.length - 1] = { from: before.from, to: Math.max(before.to, span.to) };
    else all.push(span);
  }
  return all;
}

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
