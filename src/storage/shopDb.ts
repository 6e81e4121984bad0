import { Dexie, type Table } from "dexie";
import type { PatternRow } from "./patterns.ts";
import type { ProjectionRow } from "./projection.ts";
import { remakeRows } from "./rebuild.ts";

/** A row of the log as it lies in the store: read through `parseEntry`, never rewritten. */
export type StoredEntry = {
  readonly id: string;
  readonly stream: string;
  readonly type: string;
  readonly at: number;
  readonly recordedAt: number;
};
export type PhotoRow = { readonly id: string; readonly blob: Blob };
export type KeyedRow = { readonly key: string; readonly value: unknown };

export type ShopDb = Dexie & {
  readonly entries: Table<StoredEntry, string>;
  readonly projections: Table<ProjectionRow, string>;
  readonly photos: Table<PhotoRow, string>;
  readonly settings: Table<KeyedRow, string>;
  readonly drafts: Table<KeyedRow, string>;
  readonly patterns: Table<PatternRow, string>;
};

export type ShopDbWatch = {
  /** Another tab holds an older store open and must be closed first. */
  readonly onBlocked?: (() => void) | undefined;
  /** The store is being brought to this version: streams made anew so far, and of how many. */
  readonly onUpgrade?: ((done: number, of: number) => void) | undefined;
  /** Another tab has opened a newer store, or removed it: this one is closed and the page must be loaded again. */
  readonly onOutdated?: (() => void) | undefined;
};

/** The version of the store this program knows; raised with every `version` below. */
export const storeVersion = 2;

/** The version of an open store where it is newer than this program, which then can't read all of it; else null. */
export function newerStore(db: ShopDb): number | null {
  // The library counts in tens, so that others can put versions between.
  const found = Math.floor(db.backendDB().version / 10);
  return found > storeVersion ? found : null;
}

/**
 * The shop's store in this browser; it opens on first use. Every write is flushed to the disk before it counts as
 * done (`strict`). The cache of queries is off, so that no screen shows a line before its transaction is complete.
 */
export function openShopDb(name = "dipbook", watch: ShopDbWatch = {}): ShopDb {
  const db = new Dexie(name, { chromeTransactionDurability: "strict", cache: "disabled" }) as ShopDb;
  db.version(1).stores({
    entries: "id, [stream+at]",
    projections: "stream, [kind+shelf]",
    photos: "id",
    settings: "key",
    drafts: "key",
  });
  // Nothing of version 1 is changed but its rows, which are made again from the log: they know more now.
  db.version(storeVersion)
    .stores({ patterns: "id, savedAt" })
    .upgrade(async () => {
      await remakeRows(db, watch.onUpgrade);
    });
  db.on("blocked", () => watch.onBlocked?.());
  db.on("versionchange", () => {
    db.close({ disableAutoOpen: true });
    watch.onOutdated?.();
    return false;
  });
  return db;
}
