import { Dexie } from "dexie";
import { afterEach, describe, expect, test } from "vitest";
import oldLog from "../../tests/fixtures/log-v1.json" with { type: "json" };
import newLog from "../../tests/fixtures/log-v2.json" with { type: "json" };
import { freshShop, removeShops } from "../../tests/fixtures/freshShop.ts";
import { dayOne, hour, momentAt } from "../../tests/fixtures/logLines.ts";
import type { Command } from "../logbook/log/command.ts";
import type { EntryBodies } from "../logbook/entries/entry.ts";
import { backupOf, bringIn } from "../../tests/fixtures/backups.ts";
import { readMelt, readMelts, readPour, readPours, readRun, readRuns } from "./fires.ts";
import { getPattern, listPatterns, putPattern, removePattern } from "./patterns.ts";
import { readBucketState, readPiece, readShop } from "./reads.ts";
import { rebuildProjections } from "./rebuild.ts";
import { runCommand } from "./run.ts";
import { openShopDb } from "./shopDb.ts";
import type { ShopDb } from "./rows.ts";

afterEach(removeShops);

const runPlan: EntryBodies["run-planned"] = {
  kilnId: "k",
  purpose: "burnout",
  pieceIds: ["heron"],
  startC: 20,
  segments: [],
};
const at = (h: number) => momentAt(dayOne + h * hour);
const inRun = (id: string, type: string, body: object): Command =>
  ({ do: "log", stream: `run/${id}`, type, body }) as unknown as Command;

describe("fires", () => {
  test("lie open until they are ended, what was last touched first", async () => {
    const { db } = freshShop();
    for (const [h, id] of ["a", "b"].entries())
      await runCommand(db, inRun(id, "run-planned", runPlan), at(h));
    await runCommand(db, inRun("a", "run-started", { kilnC: 20 }), at(2));
    expect((await readRuns(db)).map(({ id }) => id)).toEqual(["a", "b"]);
    await runCommand(db, inRun("a", "run-ended", { result: "done" }), at(9));
    expect((await readRuns(db, "open")).map(({ id }) => id)).toEqual(["b"]);
    expect((await readRuns(db, "ended")).map(({ id, ended }) => [id, ended?.result])).toEqual([
      ["a", "done"],
    ]);
    expect((await readRun(db, "a"))?.entries.map(({ type }) => type)).toEqual([
      "run-planned",
      "run-started",
      "run-ended",
    ]);
    expect([await readRun(db, "none"), await readMelt(db, "a"), await readPour(db, "a")]).toEqual([
      null,
      null,
      null,
    ]);
  });

  test("refused is told by why, and leaves nothing behind", async () => {
    const { db } = freshShop();
    await runCommand(db, inRun("a", "run-planned", runPlan), at(0));
    expect(await runCommand(db, inRun("a", "run-read", { kilnC: 90 }), at(1))).toEqual({
      ok: false,
      refusal: { code: "not-started" },
    });
    expect((await readRun(db, "a"))?.entries).toHaveLength(1);
  });
});

describe("a log of the present version", () => {
  test("goes in and comes out as it was, and every row is what the log comes to", async () => {
    const { db } = freshShop();
    const file = JSON.stringify(newLog);
    expect(await bringIn(db, file)).toMatchObject({ ok: true, added: newLog.entries.length });
    const [run] = await readRuns(db, "ended");
    const [melt] = await readMelts(db);
    const [pour] = await readPours(db);
    expect(run?.readings.map(({ kilnC }) => kilnC)).toEqual([21, 44, 63, 90, 251.5]);
    expect([run?.pieceIds, melt?.ended?.pouredKg, pour?.decided?.go]).toEqual([
      ["0199d0a0-1111-7000-8000-000000000001"],
      3.5,
      true,
    ]);
    const shop = await readShop(db);
    expect([shop.cups.length, shop.kilns.length, shop.stockMoves.length, shop.shrinks.length]).toEqual([
      1, 1, 1, 1,
    ]);
    const bucket = (await readBucketState(db, "first-prime"))?.bucket;
    expect([bucket?.targets.lowS, bucket?.readings.length, bucket?.tops.length]).toEqual([26, 1, 1]);
    const piece = (await readPiece(db, run?.pieceIds[0] ?? "", dayOne))?.piece;
    expect([piece?.weighings.length, piece?.patterns.length, piece?.runIds.length]).toEqual([1, 1, 1]);
    const rows = await db.projections.orderBy("stream").toArray();
    await rebuildProjections(db);
    expect(await db.projections.orderBy("stream").toArray()).toEqual(rows);
    const other = freshShop().db;
    await bringIn(other, await backupOf(db, { now: dayOne }));
    expect(await other.entries.toArray()).toEqual(await db.entries.toArray());
    expect(await other.projections.orderBy("stream").toArray()).toEqual(rows);
  });
});

