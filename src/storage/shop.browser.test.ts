import { liveQuery } from "dexie";
import { afterEach, describe, expect, test } from "vitest";
import { freshShop, removeShops } from "../../tests/fixtures/freshShop.ts";
import { coatBody, dayOne, hour, line, momentAt } from "../../tests/fixtures/logLines.ts";
import { hasDemo, loadDemo, removeDemo } from "./demo.ts";
import { dropDraft, hasDrafts, readDraft, writeDraft } from "./drafts.ts";
import { getPhoto, putPhoto } from "./photos.ts";
import { readArchive, readPiece, readRack, readRecipes, readRoom, readRooms } from "./reads.ts";
import { runCommand } from "./run.ts";
import { changeSettings, ensureDevice, readSettings, startingSettings } from "./settings.ts";
import { openShopDb } from "./shopDb.ts";
import type { ShopDb } from "./rows.ts";

afterEach(removeShops);

const start = (id: string) =>
  ({
    do: "log",
    stream: `piece/${id}`,
    type: "piece-started",
    body: { plan: { name: id }, roomId: "first" },
  }) as const;
const names = async (db: ShopDb, archived = false) =>
  (archived ? await readArchive(db) : (await readRack(db, dayOne)).pieces)
    .map(({ plan }) => plan.name)
    .sort();

describe("a new shop", () => {
  test("has a room and starting recipes before anything is logged", async () => {
    const { db } = freshShop();
    expect((await readRooms(db)).map(({ id }) => id)).toEqual(["first"]);
    expect((await readRecipes(db)).map(({ id }) => id)).toEqual([
      "start-small",
      "start-general",
      "start-large",
    ]);
    const { pieces, rooms, readings } = await readRack(db, dayOne);
    expect([pieces.length, [...rooms.keys()], readings.get("first")]).toEqual([0, ["first"], []]);
    expect(await readPiece(db, "none", dayOne)).toBeNull();
    expect(await readRoom(db, "none")).toBeNull();
  });
});

describe("the rack", () => {
  test("holds what is in work; what is through or put away is in the archive", async () => {
    const { db } = freshShop();
    for (const id of ["a", "b", "c"]) await runCommand(db, start(id), momentAt(dayOne));
    await runCommand(
      db,
      { do: "log", stream: "piece/b", type: "piece-archived", body: { archived: true } },
      momentAt(dayOne),
    );
    await runCommand(
      db,
      { do: "log", stream: "piece/c", type: "piece-scrapped", body: { reason: "fell" } },
      momentAt(dayOne),
    );
    expect(await names(db)).toEqual(["a"]);
    expect(await names(db, true)).toEqual(["b", "c"]);
    await runCommand(
      db,
      { do: "log", stream: "piece/b", type: "piece-archived", body: { archived: false } },
      momentAt(dayOne + hour),
    );
    expect(await names(db)).toEqual(["a", "b"]);
  });

  test("brings the air since two days before the first coat, and the reading that held then", async () => {
    const { db } = freshShop();
    const air = (at: number, rh: number) =>
      line("room/first", "air-read", { airC: 20, rh, air: "still" }, { at });
    await db.entries.bulkAdd([0, 24, 48, 72, 96, 120].map((h) => air(dayOne + h * hour, h / 200)));
    await runCommand(db, start("p"), momentAt(dayOne));
    const body = coatBody(1);
    await runCommand(
      db,
      { do: "log", stream: "piece/p", type: "coat-dipped", body, at: dayOne + 98 * hour },
      momentAt(dayOne + 98 * hour),
    );
    const hours = async (now: number) =>
      (await readRack(db, now)).readings.get("first")?.map(({ at }) => (at - dayOne) / hour);
    expect(await hours(dayOne + 130 * hour)).toEqual([48, 72, 96, 120]);
    expect((await readPiece(db, "p", dayOne + 9000 * hour))?.readings.get("first")).toHaveLength(4);
    expect(await hours(dayOne + 9000 * hour)).toEqual([48, 72, 96, 120]);
  });

  test("is told of a new coat by a live query in another tab", async () => {
    const { db, again } = freshShop();
    await runCommand(db, start("p"), momentAt(dayOne));
    const seen: number[] = [];
    const two = new Promise<void>((resolve, reject) => {
      liveQuery(() => readRack(again(), dayOne)).subscribe({
        next: ({ pieces }) => {
          seen.push(pieces[0]?.coats.length ?? -1);
          if (seen.includes(1)) resolve();
        },
        error: reject,
      });
    });
    await expect.poll(() => seen).toEqual([0]);
    await runCommand(
      db,
      { do: "log", stream: "piece/p", type: "coat-dipped", body: coatBody(1) },
      momentAt(dayOne + hour),
    );
    await two;
    expect(seen.at(-1)).toBe(1);
  });
});

