import { cleanup, render } from "@testing-library/react";
import { Dexie } from "dexie";
import { useSyncExternalStore, type ComponentType } from "react";
import { v7 } from "uuid";
import { Route, Router } from "wouter";
import type { Entry, EntryOf, EntryType } from "../src/logbook/entries/entry.ts";
import { loadDemo } from "../src/storage/demo.ts";
import { changeSettings, startingSettings, type Settings } from "../src/storage/settings.ts";
import { openShopDb } from "../src/storage/shopDb.ts";
import type { ShopDb } from "../src/storage/rows.ts";
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

/** A store of its own with the demo shop in it. */
export async function demoDesk(settings: Partial<Settings> = {}): Promise<Desk> {
  const db = openShopDb(`desk-${v7()}`);
  opened.push(db);
  await loadDemo(db, demoEntries(deskNow, "UTC"));
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

/** A screen at its address; `places` is where it went since. */
export function showAt(
  shop: ShopDoor,
  path: string,
  at: { readonly route: string; readonly screen: ComponentType },
) {
  const places = [path];
  const hook = memoryPlace(places);
  render(
    <ShopProvider shop={shop}>
      <Router hook={hook}>
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
  return (): [string, typeof goTo] => [useSyncExternalStore(listen, () => places.at(-1) ?? "/"), goTo];
}

export async function clearDesks(): Promise<void> {
  cleanup();
  // Reads under way end first, so that none of them holds a store open.
  await new Promise((resolve) => setTimeout(resolve, 60));
  for (const db of opened) db.close();
  await Promise.all(opened.map(({ name }) => Dexie.delete(name)));
  opened = [];
}
