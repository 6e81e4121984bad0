import { afterEach, describe, expect, test, vi } from "vitest";
import { freshShop, removeShops } from "../../tests/fixtures/freshShop.ts";
import { dayOne, hour, line, momentAt } from "../../tests/fixtures/logLines.ts";
import type { Command } from "../logbook/log/command.ts";
import type { EntryBodies } from "../logbook/entries/entry.ts";
import { readRoom, readRooms } from "./reads.ts";
import { rebuildProjections } from "./rebuild.ts";
import { readingsSince } from "./roomReadings.ts";
import { runCommand, runCommands } from "./run.ts";
import type { ShopDb } from "./rows.ts";

afterEach(removeShops);

const room = "room/first";
const at = (h: number): number => dayOne + h * hour;
/** Readings every hour for `hours`, the humidity telling which. */
const block = (first: number, hours: number, air: EntryBodies["air-logged"]["air"] = null) => ({
  source: "logger",
  air,
  afterS: Array.from({ length: hours }, (_, i) => i * 3600),
  airC: Array.from({ length: hours }, () => 20),
  rh: Array.from({ length: hours }, (_, i) => (first + i) / 1000),
});
const logged = (first: number, hours: number, air: EntryBodies["air-logged"]["air"] = null): Command => ({
  do: "log",
  stream: room,
  type: "air-logged",
  body: block(first, hours, air),
  at: at(first),
});
const late = momentAt(at(5000));
const rhOf = async (db: ShopDb, since: number): Promise<readonly number[]> =>
  (await readingsSince(db, "first", at(since))).map(({ rh }) => Math.round(rh * 1000));

describe("readings of a room from a time on", () => {
  test("come out of blocks that began before it, led by the one that held then", async () => {
    const { db } = freshShop();
    for (const first of [0, 24, 48]) await runCommand(db, logged(first, 24), late);
    expect(await rhOf(db, 46.5)).toEqual([46, 47, ...Array.from({ length: 24 }, (_, i) => 48 + i)]);
    expect(await rhOf(db, 71)).toEqual([70, 71]);
    expect(await rhOf(db, 500)).toEqual([71]);
    expect(await rhOf(db, -10)).toHaveLength(72);
  });

  test("take the air movement that was said long before", async () => {
    const { db } = freshShop();
    await runCommand(
      db,
      {
        do: "log",
        stream: room,
        type: "air-read",
        body: { airC: 20, rh: 0.5, air: "strong" },
        at: at(-2000),
      },
      late,
    );
    for (let day = 0; day < 20; day++) await runCommand(db, logged(day * 24, 24), late);
    const airs = new Set((await readingsSince(db, "first", at(400))).map(({ air }) => air));
    expect(airs).toEqual(new Set(["strong"]));
  });

  test("are the very same objects when nothing new is read, and others once the air is said to move", async () => {
    const { db } = freshShop();
    await runCommand(db, logged(0, 24), late);
    const [before] = await readingsSince(db, "first", at(0));
    const [again] = await readingsSince(db, "first", at(0));
    expect(again).toBe(before);
    await runCommand(
      db,
      { do: "log", stream: room, type: "air-read", body: { airC: 20, rh: 0.5, air: "tunnel" }, at: at(-1) },
      late,
    );
    const airs = (await readingsSince(db, "first", at(0))).map(({ air }) => air);
    expect(new Set(airs)).toEqual(new Set(["tunnel"]));
  });

  test("go when their block is struck", async () => {
    const { db } = freshShop();
    const ran = await runCommand(db, logged(0, 24), late);
    expect(await rhOf(db, 0)).toHaveLength(24);
    const entryId = ran.ok ? (ran.entries[0]?.id ?? "") : "";
    await runCommand(db, { do: "strike", stream: room, entryId, reason: "other room" }, late);
    expect(await rhOf(db, 0)).toEqual([]);
    expect((await readRooms(db))[0]?.last).toBeNull();
  });

  test("of sixty days at five minutes are unpacked once, however often they are fetched", async () => {
    const { db } = freshShop();
    const afterS = Array.from({ length: 288 }, (_, i) => i * 300);
    const body = { source: "x", air: null, afterS, airC: afterS.map(() => 20), rh: afterS.map(() => 0.5) };
    await db.entries.bulkAdd(
      Array.from({ length: 60 }, (_, day) => line(room, "air-logged", body, { at: at(day * 24) })),
    );
    const first = await readingsSince(db, "first", at(0));
    const again = await readingsSince(db, "first", at(0));
    expect(first).toHaveLength(17_280);
    expect(again).toHaveLength(17_280);
    expect(again.every((reading, i) => reading === first[i])).toBe(true);
  });
});

