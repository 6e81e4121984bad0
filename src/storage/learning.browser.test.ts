import { afterEach, expect, test } from "vitest";
import { freshShop, removeShops } from "../../tests/fixtures/freshShop.ts";
import { coatBody, dayOne, hour, line, momentAt } from "../../tests/fixtures/logLines.ts";
import type { EntryBodies, EntryType } from "../logbook/entries/entry.ts";
import { relearn } from "./learning.ts";
import { readRack } from "./reads.ts";
import { runCommand } from "./run.ts";
import type { ShopDb } from "./rows.ts";

afterEach(removeShops);

/** A piece with a coat that a bag found wet an hour before it found it dry, `dryH` after its dip, covered, its wall measured. */
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
  const bag = (rh: number) => ({ method: "bag", rh, roomRh: 0.5, minutes: 30, coatId }) as const;
  await log("dryness-seen", bag(0.98), dryH);
  await log("dryness-seen", bag(0.5), 1 + dryH);
  await log("coat-dipped", coatBody(2), 1.5 + dryH);
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

test("a poured piece that came out sound proves its recipe's shells, and the rack knows of it", async () => {
  const { db } = freshShop();
  const log = async <T extends EntryType>(type: T, body: EntryBodies[T], hours: number): Promise<void> => {
    const at = dayOne + hours * hour;
    const command = { do: "log", stream: "piece/otter", type, body, at } as unknown as Parameters<
      typeof runCommand
    >[1];
    const ran = await runCommand(db, command, momentAt(at));
    if (!ran.ok) throw new Error(`${type} was not logged`);
  };
  const part = { kind: "round", diameterMm: 200 } as const;
  const plan = { name: "Otter", alloyId: "c87300", headM: 1, part, recipeId: "start-general" };
  await log("piece-started", { plan, roomId: "first" }, 0);
  for (const number of [1, 2, 3]) await log("coat-dipped", coatBody(number), 10 * number);
  await log("metal-poured", { metalC: 1150, shellC: 600, massKg: 4, outOfKilnMin: 3 }, 80);
  await log("shell-knocked-out", {}, 82);
  await relearn(db, dayOne + 83 * hour);
  expect((await readRack(db, dayOne + 83 * hour)).shop.proven).toBeUndefined();
  await log("outcome-told", { result: "sound", defects: [] }, 84);
  await relearn(db, dayOne + 85 * hour);
  const { shop, stamps } = await readRack(db, dayOne + 85 * hour);
  expect(shop.proven).toMatchObject([{ pieceId: "otter", recipeId: "start-general", held: true }]);
  expect(JSON.stringify([...(stamps ?? [])])).toContain("otter");
});

test("invented coats teach the factor until the first coat of the shop's own is seen dry, and no longer", async () => {
  const { db } = freshShop();
  await readShopAir(db);
  await seenDry(db, "demo-heron", 16);
  const demo = await taughtBy(db);
  expect(demo.by).toEqual(["demo-heron"]);
  expect(demo.reads).toBe(1);

  await seenDry(db, "badger", 1.5);
  const both = await taughtBy(db);
  expect(both.by).toEqual(["badger"]);
  expect(both.reads).toBe(1);
  expect(both.factor).toBeLessThan(demo.factor);

  const { db: alone } = freshShop();
  await readShopAir(alone);
  await seenDry(alone, "badger", 1.5);
  expect(both).toEqual(await taughtBy(alone));
});

test("what was learned from touches before is not trusted: it is made again from the log", async () => {
  const { db } = freshShop();
  await readShopAir(db);
  await seenDry(db, "badger", 4);
  const factor = {
    factor: 0.71,
    low: 0.5,
    high: 1,
    lnMean: -0.34,
    lnSd: 0.2,
    scatter: 0.25,
    safeMultiplier: 1.1,
    pairs: 1,
    limited: false,
  };
  // As version one of the sums kept it.
  await db.settings.put({
    key: "learning",
    value: { shop: factor, groups: [["prime/still", factor]], scatter: 0.25 },
  });
  const pair = { pieceId: "badger", coatId: "x", coatNumber: 1, dippedAt: dayOne, group: "prime/still" };
  const touched = { ...pair, predictedS: 3600, wetAtS: null, dryAtS: 1800, weight: 0.3, method: "touch" };
  await db.settings.put({
    key: "lessons",
    value: { sums: 1, byPiece: { badger: { mark: "", pairs: [touched], weighings: [], reads: [] } } },
  });
  expect((await readRack(db, dayOne)).learned).toBeNull();
  const { pairs, learning } = await relearn(db, dayOne + 2000 * hour);
  expect(pairs.map(({ method }) => method)).toEqual(["bag"]);
  expect((await readRack(db, dayOne)).learned?.shop).toEqual(learning.shop);
  expect((await readRack(db, dayOne)).learned?.without.get(pairs[0]?.coatId ?? "")?.shopPairs).toBe(0);
});

test("the same pairs are not learned from twice", async () => {
  const { db } = freshShop();
  await readShopAir(db);
  await seenDry(db, "badger", 4);
  const first = await relearn(db, dayOne + 2000 * hour);
  const row = await db.settings.get("learning");
  const again = await relearn(db, dayOne + 2001 * hour);
  expect(again.learning.shop).toEqual(first.learning.shop);
  expect([...again.learning.without]).toEqual([...first.learning.without]);
  expect(await db.settings.get("learning")).toEqual(row);
});