describe("the demo shop", () => {
  const demo = [
    line("room/demo-r", "room-set", { name: "Demo room", altitudeM: 100 }),
    line("piece/demo-1", "piece-started", { plan: { name: "Demo" }, roomId: "demo-r" }),
    line("piece/demo-1", "coat-dipped", coatBody(1, "demo-r"), { at: dayOne + hour }),
  ];
  const real = async (db: ShopDb) => {
    for (const id of ["mine", "demon", "dem"]) await runCommand(db, start(id), momentAt(dayOne));
    await putPhoto(db, new Blob(["x"], { type: "image/png" }), "mine");
  };
  const everything = async (db: ShopDb) => [
    await db.entries.toArray(),
    await db.projections.toArray(),
    await db.photos.toCollection().primaryKeys(),
  ];

  test("comes and goes, with what was logged on it, and leaves real pieces as they are", async () => {
    const { db } = freshShop();
    await real(db);
    const before = await everything(db);
    await loadDemo(db, demo);
    expect(await names(db)).toEqual(["Demo", "dem", "demon", "mine"]);
    expect(await hasDemo(db)).toBe(true);
    await runCommand(
      db,
      { do: "log", stream: "piece/demo-1", type: "coat-dipped", body: coatBody(2, "demo-r") },
      momentAt(dayOne + 9 * hour),
    );
    await putPhoto(db, new Blob(["x"], { type: "image/png" }), "demo-photo");
    await removeDemo(db);
    expect(await everything(db)).toEqual(before);
    expect(await hasDemo(db)).toBe(false);
  });

  test("loaded twice is there once", async () => {
    const { db } = freshShop();
    await loadDemo(db, demo);
    const once = await everything(db);
    await loadDemo(db, demo);
    expect(await everything(db)).toEqual(once);
  });

  test("may not bring entries for a real piece", () => {
    const { db } = freshShop();
    const stray = line("piece/mine", "wire-wrapped", { note: "" });
    expect(() => loadDemo(db, [...demo, stray])).toThrow(RangeError);
  });
});

describe("settings", () => {
  test("start as they should and change one at a time, also from two tabs at once", async () => {
    const { db, again } = freshShop();
    expect(await readSettings(db)).toEqual(startingSettings);
    await Promise.all([changeSettings(db, { units: "us" }), changeSettings(again(), { signName: "R." })]);
    expect(await readSettings(db)).toEqual({ ...startingSettings, units: "us", signName: "R." });
  });

  test("lose only the damaged value", async () => {
    const { db } = freshShop();
    await db.settings.put({
      key: "own",
      value: { units: "furlongs", theme: "sun", ringTested: 4, tone: "yes" },
    });
    expect(await readSettings(db)).toEqual({ ...startingSettings, theme: "sun" });
  });

  test("give two tabs opened together the same device name", async () => {
    const { db, again } = freshShop();
    const ids = await Promise.all([ensureDevice(db, () => "d-1"), ensureDevice(again(), () => "d-2")]);
    expect(new Set(ids).size).toBe(1);
    expect(await ensureDevice(db, () => "d-3")).toBe(ids[0]);
  });
});

test("a draft is kept until it is dropped, and is missed by an update", async () => {
  const { db, again } = freshShop();
  expect(await hasDrafts(db)).toBe(false);
  await writeDraft(db, "piece-new", { name: "Heron", headM: null });
  expect(await readDraft(again(), "piece-new")).toEqual({ name: "Heron", headM: null });
  expect(await hasDrafts(db)).toBe(true);
  await dropDraft(db, "piece-new");
  expect([await readDraft(db, "piece-new"), await hasDrafts(db)]).toEqual([null, false]);
});

test("a photo comes back as it went in, and what is no picture is refused", async () => {
  const { db } = freshShop();
  await putPhoto(db, new Blob([new Uint8Array([1, 2, 3])], { type: "image/webp" }), "p");
  const photo = await getPhoto(db, "p");
  expect([photo?.type, [...new Uint8Array((await photo?.arrayBuffer()) ?? [])]]).toEqual([
    "image/webp",
    [1, 2, 3],
  ]);
  expect(await getPhoto(db, "none")).toBeNull();
  await expect(putPhoto(db, new Blob(["<svg/>"], { type: "image/svg+xml" }), "s")).rejects.toThrow(
    RangeError,
  );
});

test("a tab whose store another tab renews closes it and is told so", async () => {
  const { db } = freshShop();
  let told = 0;
  const old = openShopDb(db.name, { onOutdated: () => told++ });
  await old.open();
  db.close();
  const newer = indexedDB.open(db.name, 999);
  await new Promise((resolve) => newer.addEventListener("success", resolve));
  expect([told, old.isOpen()]).toEqual([1, false]);
  newer.result.close();
});
