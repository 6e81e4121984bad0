import type { Unpack } from "../logbook/air/airLog.ts";
import { unpackAir } from "../logbook/air/airLog.ts";
import { compareEntries, type Entry, type EntryOf } from "../logbook/entries/entry.ts";
import { keep, recall } from "../logbook/log/memo.ts";
import type { AirReading } from "../logbook/piece/piece.ts";
import { memoOf } from "./memoOf.ts";
import type { ShopDb, StoredEntry } from "./rows.ts";
import { readStored } from "./streams.ts";

type Block = EntryOf<"air-logged">;
/** Blocks kept unpacked, a logger's day each: three rooms over the two months a rack looks back. */
const mostKept = 200;

/**
 * A room's stored rows as entries, in order. A logger's block that was read before is not checked again: a line of
 * the log never changes, and checking hundreds of readings a day costs more than fetching them.
 */
export function readAirRows(db: ShopDb, rows: readonly StoredEntry[]): readonly Entry[] {
  const memo = memoOf(db);
  const blocks = rows.flatMap((row) => recall<Block>({ memo, kind: "block", id: keyOf(row) }, []) ?? []);
  const seen = new Set(blocks.map(({ id }) => id));
  const { entries } = readStored(rows.filter(({ id }) => !seen.has(id)));
  return blocks.length === 0 ? entries : [...blocks, ...entries].sort(compareEntries);
}

/** Unpacks a block, or gives what it came to before: the same readings again, as long as the air moved the same. */
export function keepingUnpacked(db: ShopDb): Unpack {
  const memo = memoOf(db);
  return (block, moves) => {
    const id = keyOf(block);
    const grounds = moves.flatMap(({ at, air }) => [at, air]);
    const place = { memo, kind: "unpacked", id };
    keep({ memo, kind: "block", id }, { grounds: [], value: block, most: mostKept });
    return (
      recall<readonly AirReading[]>(place, grounds) ??
      keep(place, { grounds, value: unpackAir(block, moves), most: mostKept })
    );
  };
}

/** The demo shop comes again under the same ids at another time. */
const keyOf = ({ id, stream, at, recordedAt }: StoredEntry): string => `${id} ${stream} ${at} ${recordedAt}`;
