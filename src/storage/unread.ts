import { streamOf } from "../logbook/entries/entry.ts";
import { parseEntry, type ParseFault } from "./entrySchema.ts";
import { hasState } from "./listed.ts";
import { openRaw, rawRows } from "./rawRows.ts";
import type { ShopDb, StoredEntry } from "./rows.ts";
import type { SetAside } from "./streams.ts";

/** A row of the log no program here can read; `stream` is null where even that is lost. */
export type UnreadLine = {
  readonly id: string;
  readonly stream: string | null;
  /** Null where the browser itself could not give the row out. */
  readonly fault: ParseFault | null;
};

export type Unread = {
  readonly lines: readonly UnreadLine[];
  /** Streams whose summary can't be read; made again from the log it is sound. */
  readonly summaries: readonly string[];
};

/** All there is in the store that can't be read, found by going through every row of log and summaries. */
export async function readUnread(db: ShopDb): Promise<Unread> {
  const raw = await openRaw(db.name);
  if (raw === null) return { lines: [], summaries: [] };
  try {
    const lines: UnreadLine[] = [];
    const onUnreadable = (key: IDBValidKey): void => {
      lines.push({ id: keyText(key), stream: null, fault: null });
    };
    for await (const rows of rawRows(raw, "entries", { onUnreadable }))
      for (const row of rows) {
        const parsed = parseEntry(row);
        if (!parsed.ok)
          lines.push({ id: textAt(row, "id") ?? "", stream: textAt(row, "stream"), fault: parsed.fault });
      }
    const summaries: string[] = [];
    for await (const rows of rawRows(raw, "projections", {
      onUnreadable: (key) => summaries.push(keyText(key)),
    }))
      for (const row of rows)
        if (!hasState({ state: fieldOf(row, "state") })) summaries.push(textAt(row, "stream") ?? "");
    return { lines, summaries };
  } finally {
    raw.close();
  }
}

/**
 * The lines of a stream that its index does not lead to, because their time is lost. Two counts tell whether there are
 * any; only then all keys are gone through. Inside a transaction on entries.
 */
export async function astrayLines(db: ShopDb, stream: string): Promise<readonly SetAside[]> {
  const indexed = db.entries.orderBy("[stream+at]");
  if ((await db.entries.count()) === (await indexed.count())) return [];
  const found = new Set(await indexed.primaryKeys());
  const lost = (await db.entries.toCollection().primaryKeys()).filter((id) => !found.has(id));
  const rows = await db.entries.bulkGet(lost);
  return rows
    .filter((row): row is StoredEntry => row?.stream === stream)
    .flatMap((row): readonly SetAside[] => {
      const parsed = parseEntry(row);
      return parsed.ok ? [] : [{ id: row.id, stream, fault: parsed.fault }];
    });
}

/** Whether the summary of a piece can be read; one that was never made is no fault. Inside a transaction on it. */
export async function isSummaryRotten(db: ShopDb, id: string): Promise<boolean> {
  const row = await db.projections.get(streamOf("piece", id));
  return row !== undefined && !hasState(row);
}

const keyText = (key: IDBValidKey): string => (typeof key === "string" ? key : "");

const fieldOf = (row: unknown, key: string): unknown =>
  typeof row === "object" && row !== null ? (row as Readonly<Record<string, unknown>>)[key] : undefined;

function textAt(row: unknown, key: string): string | null {
  const value = fieldOf(row, key);
  return typeof value === "string" ? value : null;
}
