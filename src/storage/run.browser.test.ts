import { afterEach, describe, expect, test, vi } from "vitest";
import { freshShop, removeShops } from "../../tests/fixtures/freshShop.ts";
import { coatBody, dayOne, hour, line, momentAt } from "../../tests/fixtures/logLines.ts";
import { standingOf } from "../logbook/piece/buildStanding.ts";
import type { Command } from "../logbook/log/command.ts";
import type { EntryBodies, EntryType } from "../logbook/entries/entry.ts";
import { readPiece, readRack, readRoom, readRooms } from "./reads.ts";
import { runCommand } from "./run.ts";
import type { ShopDb } from "./rows.ts";

afterEach(removeShops);

const heron = "piece/heron";
const at = (h: number) => momentAt(dayOne + h * hour);
const start: Command = {
  do: "log",
  stream: heron,
  type: "piece-started",
  body: { plan: { name: "Heron" }, roomId: "first" },
};
const coat = (number: number): Command => ({
  do: "log",
  stream: heron,
  type: "coat-dipped",
  body: coatBody(number),
});
const air = (rh: number, when?: number, stream = "room/first"): Command => ({
  do: "log",
  stream,
  type: "air-read",
  body: { airC: 20, rh, air: "still" },
  at: when,
});
const coatsOf = async (db: ShopDb) => (await readPiece(db, "heron", dayOne + 99 * hour))?.piece.coats ?? [];
const idOf = async (db: ShopDb, command: Command, h: number): Promise<string> => {
  const ran = await runCommand(db, command, at(h));
  if (!ran.ok) throw new Error(JSON.stringify(ran));
  return ran.entries[0]?.id ?? "";
};

describe("a poured piece", () => {
  test("is told as it was before the pour: what each coat had dried at its dip does not change", async () => {
    const { db } = freshShop();
    const piece = <T extends EntryType>(type: T, body: EntryBodies[T]): Command =>
      ({ do: "log", stream: heron, type, body }) as Command;
    const lines: readonly (readonly [hour: number, command: Command])[] = [
      [0, start],
      [0.5, air(0.5)],
      [1, coat(1)],
      [1.1, coat(2)],
      [20, air(0.55)],
      [24, coat(3)],
      [40, air(0.5)],
      [60, piece("burnout-started", {})],
      [64, piece("burnout-ended", { result: "clean" })],
      [65, piece("shell-fired", { peakC: 850, holdMin: 60 })],
    ];
    for (const [h, command] of lines) await runCommand(db, command, at(h));
    const beneathAt = async (h: number) => {
      const read = await readPiece(db, "heron", dayOne + h * hour);
      if (read === null) throw new Error("the piece is gone");
      return standingOf(read.piece, read, dayOne + h * hour).drying.slice(0, -1);
    };
    const before = (await beneathAt(66)).map(({ verdict, leftShare }) => [verdict, leftShare]);
    expect(before.map(([verdict]) => verdict)).toEqual(["wet", "dry"]);
    const poured = { metalC: 1150, shellC: 600, massKg: 4, outOfKilnMin: 3 };
    await runCommand(db, piece("metal-poured", poured), at(67));
    await runCommand(db, air(0.9), at(70));
    for (const h of [68, 80, 2000])
      expect((await beneathAt(h)).map(({ verdict, leftShare }) => [verdict, leftShare])).toEqual(before);
  });
});