/** A store as the first version left it: its tables, the old log, and rows that knew less. */
async function oldStore(name: string): Promise<void> {
  const db = new Dexie(name);
  db.version(1).stores({
    entries: "id, [stream+at]",
    projections: "stream, [kind+shelf]",
    photos: "id",
    settings: "key",
    drafts: "key",
  });
  await db.table("entries").bulkAdd(oldLog.entries);
  await db.table("photos").add({ id: "photo-1", blob: new Blob(["x"], { type: "image/png" }) });
  await db.table("settings").add({ key: "own", value: { units: "us" } });
  await db.table("drafts").add({ key: "piece-new", value: { name: "Crane" } });
  const bucket = { id: "first-prime", name: "Prime", use: "prime", slurry: "", retired: false, last: null };
  await db
    .table("projections")
    .add({ stream: "bucket/first-prime", kind: "bucket", shelf: "work", state: bucket });
  db.close();
}

test("a store of the first version is opened with everything in it, and its rows are made anew", async () => {
  const { db } = freshShop();
  await oldStore(db.name);
  expect(await db.entries.count()).toBe(oldLog.entries.length);
  expect(await db.entries.get(oldLog.entries[0]?.id ?? "")).toEqual(oldLog.entries[0]);
  expect((await db.photos.get("photo-1"))?.blob.size).toBe(1);
  expect([await db.settings.get("own"), await db.drafts.get("piece-new")]).toEqual([
    { key: "own", value: { units: "us" } },
    { key: "piece-new", value: { name: "Crane" } },
  ]);
  expect((await readBucketState(db, "first-prime"))?.bucket.readings).toHaveLength(1);
  const row = await db.projections.get("bucket/first-prime");
  expect(row?.kind === "bucket" ? row.state.readings.map(({ cupS }) => cupS) : null).toEqual([22.5]);
  const kept = await db.projections.orderBy("stream").toArray();
  await rebuildProjections(db);
  expect(kept).toEqual(await db.projections.orderBy("stream").toArray());
  expect(await listPatterns(db)).toEqual([]);
});

test("while an older store is made ready it says how many of its streams are done", async () => {
  const told: (readonly [number, number])[] = [];
  const { name } = freshShop().db;
  await oldStore(name);
  const db = openShopDb(name, { onUpgrade: (done, of) => told.push([done, of]) });
  await db.open();
  db.close();
  const { length } = [...new Set(oldLog.entries.map(({ stream }) => stream))];
  expect(told).toEqual(Array.from({ length }, (_, i) => [i + 1, length]));
});

describe("patterns", () => {
  const mesh = (): ArrayBuffer => new Float32Array([1, 2, 3]).buffer;
  const keep = (db: ShopDb, id: string, savedAt: number) =>
    putPattern(db, { id, name: `${id}.stl`, savedAt, kept: { mesh: mesh(), note: "up is z" } });

  test("come back as they were kept, newest first, until they are removed", async () => {
    const { db } = freshShop();
    await keep(db, "fox", 1);
    await keep(db, "heron", 2);
    await keep(db, "fox", 3);
    expect(await listPatterns(db)).toEqual([
      { id: "fox", name: "fox.stl", savedAt: 3 },
      { id: "heron", name: "heron.stl", savedAt: 2 },
    ]);
    const again = openShopDb(db.name);
    expect(await getPattern(again, "heron")).toEqual({
      id: "heron",
      name: "heron.stl",
      savedAt: 2,
      kept: { mesh: mesh(), note: "up is z" },
    });
    again.close();
    await removePattern(db, "heron");
    expect([await getPattern(db, "heron"), (await listPatterns(db)).length]).toEqual([null, 1]);
  });

  test("come back from a backup as they were kept", async () => {
    const [a, b] = [freshShop().db, freshShop().db];
    await keep(a, "fox", 1);
    await bringIn(b, await backupOf(a, { now: dayOne }));
    expect(await getPattern(b, "fox")).toEqual(await getPattern(a, "fox"));
    const without = await backupOf(a, { now: dayOne, choice: { photos: false, since: null } });
    expect(await without.text()).not.toContain("fox");
  });
});
