import { readingsOf } from "../logbook/airLog.ts";
import { streamOf } from "../logbook/entry.ts";
import type { AirReading } from "../logbook/piece.ts";
import { keepingUnpacked, readAirRows } from "./airBlocks.ts";
import type { ShopDb } from "./shopDb.ts";

/** A logger's block reaches no further past its own time. */
const blockMs = 24 * 3_600_000;
/** How many lines before that are looked at for the reading that still held when the window opens. */
const lookBack = 8;

/** Standing readings of a room from `since` to about `until` (epoch ms), oldest first, led by the one that held before. */
export async function readingsSince(
  db: ShopDb,
  roomId: string,
  since: number,
  until: number = Infinity,
): Promise<readonly AirReading[]> {
  const stream = streamOf("room", roomId);
  const from = since - blockMs;
  const row = await db.projections.get(stream);
  const before = db.entries
    .where("[stream+at]")
    .between([stream, -Infinity], [stream, from], true, false)
    .reverse()
    .limit(lookBack)
    .toArray();
  const after = db.entries
    .where("[stream+at]")
    .between([stream, from], [stream, until], true, true)
    .toArray();
  const entries = readAirRows(db, [...(await before), ...(await after)]);
  const moves = row?.kind === "room" ? row.airMoves : undefined;
  const readings = readingsOf(entries, { moves, unpack: keepingUnpacked(db) });
  const first = readings.findIndex(({ at }) => at >= since);
  return readings.slice(Math.max(0, (first === -1 ? readings.length : first) - 1));
}