describe("a block that is newer than all before", () => {
  test("goes in without the room's whole log being read; its last reading is the room's", async () => {
    const { db } = freshShop();
    await runCommand(db, logged(0, 24), late);
    const read = vi.spyOn(IDBIndex.prototype, "getAll");
    await runCommand(db, logged(24, 24, "tunnel"), late);
    expect(read.mock.calls).toHaveLength(1);
    read.mockRestore();
    expect((await readRooms(db))[0]?.last).toMatchObject({ rh: 0.047, air: "tunnel", at: at(47) });
    await runCommand(db, logged(48, 2), late);
    const kept = await db.projections.toArray();
    await rebuildProjections(db);
    expect(kept).toEqual(await db.projections.toArray());
    expect((await readRoom(db, "first"))?.readings.at(-1)?.air).toBe("tunnel");
  });

  test("is judged against the end of the last block, not its start", async () => {
    const { db } = freshShop();
    await runCommand(db, logged(0, 24), late);
    const body = { airC: 9, rh: 0.9, air: "still" } as const;
    await runCommand(db, { do: "log", stream: room, type: "air-read", body, at: at(5.5) }, late);
    expect((await readRooms(db))[0]?.last?.rh).toBe(0.023);
  });
});

describe("many blocks at once", () => {
  const days = (count: number): readonly Command[] =>
    Array.from({ length: count }, (_, day) => logged(day * 24, 24));

  test("all go in", async () => {
    const { db } = freshShop();
    expect(await runCommands(db, days(30), late)).toMatchObject({ ok: true });
    expect(await db.entries.count()).toBe(30);
    expect((await readRooms(db))[0]?.last?.rh).toBe(0.719);
    const kept = await db.projections.toArray();
    await rebuildProjections(db);
    expect(kept).toEqual(await db.projections.toArray());
  });

  test("none goes in where one is refused, and none is nothing", async () => {
    const { db } = freshShop();
    const wrong: Command = {
      do: "log",
      stream: room,
      type: "air-logged",
      body: { ...block(0, 3), rh: [0.5, 55, 0.5] },
      at: at(900),
    };
    expect(await runCommands(db, [...days(3), wrong], late)).toMatchObject({
      ok: false,
      refusal: { code: "out-of-range", field: "rh", found: 55 },
    });
    expect([await db.entries.count(), await db.projections.count()]).toEqual([0, 0]);
    expect(await runCommands(db, [], late)).toEqual({ ok: true, entries: [] });
  });

  test("of different rooms go in together or not at all", async () => {
    const { db } = freshShop();
    const attic = { do: "log", stream: "room/attic" } as const;
    await runCommand(
      db,
      { ...attic, type: "room-set", body: { name: "Attic", altitudeM: 0 }, at: at(-1) },
      late,
    );
    const up = (first: number): Command => ({
      ...attic,
      type: "air-logged",
      body: block(first, 2),
      at: at(first),
    });
    expect(await runCommands(db, [...days(1), up(24)], late)).toMatchObject({ ok: true });
    expect(await db.entries.count()).toBe(3);
    const wrong: Command = { ...attic, type: "air-logged", body: { ...block(0, 1), rh: [55] }, at: at(30) };
    expect(await runCommands(db, [...days(2).slice(1), wrong], late)).toMatchObject({ ok: false });
    expect(await db.entries.count()).toBe(3);
  });
});
