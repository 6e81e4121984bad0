import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { freshShop, removeShops } from "../../tests/fixtures/freshShop.ts";
import { coatBody, dayOne, hour, momentAt } from "../../tests/fixtures/logLines.ts";
import { startRun } from "../logbook/acts/startRun.ts";
import { streamOf } from "../logbook/entries/entry.ts";
import * as effective from "../logbook/log/effective.ts";
import type { Command } from "../logbook/log/command.ts";
import * as fold from "../logbook/log/fold.ts";
import * as entrySchema from "./entrySchema.ts";
import { readRun } from "./fires.ts";
import { rebuildProjections } from "./rebuild.ts";
import type { ShopDb } from "./rows.ts";
import { readAct, runCommand, runCommands, runTakeBack } from "./run.ts";

vi.mock("../logbook/log/effective.ts", { spy: true });
vi.mock("../logbook/log/fold.ts", { spy: true });
vi.mock("./entrySchema.ts", { spy: true });

const at = (h: number) => momentAt(dayOne + h * hour);
const ids = ["a", "b", "c", "d", "e", "f"];
const started = (id: string): Command => ({
  do: "log",
  stream: streamOf("piece", id),
  type: "piece-started",
  body: { plan: { name: `Piece ${id}` }, roomId: "first" },
});

beforeEach(() => vi.clearAllMocks());
afterEach(removeShops);

async function planned(db: ShopDb): Promise<void> {
  for (const id of ids) await runCommand(db, started(id), at(0));
  const body = {
    kilnId: null,
    purpose: "burnout",
    pieceIds: ids,
    startC: 20,
    segments: [{ kind: "ramp", toC: 700, rateKPerH: 120 }],
  } as const;
  await runCommand(db, { do: "log", stream: "run/r", type: "run-planned", body }, at(1));
}
const piecesIn = async (db: ShopDb) =>
  (await db.projections.toArray()).flatMap((row) => (row.kind === "piece" ? [row.state] : []));
const phases = async (db: ShopDb) => (await piecesIn(db)).map(({ phase }) => phase);
const begin = async (db: ShopDb, h: number) => {
  const run = (await readRun(db, "r"))?.run;
  if (run === undefined) throw new Error("no run");
  return runCommands(db, startRun(run, await piecesIn(db), { kilnC: 20 }), at(h));
};
const rowsOf = async (db: ShopDb) =>
  JSON.stringify([await db.entries.toArray(), await db.projections.toArray()]);

test("a burnout of six pieces begins in all seven logs, in one transaction, with rows as the log alone gives them", async () => {
  const { db } = freshShop();
  await planned(db);
  const ran = await begin(db, 2);
  expect(ran).toMatchObject({ ok: true });
  expect(await phases(db)).toEqual(ids.map(() => "burnout"));
  const rows = await db.projections.toArray();
  await rebuildProjections(db);
  expect(await db.projections.toArray()).toEqual(rows);
});

test("one piece that refuses leaves all seven logs and rows as they were, and its reason is given with its stream", async () => {
  const { db } = freshShop();
  await planned(db);
  const pour = { metalC: 1150, shellC: 500, massKg: null, outOfKilnMin: null };
  await runCommand(db, { do: "log", stream: "piece/d", type: "coat-dipped", body: coatBody(1) }, at(1));
  await runCommand(db, { do: "log", stream: "piece/d", type: "metal-poured", body: pour }, at(1.5));
  const before = await rowsOf(db);
  expect(await begin(db, 2)).toMatchObject({
    ok: false,
    stream: "piece/d",
    refusal: { code: "wrong-phase", phase: "poured" },
  });
  expect(await rowsOf(db)).toBe(before);
});

test("a write that fails half-way leaves none of it", async () => {
  const { db } = freshShop();
  await planned(db);
  const before = await rowsOf(db);
  let count = 0;
  const moment = {
    ...at(2),
    // The fourth line has the id of one that is there already.
    newId: () => ((count += 1) === 4 ? taken : crypto.randomUUID()),
  };
  const [{ id: taken } = { id: "" }] = await db.entries.toArray();
  const run = (await readRun(db, "r"))?.run;
  await expect(runCommands(db, startRun(run!, await piecesIn(db), { kilnC: 20 }), moment)).rejects.toThrow();
  expect(await rowsOf(db)).toBe(before);
});

test("any line of it takes back the whole, and the strikes can be taken back whole too", async () => {
  const { db } = freshShop();
  await planned(db);
  const ran = await begin(db, 2);
  if (!ran.ok) throw new Error(JSON.stringify(ran));
  const third = ran.entries[3]!.id;
  expect((await readAct(db, third)).map(({ id }) => id)).toEqual(ran.entries.map(({ id }) => id));
  const back = await runTakeBack(db, { entryId: third, reason: "slip" }, at(2.1));
  if (!back.ok) throw new Error(JSON.stringify(back));
  expect(back.entries).toHaveLength(7);
  expect(await phases(db)).toEqual(ids.map(() => "coating"));
  expect((await readRun(db, "r"))?.run.startedAt).toBeNull();
  expect(await runTakeBack(db, { entryId: third, reason: "slip" }, at(2.2))).toEqual({
    ok: false,
    refusal: { code: "already-struck", entryId: third },
  });
  await runTakeBack(db, { entryId: back.entries[2]!.id, reason: "slip" }, at(2.3));
  expect(await phases(db)).toEqual(ids.map(() => "burnout"));
});

test("a line of an old log, without a mark, is taken back alone", async () => {
  const { db } = freshShop();
  await planned(db);
  const lines: string[] = [];
  for (const id of ids) {
    const stream = streamOf("piece", id);
    const ran = await runCommand(db, { do: "log", stream, type: "burnout-started", body: {} }, at(2));
    if (ran.ok) lines.push(ran.entries[0]!.id);
  }
  await runTakeBack(db, { entryId: lines[2]!, reason: "slip" }, at(3));
  expect(await phases(db)).toEqual(["burnout", "burnout", "coating", "burnout", "burnout", "burnout"]);
});

test("a coat settles and folds its stream once, and reads each line once", async () => {
  const { db } = freshShop();
  await runCommand(db, started("a"), at(0));
  const coat = (number: number): Command => ({
    do: "log",
    stream: "piece/a",
    type: "coat-dipped",
    body: coatBody(number),
  });
  for (let number = 1; number <= 5; number += 1) await runCommand(db, coat(number), at(number * 24));
  vi.clearAllMocks();
  expect(await runCommand(db, coat(6), at(6 * 24))).toMatchObject({ ok: true });
  const calls = (...all: readonly unknown[]) =>
    all.reduce<number>((sum, one) => sum + vi.mocked(one as () => void).mock.calls.length, 0);
  expect({
    settles: calls(effective.settle, effective.settleOrdered, effective.effective),
    folds: calls(fold.foldPiece, fold.pieceFrom),
    // Six lines of the stream, and the new one before it is written.
    parses: calls(entrySchema.parseEntry),
  }).toEqual({ settles: 1, folds: 1, parses: 7 });
  expect((await piecesIn(db))[0]?.coats).toHaveLength(6);
});
