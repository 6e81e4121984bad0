import type { AirSince, Unpack } from "../logbook/air/airLog.ts";
import { unpackAir } from "../logbook/air/airLog.ts";
import { compareEntries, type Entry, type EntryOf } from "../logbook/entries/entry.ts";
import type { AirReading } from "../logbook/piece/piece.ts";
import type { ShopDb, StoredEntry } from "./rows.ts";
import { readStored } from "./streams.ts";

type Block = EntryOf<"air-logged">;
type Kept = { readonly block: Block; moves: string; readings: readonly AirReading[] };

/** Blocks kept unpacked, a logger's day each: three rooms over the two months a rack looks back. */
const mostKept = 200;
const kept = new WeakMap<ShopDb, Map<string, Kept>>();

/**
 * A room's stored rows as entries, in order. A logger's block that was read before is not checked again: a line of
 * the log never changes, and checking hundreds of readings a day costs more than fetching them.
 */
export function readAirRows(db: ShopDb, rows: readonly StoredEntry[]): readonly Entry[] {
  const known = knownOf(db);
  const blocks = rows.flatMap((row) => known.get(keyOf(row))?.block ?? []);
  const seen = new Set(blocks.map(({ id }) => id));
  const { entries } = readStored(rows.filter(({ id }) => !seen.has(id)));
  return blocks.length === 0 ? entries : [...blocks, ...entries].sort(compareEntries);
}

/** Unpacks a block, or gives what it came to before: the same readings again, as long as the air moved the same. */
export function keepingUnpacked(db: ShopDb): Unpack {
  const known = knownOf(db);
  return (block, moves) => {
    const key = keyOf(block);
    const said = movesKey(moves);
    const before = known.get(key);
    const readings = before?.moves === said ? before.readings : unpackAir(block, moves);
    // Put last, so that the one longest unread is the first to go.
    known.delete(key);
    known.set(key, { block: before?.block ?? block, moves: said, readings });
    const [oldest] = known.keys();
    if (known.size > mostKept && oldest !== undefined) known.delete(oldest);
    return readings;
  };
}

function knownOf(db: ShopDb): Map<string, Kept> {
  const known = kept.get(db) ?? new Map<string, Kept>();
  kept.set(db, known);
  return known;
}

/** The demo shop comes again under the same ids at another time. */
const keyOf = ({ id, stream, at, recordedAt }: StoredEntry): string => `${id} ${stream} ${at} ${recordedAt}`;

const movesKey = (moves: readonly AirSince[]): string => moves.map(({ at, air }) => `${at} ${air}`).join();
