import { Dexie } from "dexie";
import { remakeRows } from "./rebuild.ts";
import type { ShopDb } from "./rows.ts";

export type ShopDbWatch = {
  /** Another tab holds an older store open and must be closed first. */
  readonly onBlocked?: (() => void) | undefined;
  /** The store is being brought to this version: streams made anew so far, and of how many. */
  readonly onUpgrade?: ((done: number, of: number) => void) | undefined;
  /** Another tab has opened a newer store: this one is closed and the page must be loaded again. */
  readonly onOutdated?: (() => void) | undefined;
  /** The store was removed under the running app, by another tab or by the browser. */
  readonly onGone?: (() => void) | undefined;
};

/** The version of the store this program knows; raised with every `version` below. */
export const storeVersion = 3;

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
  db.version(2).stores({ patterns: "id, savedAt" });
  // Nothing of an older version is changed but its rows, made again from the log: they know more now, as of a dewax.
  db.version(storeVersion)
    .stores({ staged: "id", journal: "key" })
    .upgrade(async () => {
      await remakeRows(db, watch.onUpgrade);
    });
  db.on("blocked", () => watch.onBlocked?.());
  db.on("versionchange", ({ newVersion }) => {
    db.close({ disableAutoOpen: true });
    // A store that is being removed has no new version.
    if (newVersion === null) watch.onGone?.();
    else watch.onOutdated?.();
    return false;
  });
  // The browser closes a store it clears. The library tells of its own closing too, by an event of its own making.
  db.on("close", (event: Event) => {
    if (!(event instanceof CustomEvent)) watch.onGone?.();
  });
  return db;
}
