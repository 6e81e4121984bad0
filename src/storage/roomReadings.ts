import { streamOf } from "../logbook/entry.ts";
import { readingsOf } from "../logbook/fold.ts";
import type { AirReading } from "../logbook/piece.ts";
import type { ShopDb } from "./shopDb.ts";
import { readStored } from "./streams.ts";

/** How many lines before the window are looked at for the reading that still held when it opens. */
const lookBack = 8;

/** Standing readings of a room from `since` (epoch ms) on, oldest first, led by the one that held before `since`. */
export async function readingsSince(
  db: ShopDb,
  roomId: string,
  since: number,
): Promise<readonly AirReading[]> {
  const stream = streamOf("room", roomId);
  const before = db.entries
    .where("[stream+at]")
    .between([stream, -Infinity], [stream, since], true, false)
    .reverse()
    .limit(lookBack)
    .toArray();
  const after = db.entries
    .where("[stream+at]")
    .between([stream, since], [stream, Infinity], true, true)
    .toArray();
  const { entries } = readStored([...(await before), ...(await after)]);
  const readings = readingsOf(entries);
  const first = readings.findIndex(({ at }) => at >= since);
  return readings.slice(Math.max(0, (first === -1 ? readings.length : first) - 1));
}