describe("a command", () => {
  test("is in the log and on the rack when it is said to be done", async () => {
    const { db, again } = freshShop();
    await runCommand(db, start, at(0));
    const ran = await runCommand(db, coat(1), at(1));
    expect(ran).toMatchObject({ ok: true, entries: [{ type: "coat-dipped", at: dayOne + hour }] });
    const { pieces } = await readRack(again(), dayOne + 2 * hour);
    expect(pieces.map(({ plan, coats }) => [plan.name, coats.length])).toEqual([["Heron", 1]]);
  });

  test("that is refused leaves nothing behind", async () => {
    const { db } = freshShop();
    expect(await runCommand(db, coat(1), at(0))).toMatchObject({
      ok: false,
      refusal: { code: "no-such-stream" },
    });
    expect(await db.entries.toArray()).toEqual([]);
    expect(await db.projections.toArray()).toEqual([]);
  });

  test("with a note too long to be read back is refused, not lost later", async () => {
    const { db } = freshShop();
    await runCommand(db, start, at(0));
    const wordy: Command = {
      do: "log",
      stream: heron,
      type: "wire-wrapped",
      body: { note: "x".repeat(4001) },
    };
    expect(await runCommand(db, wordy, at(1))).toEqual({
      ok: false,
      refusal: { code: "out-of-range", field: "note", found: 4001, low: 0, high: 4000 },
    });
    expect((await readPiece(db, "heron", dayOne))?.entries).toHaveLength(1);
  });
});

describe("two tabs", () => {
  test("that tap the same coat at once log it once", async () => {
    const { db, again } = freshShop();
    const other = again();
    await runCommand(db, start, at(0));
    for (let number = 1; number <= 20; number++) {
      const both = await Promise.all([
        runCommand(db, coat(number), at(number)),
        runCommand(other, coat(number), at(number)),
      ]);
      expect(both.filter(({ ok }) => ok)).toHaveLength(1);
      expect(both.find(({ ok }) => !ok)).toMatchObject({ refusal: { code: "already-logged", number } });
    }
    expect(await coatsOf(db)).toHaveLength(20);
    expect(await db.entries.toCollection().primaryKeys()).toHaveLength(21);
  });

  test("that tap different pieces at once both get their coat", async () => {
    const { db, again } = freshShop();
    const other = again();
    const crane = "piece/crane";
    await runCommand(db, start, at(0));
    await runCommand(db, { ...start, stream: crane }, at(0));
    const both = await Promise.all([
      runCommand(db, coat(1), at(1)),
      runCommand(other, { ...coat(1), stream: crane }, at(1)),
    ]);
    expect(both.map(({ ok }) => ok)).toEqual([true, true]);
  });
});

describe("undo", () => {
  test("takes a coat out, and undoing the undo brings it back", async () => {
    const { db } = freshShop();
    await runCommand(db, start, at(0));
    const id = await idOf(db, coat(1), 1);
    const strike = await idOf(db, { do: "strike", stream: heron, entryId: id, reason: "undo" }, 2);
    expect(await coatsOf(db)).toEqual([]);
    expect((await readRack(db, dayOne)).pieces[0]?.coats).toEqual([]);
    await idOf(db, { do: "strike", stream: heron, entryId: strike, reason: "undo" }, 3);
    expect((await readRack(db, dayOne)).pieces[0]?.coats.map((c) => c.id)).toEqual([id]);
    expect((await readPiece(db, "heron", dayOne))?.entries.map(({ type }) => type)).toEqual([
      "piece-started",
      "coat-dipped",
      "entry-struck",
      "entry-struck",
    ]);
  });

  test("of a start takes the piece off the rack and keeps its lines", async () => {
    const { db } = freshShop();
    const id = await idOf(db, start, 0);
    await runCommand(db, { do: "strike", stream: heron, entryId: id, reason: "twice" }, at(1));
    expect((await readRack(db, dayOne)).pieces).toEqual([]);
    expect(await db.entries.toArray()).toHaveLength(2);
  });
});

test("a correction writes the strike and the right line together or not at all", async () => {
  const { db } = freshShop();
  await runCommand(db, start, at(0));
  const id = await idOf(db, coat(1), 2);
  const taken = (await readPiece(db, "heron", dayOne))?.entries[0]?.id ?? "";
  const ids = ["fresh", taken];
  const clumsy = { ...at(3), newId: () => ids.shift() ?? "" };
  const move: Command = { do: "correct", stream: heron, entryId: id, at: dayOne + hour, reason: "at eight" };
  await expect(runCommand(db, move, clumsy)).rejects.toThrow();
  expect(await db.entries.get("fresh")).toBeUndefined();
  expect((await coatsOf(db)).map(({ dippedAt }) => dippedAt)).toEqual([dayOne + 2 * hour]);
  await runCommand(db, move, at(3));
  expect((await coatsOf(db)).map(({ dippedAt }) => dippedAt)).toEqual([dayOne + hour]);
});

