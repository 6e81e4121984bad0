import { cleanup, render } from "@testing-library/react";
import { millisecondsInHour as hourMs } from "date-fns/constants";
import { Dexie } from "dexie";
import { expect } from "vitest";
import { page } from "vitest/browser";
import { v7 } from "uuid";
import type { Command } from "../src/logbook/log/command.ts";
import { type Entry, type EntryOf, streamOf } from "../src/logbook/entries/entry.ts";
import { startingRecipeOf } from "../src/trade/startingRecipes.ts";
import { readStream } from "../src/storage/streams.ts";
import { runCommand } from "../src/storage/run.ts";
import { readSettings } from "../src/storage/settings.ts";
import { openShopDb } from "../src/storage/shopDb.ts";
import type { ShopDb } from "../src/storage/rows.ts";
import { makeShop, type ShopDoor, ShopProvider } from "../src/ui/base/state/shop.tsx";
import "../src/ui/base/styles/base.css";
import "../src/ui/base/styles/tokens.css";
import { DipPage } from "../src/ui/making/dip/DipPage.tsx";

export const now = Date.parse("2026-03-04T14:02:00Z");
let opened: ShopDb[] = [];

/** The same store as another tab would open it. */
export function anotherTab(shop: ShopDoor): ShopDoor {
  const db = openShopDb(shop.db.name);
  opened.push(db);
  return makeShop({ db, clock: shop.clock, newId: () => v7(), opened: shop.opened });
}

/** After each test: screens put away, stores closed and removed. */
export async function clearDesk(): Promise<void> {
  cleanup();
  for (const db of opened) db.close();
  await Promise.all(opened.map(({ name }) => Dexie.delete(name)));
  opened = [];
}

const moment = (at: number) => ({ now: at, zone: "UTC", device: "test", newId: () => v7() });

async function does(db: ShopDb, command: Command, at: number): Promise<void> {
  const result = await runCommand(db, command, moment(at));
  expect(result).toMatchObject({ ok: true });
}

/** A rack of pieces on the general recipe, each with `coats` coats, the last one `lastH` hours old. */
export async function rack(pieces: readonly { name: string; coats: number; lastH: number }[]) {
  const db = openShopDb(`dip-${v7()}`);
  opened.push(db);
  const air = { airC: 21, rh: 0.5, air: "room-fan" } as const;
  await does(
    db,
    { do: "log", stream: streamOf("room", "first"), type: "air-read", body: air, at: now - 300 * hourMs },
    now,
  );
  await does(
    db,
    { do: "log", stream: streamOf("room", "first"), type: "air-read", body: air, at: now - hourMs },
    now,
  );
  const recipe = startingRecipeOf("start-general");
  for (const { name, coats, lastH } of pieces) {
    const stream = streamOf("piece", v7());
    const startAt = now - (coats * 24 + lastH + 1) * hourMs;
    const plan = { name, recipeId: "start-general" };
    await does(
      db,
      { do: "log", stream, type: "piece-started", body: { plan, roomId: "first" }, at: startAt },
      now,
    );
    for (let step = 0; step < coats; step++) {
      const coat = recipe?.coats[step];
      if (coat === undefined) throw new Error("the recipe is shorter than the test");
      const body = {
        number: step + 1,
        step,
        kind: coat.kind,
        stuccoId: coat.stuccoId,
        bucketId: coat.kind === "prime" ? "first-prime" : "first-backup",
        roomId: "first",
        prewet: false,
      };
      await does(
        db,
        {
          do: "log",
          stream,
          type: "coat-dipped",
          body,
          at: now - ((coats - 1 - step) * 24 + lastH) * hourMs,
        },
        now,
      );
    }
  }
  const time = { now };
  // Without tone: a test needs no bell.
  const settings = { ...(await readSettings(db)), tone: false };
  const shop = makeShop({ db, clock: () => time.now, newId: () => v7(), opened: settings });
  return { db, shop, time };
}

export const show = (shop: ShopDoor) =>
  render(
    <ShopProvider shop={shop}>
      <DipPage />
    </ShopProvider>,
  );

/** The coats tapped at the bucket, as against those the rack came with. */
export const coatsLogged = async (db: ShopDb): Promise<readonly EntryOf<"coat-dipped">[]> =>
  (await allEntries(db)).filter(
    (entry): entry is EntryOf<"coat-dipped"> =>
      entry.type === "coat-dipped" && "dipId" in entry.body && entry.body.dipId !== undefined,
  );

export async function allEntries(db: ShopDb): Promise<readonly Entry[]> {
  const streams = new Set((await db.entries.toArray()).map(({ stream }) => stream));
  const read = await Promise.all([...streams].map((stream) => readStream(db, stream)));
  return read.flatMap(({ entries }) => entries);
}

export const tileOf = (name: string) => page.getByRole("button", { name: new RegExp(`^${name}`) });
export const doneOf = (name: string) => page.getByRole("group", { name });
export const choose = (name: RegExp) => page.getByRole("button", { name }).click();

/** Keys come up where fingers were; a maker takes longer than this too. */
export const settle = () => new Promise((resolve) => setTimeout(resolve, 750));
