import { millisecondsInHour as hourMs } from "date-fns/constants";
import { readingsOf } from "../logbook/air/airLog.ts";
import { streamOf } from "../logbook/entries/entry.ts";
import type { AirReading } from "../logbook/piece/piece.ts";
import { keepingUnpacked, readAirRows } from "./airBlocks.ts";
import type { ShopDb, StoredEntry } from "./rows.ts";

/** A logger's block reaches no further past its own time. */
const blockMs = 24 * hourMs;
/** How many lines before a span are looked at for the reading that still held when it opens, and after it for the next. */
const lookAround = 8;

/** A stretch of time, epoch ms; `to` may be Infinity. */
export type AirSpan = { readonly from: number; readonly to: number };

/** Standing readings of a room from `since` (epoch ms) on, oldest first, led by the one that held before `since`. */
export const readingsSince = (db: ShopDb, roomId: string, since: number): Promise<readonly AirReading[]> =>
  readingsIn(db, roomId, [{ from: since, to: Infinity }]);

/**
 * Standing readings of a room in any of these spans, oldest first, each span led by the reading that held when it opens
 * and closed by the next after it: the air within a span is the same whatever else is read. Lines between the spans
 * are fetched, as a strike may stand there of a line before it, but not unpacked.
 */
export async function readingsIn(
  db: ShopDb,
  roomId: string,
  spans: readonly AirSpan[],
): Promise<readonly AirReading[]> {
  if (spans.length === 0) return [];
  const stream = streamOf("room", roomId);
  const from = spans.reduce((first, span) => Math.min(first, span.from), Infinity) - blockMs;
  const row = await db.projections.get(stream);
  const before = db.entries
    .where("[stream+at]")
    .between([stream, -Infinity], [stream, from], true, false)
    .reverse()
    .limit(lookAround)
    .toArray();
  const after = db.entries
    .where("[stream+at]")
    .between([stream, from], [stream, Infinity], true, true)
    .toArray();
  const rows = [...(await before).reverse(), ...(await after)];
  const entries = readAirRows(db, rowsAbout(rows, spans));
  const moves = row?.kind === "room" ? row.airMoves : undefined;
  const readings = readingsOf(entries, { moves, unpack: keepingUnpacked(db) });
  return within(
    readings,
    spans.map((span) => around(readings, span)),
  );
}

type Places = { readonly first: number; readonly last: number };

/** Places in a list in order of time from the one that held when a span opens to the next after it. */
function around(ordered: readonly { readonly at: number }[], { from, to }: AirSpan, more = 1): Places {
  const first = countBefore(ordered, from) - more;
  return {
    first: Math.max(0, first),
    last: to === Infinity ? Infinity : countBefore(ordered, to) + more - 1,
  };
}

function countBefore(ordered: readonly { readonly at: number }[], at: number): number {
  const place = ordered.findIndex((one) => one.at >= at);
  return place === -1 ? ordered.length : place;
}

function within<T>(list: readonly T[], places: readonly Places[]): readonly T[] {
  return list.filter((_, i) => places.some(({ first, last }) => i >= first && i <= last));
}

/** The rows that can hold a reading of a span, and all that are not readings: strikes count wherever they stand. */
function rowsAbout(rows: readonly StoredEntry[], spans: readonly AirSpan[]): readonly StoredEntry[] {
  const read = rows.filter(isReading);
  const places = spans.map(({ from, to }) => around(read, { from: from - blockMs, to }, lookAround));
  const kept = new Set(within(read, places));
  return rows.filter((row) => kept.has(row) || !isReading(row));
}

const isReading = ({ type }: StoredEntry): boolean => type === "air-read" || type === "air-logged";
