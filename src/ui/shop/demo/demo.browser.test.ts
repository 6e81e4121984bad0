import { afterEach, expect, test } from "vitest";
import { freshShop, removeShops } from "../../../../tests/fixtures/freshShop.ts";
import { dayOne, hour, momentAt } from "../../../../tests/fixtures/logLines.ts";
import { shopStream, streamOf, type EntryBodies, type EntryType } from "../../../logbook/entries/entry.ts";
import { hasDemo, loadDemo, removeDemo } from "../../../storage/demo.ts";
import { relearn } from "../../../storage/learning.ts";
import { readShop } from "../../../storage/reads.ts";
import { runCommand } from "../../../storage/run.ts";
import type { ShopDb } from "../../../storage/rows.ts";
import { demoAlloyId, demoBackupId, demoKilnId } from "./demoIds.ts";
import { demoEntries } from "./demoShop.ts";

afterEach(removeShops);

const kiln = { name: "Kiln", heat: "electric", powerKW: 6, volumeL: 60, maxC: 1250 } as const;

/** Logs in the shop's stream as a visitor would; the id of the line. */
async function own<T extends EntryType>(db: ShopDb, type: T, body: EntryBodies[T]): Promise<string> {
  const command = { do: "log", stream: shopStream, type, body } as unknown as Parameters<
    typeof runCommand
  >[1];
  const ran = await runCommand(db, command, momentAt(dayOne + hour));
  if (!ran.ok) throw new Error(`${type} was not logged`);
  return ran.entries[0]?.id ?? "";
}

const everything = async (db: ShopDb) => [
  await db.entries.toArray(),
  await db.projections.toArray(),
  (await db.settings.toArray()).filter(({ key }) => key !== "lessons"),
];

test("the whole demo comes and goes without a trace, beside a shop with things of its own", async () => {
  const { db } = freshShop();
  const piece = { plan: { name: "Badger" }, roomId: "first" };
  const stream = streamOf("piece", "badger");
  await runCommand(
    db,
    { do: "log", stream, type: "piece-started", body: piece, at: dayOne - hour },
    momentAt(dayOne),
  );
  await own(db, "kiln-set", { ...kiln, kilnId: "019a" });
  const before = await everything(db);

  await loadDemo(db, demoEntries(dayOne, "Europe/Rome"));
  expect((await readShop(db)).kilns.map(({ id }) => id)).toEqual(
    expect.arrayContaining(["019a", demoKilnId]),
  );

  // What a visitor does with it meanwhile.
  const changed = await own(db, "kiln-set", { ...kiln, kilnId: demoKilnId, powerKW: 8 });
  const struck = await own(db, "entry-struck", { struckId: changed, reason: "was right before" });
  await own(db, "entry-struck", { struckId: struck, reason: "was not" });
  const coat = (await db.entries.toArray()).find(({ type }) => type === "coat-dipped");
  await own(db, "drying-pair-judged", { coatId: coat?.id ?? "", leftOut: true, reason: "no" });
  const measured = { alloyId: demoAlloyId, patternMm: 100, castingMm: 98.4, held: "free" } as const;
  await own(db, "shrink-measured", measured);
  await own(db, "stock-moved", { materialId: "019b", how: "made-up", massKg: 1, bucketId: demoBackupId });
  await relearn(db, dayOne + 2 * hour);

  await removeDemo(db);
  expect(await everything(db)).toEqual(before);
  expect(await hasDemo(db)).toBe(false);
});

test("an empty shop is as empty as before once the demo is out", async () => {
  const { db } = freshShop();
  await loadDemo(db, demoEntries(dayOne, "Europe/Rome"));
  await removeDemo(db);
  expect(await everything(db)).toEqual([[], [], []]);
});

test("loaded again a day later it is there once, with today's lines", async () => {
  const { db } = freshShop();
  await loadDemo(db, demoEntries(dayOne, "Europe/Rome"));
  const tomorrow = demoEntries(dayOne + 24 * hour, "Europe/Rome");
  await loadDemo(db, tomorrow);
  expect(await db.entries.count()).toBe(tomorrow.length);
});

test("it may not bring lines for a thing that is the shop's own", async () => {
  const { db } = freshShop();
  const entries = demoEntries(dayOne, "Europe/Rome");
  const stray = entries.flatMap((entry) =>
    entry.type === "kiln-set" ? [{ ...entry, body: { ...entry.body, kilnId: "019a" } }] : [],
  );
  expect(stray).toHaveLength(1);
  expect(() => loadDemo(db, [...entries, ...stray])).toThrow(RangeError);
});
