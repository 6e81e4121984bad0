import { cleanup, render } from "@testing-library/react";
import { useSyncExternalStore, type ComponentType } from "react";
import { v7 } from "uuid";
import { Route, Router } from "wouter";
import type { Entry, EntryOf, EntryType } from "../src/logbook/entries/entry.ts";
import { loadDemo } from "../src/storage/demo.ts";
import type { ProjectionRow } from "../src/storage/projection.ts";
import { changeSettings, startingSettings, type Settings } from "../src/storage/settings.ts";
import { openShopDb } from "../src/storage/shopDb.ts";
import type { ShopDb, StoredEntry } from "../src/storage/rows.ts";
import { makeShop, ShopProvider, type ShopDoor } from "../src/ui/base/state/shop.tsx";
import { demoEntries } from "../src/ui/shop/demo/demoShop.ts";
import "../src/ui/base/styles/base.css";
import "../src/ui/base/styles/tokens.css";

export const deskNow = Date.parse("2026-03-04T14:02:00Z");
let opened: ShopDb[] = [];

export type Desk = {
  readonly db: ShopDb;
  readonly shop: ShopDoor;
  /** What was logged at this desk, beside what the demo came with. */
  readonly logged: <T extends EntryType>(type: T) => Promise<readonly EntryOf<T>[]>;
};

type DemoRows = { readonly entries: readonly StoredEntry[]; readonly projections: readonly ProjectionRow[] };
let demoRows: Promise<DemoRows> | null = null;

/** The rows the app itself makes of the demo shop: made once a file, for they are the same at every desk. */
async function makeDemoRows(): Promise<DemoRows> {
  const db = openShopDb(`desk-${v7()}`);
  await loadDemo(db, demoEntries(deskNow, "UTC"));
  const [entries, projections, ...others] = await Promise.all([
    db.entries.toArray(),
    db.projections.toArray(),
    db.photos.count(),
    db.settings.count(),
    db.drafts.count(),
    db.patterns.count(),
  ]);
  if (others.some((rows) => rows > 0))
    throw new Error("the demo shop fills more tables than are copied here");
  db.close();
  await removed(db);
  return { entries, projections };
}

/** A store of its own with the demo shop in it. */
export async function demoDesk(settings: Partial<Settings> = {}): Promise<Desk> {
  const { entries, projections } = await (demoRows ??= makeDemoRows());
  const db = openShopDb(`desk-${v7()}`);
  opened.push(db);
  await db.transaction("rw", db.entries, db.projections, async () => {
    await Promise.all([db.entries.bulkAdd(entries), db.projections.bulkAdd(projections)]);
  });
  const kept = await changeSettings(db, { deviceId: "desk", ...settings });
  const shop = makeShop({ db, clock: () => deskNow, newId: () => v7(), opened: kept });
  const isOf =
    <T extends EntryType>(type: T) =>
    (entry: Entry): entry is Entry & EntryOf<T> =>
      entry.type === type;
  return {
    db,
    shop,
    logged: async (type) => {
      const rows: readonly unknown[] = await db.entries.toArray();
      return (rows as readonly Entry[]).filter(({ device }) => device !== "demo").filter(isOf(type));
    },
  };
}

/** A store of its own with nothing in it. */
export function freshDesk(): Pick<Desk, "db" | "shop"> {
  const db = openShopDb(`desk-${v7()}`);
  opened.push(db);
  const shop = makeShop({ db, clock: () => deskNow, newId: () => v7(), opened: startingSettings });
  return { db, shop };
}

/** A screen at its address, with what is asked after a "?"; `places` is where it went since. */
export function showAt(
  shop: ShopDoor,
  path: string,
  at: { readonly route: string; readonly screen: ComponentType },
) {
  const places = [path];
  const { hook, searchHook } = memoryPlace(places);
  render(
    <ShopProvider shop={shop}>
      <Router hook={hook} searchHook={searchHook}>
        <Route path={at.route} component={at.screen as never} />
      </Router>
    </ShopProvider>,
  );
  return { places: places as readonly string[] };
}

function memoryPlace(places: string[]) {
  const listeners = new Set<() => void>();
  const listen = (listener: () => void) => {
    listeners.add(listener);
    return () => listeners.delete(listener);
  };
  const goTo = (path: string, { replace = false }: { readonly replace?: boolean } = {}) => {
    if (replace) places.pop();
    places.push(path);
    for (const listener of listeners) listener();
  };
  const usePart = (part: 0 | 1): string =>
    useSyncExternalStore(listen, () => (places.at(-1) ?? "/").split("?")[part] ?? "");
  const usePath = (): [string, typeof goTo] => [usePart(0), goTo];
  const useSearch = (): string => usePart(1);
  return { hook: usePath, searchHook: useSearch };
}

/**
 * Once every read and write begun so far has ended, and those that they began: the store gives a write of all tables
 * its turn only then.
 */
export async function readsDone(db: ShopDb): Promise<void> {
  for (let turn = 0; turn < 3 && db.isOpen(); turn++)
    await db.transaction("rw", db.tables, () => db.settings.count());
}

/** A store that was closed is gone, once what still reads it has come to its end. */
const removed = ({ name }: ShopDb): Promise<void> =>
  new Promise((done, fail) => {
    const asking = indexedDB.deleteDatabase(name);
    asking.addEventListener("success", () => done());
    asking.addEventListener("error", () => fail(asking.error));
  });

export async function clearDesks(): Promise<void> {
  cleanup();
  await Promise.all(opened.map(readsDone));
  for (const db of opened) db.close();
  await Promise.all(opened.map(removed));
  opened = [];
}
