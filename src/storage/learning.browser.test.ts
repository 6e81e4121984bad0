import { afterEach, expect, test } from "vitest";
import { freshShop, removeShops } from "../../tests/fixtures/freshShop.ts";
import { coatBody, dayOne, hour, line, momentAt } from "../../tests/fixtures/logLines.ts";
import type { EntryBodies, EntryType } from "../logbook/entry.ts";
import { relearn } from "./learning.ts";
import { runCommand } from "./run.ts";
import type { ShopDb } from "./shopDb.ts";

afterEach(removeShops);

/** A piece with one coat that was felt wet an hour before it was felt dry, `dryH` after its dip, its wall measured. */
async function seenDry(db: ShopDb, id: string, dryH: number): Promise<void> {
  const log = async <T extends EntryType>(type: T, body: EntryBodies[T], hours: number): Promise<string> => {
    const at = dayOne + hours * hour;
    const command = { do: "log", stream: `piece/${id}`, type, body, at } as unknown as Parameters<
      typeof runCommand
    >[1];
    const ran = await runCommand(db, command, momentAt(at));
    if (!ran.ok) throw new Error(`${type} was not logged`);
    return ran.entries[0]?.id ?? "";
  };
  await log("piece-started", { plan: { name: id }, roomId: "first" }, 0);
  const coatId = await log("coat-dipped", coatBody(1), 1);
  await log("dryness-seen", { method: "touch", verdict: "wet", coatId }, dryH);
  await log("dryness-seen", { method: "touch", verdict: "dry", coatId }, 1 + dryH);
  await log("wall-measured", { wallMm: dryH / 4 }, 2 + dryH);
}

async function readShopAir(db: ShopDb): Promise<void> {
  const air = (h: number) =>
    line("room/first", "air-read", { airC: 20, rh: 0.5, air: "still" }, { at: dayOne + h * hour });
  await db.entries.bulkAdd([-4, 0, 4, 8, 12, 16, 20, 24].map(air));
}

const taughtBy = async (db: ShopDb) => {
  const { learning, pairs, reads } = await relearn(db, dayOne + 30 * hour);
  return { factor: learning.shop.factor, by: pairs.map(({ pieceId }) => pieceId), reads: reads.length };
};

test("invented coats teach the factor until the first coat of the shop's own is seen dry, and no longer", async () => {
  const { db } = freshShop();
  await readShopAir(db);
  await seenDry(db, "demo-heron", 16);
  const demo = await taughtBy(db);
  expect(demo.by).toEqual(["demo-heron"]);
  expect(demo.reads).toBe(1);

  await seenDry(db, "badger", 4);
  const both = await taughtBy(db);
  expect(both.by).toEqual(["badger"]);
  expect(both.reads).toBe(1);
  expect(both.factor).toBeLessThan(demo.factor);

  const { db: alone } = freshShop();
  await readShopAir(alone);
  await seenDry(alone, "badger", 4);
  expect(both).toEqual(await taughtBy(alone));
});
