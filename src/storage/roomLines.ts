import { millisecondsInDay as dayMs } from "date-fns/constants";
import { effective } from "../logbook/log/effective.ts";
import { type Entry, type EntryOf, streamOf } from "../logbook/entries/entry.ts";
import { untilOf } from "../logbook/entries/packed.ts";
import type { AirReading } from "../logbook/piece/piece.ts";
import { readAirRows } from "./airBlocks.ts";
import type { ShopDb, StoredEntry } from "./rows.ts";

/** What stands for a file of readings that was brought in: its blocks were all written at one moment. */
export type AirFile = { readonly source: string; readonly recordedAt: number };

/** One line of a room's list: a reading by hand or from a sensor, or a whole file. Times epoch ms. */
export type RoomLine =
  | { readonly kind: "reading"; readonly reading: AirReading }
  | ({
      readonly kind: "file";
      readonly count: number;
      readonly from: number;
      readonly to: number;
      /** The file reaches further back than was looked: it holds more than `count`. */
      readonly isCut: boolean;
    } & AirFile);

/** A file counts as seen whole where this long before its first block nothing more of it lies. */
const apartMs = 2 * dayMs;

/** Rows read for a line at most: a file past so many days is told short. */
const mostRead = 20;

/**
 * The newest `most` lines of a room that stand, newest first. Only so many rows are read: a sensor leaves tens of
 * thousands behind, and a file has a block for each of its days.
 */
export async function readRoomLines(
  db: ShopDb,
  roomId: string,
  most: number,
): Promise<{ readonly lines: readonly RoomLine[]; readonly hasMore: boolean }> {
  for (let limit = 2 * most + 50; ; limit *= 3) {
    const rows = await newestRows(db, roomId).limit(limit).toArray();
    const isAll = rows.length < limit;
    const oldest = isAll ? -Infinity : (rows.at(-1)?.at ?? 0);
    const standing = effective(readAirRows(db, rows));
    const lines = linesOf(standing, oldest);
    const shown = lines.slice(0, most);
    const isEnough = lines.length > most && shown.every((line) => line.kind === "reading" || !line.isCut);
    // Strikes and what they struck are passed over, however many.
    if (isAll || isEnough || standing.length >= mostRead * most)
      return { lines: shown, hasMore: lines.length > most || !isAll };
  }
}

/** Ids of all blocks of one file that stand, to be struck together. */
export async function blocksOfFile(db: ShopDb, roomId: string, file: AirFile): Promise<readonly string[]> {
  const rows: readonly StoredEntry[] = await newestRows(db, roomId).toArray();
  return effective(readAirRows(db, rows))
    .filter((entry) => isBlock(entry) && entry.recordedAt === file.recordedAt)
    .filter((entry) => isBlock(entry) && entry.body.source === file.source)
    .map(({ id }) => id);
}

const newestRows = (db: ShopDb, roomId: string) => {
  const stream = streamOf("room", roomId);
  return db.entries.where("[stream+at]").between([stream, -Infinity], [stream, Infinity]).reverse();
};

const isBlock = (entry: Entry): entry is Entry & EntryOf<"air-logged"> => entry.type === "air-logged";

/** `oldest`: time of the oldest row that was read, −∞ where that was all of them. */
function linesOf(standing: readonly Entry[], oldest: number): readonly RoomLine[] {
  const readings: RoomLine[] = [];
  const files = new Map<string, Extract<RoomLine, { kind: "file" }>>();
  for (const entry of standing) {
    if (entry.type === "air-read")
      readings.push({ kind: "reading", reading: { ...entry.body, id: entry.id, at: entry.at } });
    if (!isBlock(entry)) continue;
    const { recordedAt, at, body } = entry;
    const key = `${recordedAt} ${body.source}`;
    const before = files.get(key);
    const from = Math.min(before?.from ?? at, at);
    files.set(key, {
      kind: "file",
      source: body.source,
      recordedAt,
      count: (before?.count ?? 0) + body.afterS.length,
      from,
      to: Math.max(before?.to ?? at, untilOf(entry)),
      isCut: from - apartMs < oldest,
    });
  }
  return [...readings, ...files.values()].sort((a, b) => timeOf(b) - timeOf(a));
}

const timeOf = (line: RoomLine): number => (line.kind === "reading" ? line.reading.at : line.to);
