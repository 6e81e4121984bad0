import { millisecondsInHour as hourMs } from "date-fns/constants";
import { builtInBucketIds, builtInRoomIds } from "../logbook/piece/builtIns.ts";
import { streamOf, shopStream, type Entry } from "../logbook/entries/entry.ts";
import { foldPiece, foldRecipe, foldRoom } from "../logbook/log/fold.ts";
import { foldBucket } from "../logbook/bucket/foldBucket.ts";
import { foldShop } from "../logbook/shop/foldShop.ts";
import { settledMs } from "../logbook/drying/knewOfCoat.ts";
import { learningStamp } from "../logbook/drying/dryingMemory.ts";
import { stampOf } from "../logbook/log/stamp.ts";
import type { AirReading, Bucket, Piece, ProvenLoad, Recipe, Room, Shop } from "../logbook/piece/piece.ts";
import type { Surroundings } from "../logbook/piece/surroundings.ts";
import { startingRecipes } from "../trade/startingRecipes.ts";
import { learnedFromRow, learningKey } from "./learningRow.ts";
import { provenFromRow, provenKey } from "./provenRow.ts";
import { hasState, listedOf, stampsOf, statesOf } from "./listed.ts";
import type { RowOf, Shelf } from "./projection.ts";
import { readingsIn, readingsSince, type AirSpan } from "./roomReadings.ts";
import type { ShopDb } from "./rows.ts";
import { readStream, type SetAside } from "./streams.ts";
import { astrayLines, isSummaryRotten } from "./unread.ts";

/** Air this long before a coat still tells what the room was like when it went on. */
const beforeCoatMs = 48 * hourMs;

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
  /** The row the rack would show is damaged; the piece here is made from its log. */
  readonly isSummaryRotten?: boolean | undefined;
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
    const {
      states: pieces,
      rotten,
      stamps,
    } = await listedOf(db, "piece", archivedIds === null ? ["work"] : putAway);
    const asked = archivedIds === null ? pieces : pieces.filter(({ id }) => archivedIds.includes(id));
    const around = await readSurroundings(db, hangingSpans(asked, now));
    return { pieces: asked, rotten, ...(await withRuns(db, asked, { around, stamps })) };
  });
}

const putAway: readonly Shelf[] = ["done", "archived"];

/** Pieces that are through or put away, for a list of their names: nothing of their drying is read. */
export const readArchive = (db: ShopDb): Promise<readonly Piece[]> => statesOf(db, "piece", putAway);

/** The names of these pieces, in this order; those not on this device are left out. */
export async function readPieceNames(db: ShopDb, ids: readonly string[]): Promise<readonly string[]> {
  const rows = await db.projections.bulkGet(ids.map((id) => streamOf("piece", id)));
  return rows.flatMap((row) => (row?.kind === "piece" ? [row.state.plan.name] : []));
}

