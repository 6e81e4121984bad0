import { Dexie } from "dexie";
import { compareEntries, type Entry } from "../logbook/entries/entry.ts";
import { parseEntry, type ParseFault } from "./entrySchema.ts";
import type { ShopDb, StoredEntry } from "./rows.ts";

/** A stored row that could not be read: it stays in the store and in every export, and takes no part in a sum. */
export type SetAside = { readonly id: string; readonly stream: string; readonly fault: ParseFault };
export type ReadEntries = { readonly entries: readonly Entry[]; readonly setAside: readonly SetAside[] };

/** Stored rows as entries in the order of the log; what can't be read is set aside, never thrown and never dropped. */
export function readStored(rows: readonly StoredEntry[]): ReadEntries {
  const entries: Entry[] = [];
  const setAside: SetAside[] = [];
  for (const row of rows) {
    const parsed = parseEntry(row);
    if (parsed.ok) entries.push(parsed.entry);
    else setAside.push({ id: row.id, stream: row.stream, fault: parsed.fault });
  }
  return { entries: entries.sort(compareEntries), setAside };
}

/** All entries of a stream, or those from `from` (epoch ms) on. */
export async function readStream(db: ShopDb, stream: string, from?: number): Promise<ReadEntries> {
  const rows = await db.entries
    .where("[stream+at]")
    .between([stream, from ?? Dexie.minKey], [stream, Dexie.maxKey], true, true)
    .toArray();
  return readStored(rows);
}