test("every write asks the browser to reach the disk before it counts as done", async () => {
  const { db } = freshShop();
  const asked = vi.spyOn(IDBDatabase.prototype, "transaction");
  await runCommand(db, start, at(0));
  const writes = asked.mock.calls.filter(([, mode]) => mode === "readwrite");
  asked.mockRestore();
  expect(writes.map(([, , options]) => options)).toEqual([{ durability: "strict" }]);
});

test("a command is done only after its transaction is complete", async () => {
  const { db } = freshShop();
  const order: string[] = [];
  const plain = Object.getOwnPropertyDescriptor(IDBDatabase.prototype, "transaction")
    ?.value as IDBDatabase["transaction"];
  const asked = vi.spyOn(IDBDatabase.prototype, "transaction").mockImplementation(function (
    this: IDBDatabase,
    ...args
  ) {
    const transaction = plain.apply(this, args);
    if (args[1] === "readwrite") transaction.addEventListener("complete", () => order.push("complete"));
    return transaction;
  });
  await runCommand(db, start, at(0));
  order.push("done");
  asked.mockRestore();
  expect(order).toEqual(["complete", "done"]);
});

describe("readings of a room", () => {
  test("go in without the room's whole log being read, and the newest is shown", async () => {
    const { db } = freshShop();
    const attic = "room/attic";
    const named: Command = {
      do: "log",
      stream: attic,
      type: "room-set",
      body: { name: "Attic", altitudeM: 9 },
    };
    await runCommand(db, named, at(0));
    await runCommand(db, air(0.5, undefined, attic), at(1));
    const read = vi.spyOn(IDBIndex.prototype, "getAll");
    await runCommand(db, air(0.6, undefined, attic), at(2));
    const rowsAsked = read.mock.calls.map(([options]) => (options as { count?: number }).count);
    read.mockRestore();
    expect(rowsAsked).toEqual([1]);
    expect((await readRooms(db)).map(({ id, altitudeM, last }) => [id, altitudeM, last?.rh])).toEqual([
      ["first", 0, undefined],
      ["attic", 9, 0.6],
    ]);
  });

  test("put in late do not pass for the newest", async () => {
    const { db } = freshShop();
    await runCommand(db, air(0.5), at(2));
    await runCommand(db, air(0.7, dayOne + hour), at(3));
    expect((await readRooms(db))[0]?.last?.rh).toBe(0.5);
    expect((await readRoom(db, "first"))?.readings.map(({ rh }) => rh)).toEqual([0.7, 0.5]);
  });

  test("of a room nobody set up are refused", async () => {
    const { db } = freshShop();
    expect(await runCommand(db, air(0.5, undefined, "room/attic"), at(0))).toMatchObject({
      refusal: { code: "no-such-stream" },
    });
  });

  test("struck ones give way to the one before", async () => {
    const { db } = freshShop();
    await runCommand(db, air(0.5), at(0));
    const id = await idOf(db, air(0.9), 1);
    await runCommand(db, { do: "strike", stream: "room/first", entryId: id, reason: "breathed on" }, at(2));
    expect((await readRooms(db))[0]?.last?.rh).toBe(0.5);
  });
});

describe("a stored line that can't be read", () => {
  test("is set aside and told of, and the rest of the log goes on", async () => {
    const { db } = freshShop();
    await runCommand(db, start, at(0));
    const broken = { ...line(heron, "coat-dipped", coatBody(1)), body: { number: "one" } };
    await db.entries.add(broken);
    await runCommand(db, coat(1), at(1));
    const read = await readPiece(db, "heron", dayOne);
    expect(read?.piece.coats).toHaveLength(1);
    expect(read?.setAside.map(({ id, fault }) => [id, fault.field])).toEqual([[broken.id, "body.number"]]);
    expect(await db.entries.get(broken.id)).toEqual(broken);
  });
});