/** One piece with its whole log; null when there is no such piece. */
export function readPiece(db: ShopDb, id: string, now: number): Promise<PieceData | null> {
  return db.transaction("r", db.projections, db.entries, db.settings, async () => {
    const { entries, setAside } = await readStream(db, streamOf("piece", id));
    const piece = foldPiece(id, entries);
    if (piece === null) return null;
    const around = await readSurroundings(db, hangingSpans([piece], now));
    const stamps = [[streamOf("piece", id), stampOf(entries)]] as const;
    return {
      piece,
      entries,
      setAside: [...setAside, ...(await astrayLines(db, streamOf("piece", id)))],
      isSummaryRotten: await isSummaryRotten(db, id),
      ...(await withRuns(db, [piece], { around, stamps })),
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

export const readRooms = async (db: ShopDb): Promise<readonly Room[]> => allRooms(await statesOf(db, "room"));

const allRooms = (states: readonly Room[]): readonly Room[] =>
  withBuiltIn(
    states,
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
  allBuckets(await statesOf(db, "bucket"));

const allBuckets = (states: readonly Bucket[]): readonly Bucket[] =>
  withBuiltIn(
    states,
    builtInBucketIds.map((id) => foldBucket(id, [])),
  );

/** A bucket with every line of its log. */
export async function readBucketState(
  db: ShopDb,
  id: string,
): Promise<{ readonly bucket: Bucket; readonly entries: readonly Entry[] } | null> {
  const { entries } = await readStream(db, streamOf("bucket", id));
  const bucket = foldBucket(id, entries);
  return bucket === null ? null : { bucket, entries };
}

export const readRecipes = async (db: ShopDb): Promise<readonly Recipe[]> =>
  allRecipes(await statesOf(db, "recipe"));

const allRecipes = (states: readonly Recipe[]): readonly Recipe[] =>
  withBuiltIn(
    states,
    startingRecipes.map(({ id }) => foldRecipe(id, [])),
  );

export const readShop = async (db: ShopDb): Promise<Shop> =>
  shopWith((await readShopRow(db))?.state ?? foldShop([]), await readProven(db));

/** The shop with what its poured shells bore. */
const shopWith = (shop: Shop, proven: readonly ProvenLoad[]): Shop =>
  proven.length === 0 ? shop : { ...shop, proven };

async function readShopRow(db: ShopDb): Promise<RowOf<"shop"> | null> {
  const row = await db.projections.get(shopStream);
  return row?.kind === "shop" && hasState(row) ? row : null;
}

/** All that the sums need beside a piece, with each room's readings in these spans and the last one. */
export async function readSurroundings(db: ShopDb, spans: readonly AirSpan[]): Promise<Surroundings> {
  const [ofRooms, ofRecipes, ofBuckets, shopRow, learned, proven] = await Promise.all([
    listedOf(db, "room"),
    listedOf(db, "recipe"),
    listedOf(db, "bucket"),
    readShopRow(db),
    readLearning(db),
    readProven(db),
  ]);
  const rooms = allRooms(ofRooms.states);
  const recipes = allRecipes(ofRecipes.states);
  const buckets = allBuckets(ofBuckets.states);
  const readings = await Promise.all(
    rooms.map(async ({ id }) => [id, await readingsIn(db, id, [...spans, last])] as const),
  );
  // The readings of a room are its log as far as these spans go.
  const asFar = spans.map(({ from, to }) => `${from} ${to}`).join();
  return {
    rooms: byId(rooms),
    readings: new Map(readings),
    recipes: byId(recipes),
    buckets: byId(buckets),
    shop: shopWith(shopRow?.state ?? foldShop([]), proven),
    learned,
    stamps: new Map<string, string | number>([
      ...asTheyCame("recipe", recipes, ofRecipes.states),
      ...asTheyCame("bucket", buckets, ofBuckets.states),
      ...ofRecipes.stamps,
      ...ofBuckets.stamps,
      ...ofRooms.stamps.map(([stream, stamp]) => [stream, `${stamp} ${asFar}`] as const),
      ...(shopRow === null ? [[shopStream, untouched] as const] : stampsOf(shopRow)),
      [
        learningStamp,
        `${learned?.mark ?? untouched}${proven.length === 0 ? "" : ` ${JSON.stringify(proven)}`}`,
      ],
    ]),
  };
}

/** The stamp of what is as it came with the program. */
const untouched = "untouched";

/** Those that no row speaks of. */
const asTheyCame = (
  kind: "recipe" | "bucket",
  all: readonly { readonly id: string }[],
  stored: readonly object[],
): readonly (readonly [string, string])[] =>
  all.filter((one) => !stored.includes(one)).map(({ id }) => [streamOf(kind, id), untouched]);

type PiecesBeside = {
  readonly around: Surroundings;
  readonly stamps: readonly (readonly [stream: string, stamp: number])[];
};

/** The same with the kiln runs these pieces were in or stand in now, and the stamps of all of it. */
async function withRuns(
  db: ShopDb,
  pieces: readonly Piece[],
  { around, stamps }: PiecesBeside,
): Promise<Surroundings> {
  const ids = [...new Set(pieces.flatMap(({ runIds }) => runIds ?? []))];
  const rows = ids.length === 0 ? [] : await db.projections.bulkGet(ids.map((id) => streamOf("run", id)));
  const runs = rows.flatMap((row) => (row?.kind === "run" && hasState(row) ? [row] : []));
  // A firing or preheat is in no piece's log before it ends.
  const open = await listedOf(db, "run", ["work"]);
  return {
    ...around,
    runs: byId([...open.states.filter(hasPieces), ...runs.map(({ state }) => state)]),
    stamps: new Map([...(around.stamps ?? []), ...stamps, ...open.stamps, ...runs.flatMap(stampsOf)]),
  };
}

/** A damaged row of one run must not cost every piece its page. */
const hasPieces = ({ pieceIds }: { readonly pieceIds: unknown }): boolean => Array.isArray(pieceIds);

const readProven = async (db: ShopDb) => provenFromRow((await db.settings.get(provenKey))?.value);
const readLearning = async (db: ShopDb) => learnedFromRow((await db.settings.get(learningKey))?.value);

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
