import { afterEach, describe, expect, test } from "vitest";
import oldLog from "../../../tests/fixtures/log-v1.json" with { type: "json" };
import { freshShop, removeShops } from "../../../tests/fixtures/freshShop.ts";
import { backupOf, bringIn, look } from "../../../tests/fixtures/backups.ts";
import { dayOne, hour, line } from "../../../tests/fixtures/logLines.ts";
import { readDraft, writeDraft } from "../drafts.ts";
import { getPhoto, putPhoto } from "../photos.ts";
import { readArchive, readBuckets, readPiece, readRack, readRecipes, readRooms, readShop } from "../reads.ts";
import { rebuildProjections } from "../rebuild.ts";
import { changeSettings, readSettings } from "../settings.ts";
import type { ShopDb } from "../rows.ts";

afterEach(removeShops);

const heron = "piece/0199b2c4-1111-7000-8000-000000000001".slice(6);
const old = JSON.stringify(oldLog);
const now = { now: dayOne + 100 * hour };
const everything = async (db: ShopDb) => ({
  entries: await db.entries.toArray(),
  rows: await db.projections.toArray(),
  photos: await db.photos.toCollection().primaryKeys(),
});

describe("an old log opens for ever", () => {
  test("and comes to the piece, the room, the bucket, the recipe and the figures it told then", async () => {
    const { db } = freshShop();
    expect(await bringIn(db, old)).toMatchObject({ ok: true, added: oldLog.entries.length, already: 0 });
    const read = await readPiece(db, heron, now.now);
    expect(read?.setAside).toEqual([]);
    expect(read?.piece).toMatchObject({
      plan: { name: "Heron, wing", material: "pla", metalKg: 4.1, headM: 0.31, part: { kind: "round" } },
      phase: "finished",
      archived: true,
      outcome: { result: "sound", defects: ["fin"] },
    });
    expect(read?.piece.plan.metalLitre).toBeUndefined();
    expect(
      read?.piece.coats.map(({ kind, redips, acceptedDamp }) => [kind, redips.length, acceptedDamp]),
    ).toEqual([
      ["prime", 1, null],
      ["backup", 0, { coatId: oldLog.entries[9]?.id, leftShare: 0.2 }],
    ]);
    expect(read?.piece.wall).toEqual([]);
    expect(read?.piece.cracks).toMatchObject([
      { kind: "open", stage: "burnout", patched: { how: "slurry and fine stucco" } },
    ]);
    expect((await readRooms(db)).map(({ name, altitudeM, last }) => [name, altitudeM, last?.rh])).toEqual([
      ["Back room", 310, 0.52],
    ]);
    expect((await readBuckets(db)).map(({ id, last }) => [id, last?.cupS])).toEqual([
      ["first-prime", 22.5],
      ["first-backup", undefined],
    ]);
    expect((await readRecipes(db)).find(({ id }) => id === "start-general")?.coats).toHaveLength(3);
    expect(await readShop(db)).toMatchObject({ dryingFactor: 1.15, morMPa: null });
    const pieces = await readArchive(db);
    expect(pieces.map(({ plan }) => plan.name).sort()).toEqual(["Heron, wing", "Test bar"]);
    expect((await readRack(db, now.now)).pieces).toEqual([]);
    expect((await getPhoto(db, "photo-1"))?.size).toBe(70);
  });
});

describe("a backup", () => {
  test("brought into an empty shop gives the same log, rows and photos", async () => {
    const [a, b] = [freshShop().db, freshShop().db];
    await bringIn(a, old);
    await putPhoto(
      a,
      new Blob([new Uint8Array(100_000).map((_, i) => i % 251)], { type: "image/jpeg" }),
      "big",
    );
    expect(await bringIn(b, await backupOf(a, now))).toMatchObject({ ok: true });
    expect(await everything(b)).toEqual(await everything(a));
    const [before, after] = [await getPhoto(a, "big"), await getPhoto(b, "big")];
    expect(after?.type).toBe("image/jpeg");
    expect(await after?.arrayBuffer()).toEqual(await before?.arrayBuffer());
  });

  test("brought in twice adds nothing the second time", async () => {
    const { db } = freshShop();
    await bringIn(db, old);
    const before = await everything(db);
    const count = oldLog.entries.length;
    expect(await bringIn(db, await backupOf(db, now))).toMatchObject({ ok: true, added: 0, already: count });
    expect(await everything(db)).toEqual(before);
  });

  test("of a long log is whole", async () => {
    const [a, b] = [freshShop().db, freshShop().db];
    const readings = Array.from({ length: 4500 }, (_, i) =>
      line("room/first", "air-read", { airC: 20, rh: 0.5, air: "still" }, { at: dayOne + i * 60_000 }),
    );
    await a.entries.bulkAdd(readings);
    await rebuildProjections(a);
    const file = await backupOf(a, now);
    expect(await bringIn(b, file)).toMatchObject({ ok: true, added: 4500, already: 0 });
    expect(await everything(b)).toEqual(await everything(a));
    expect(await bringIn(b, file)).toMatchObject({ ok: true, added: 0, already: 4500 });
  });

  test("of an empty shop can be brought in", async () => {
    const { db } = freshShop();
    expect(await bringIn(db, await backupOf(db, now))).toMatchObject({ ok: true, added: 0, already: 0 });
  });

  test("joins what was logged meanwhile, and the rows tell both", async () => {
    const { db } = freshShop();
    const mine = line(`piece/${heron}`, "note-written", { text: "mine" }, { at: dayOne + 200 * hour });
    await db.entries.add(mine);
    await bringIn(db, old);
    expect((await readPiece(db, heron, now.now))?.piece.lastAt).toBe(dayOne + 200 * hour);
    const rows = await db.projections.toArray();
    await rebuildProjections(db);
    expect(rows).toEqual(await db.projections.toArray());
  });

  test("says when it was made, by which device, and what is in it", async () => {
    const { db } = freshShop();
    const { head } = await look(null, await backupOf(db, now));
    expect(head).toMatchObject({ version: 2, madeAt: now.now, device: "d-test", isWhole: true });
    expect(head.manifest).toMatchObject({ counts: { entries: 0, photos: 0 }, lastEntryAt: null });
  });

  test("carries lines this program could not read, and brings them back as they were", async () => {
    const [a, b] = [freshShop().db, freshShop().db];
    const later = { ...line("piece/p", "note-written", { text: "x" }), version: 7, body: { glaze: true } };
    await a.entries.add(later);
    const file = await backupOf(a, now);
    expect(await bringIn(b, file)).toMatchObject({ ok: true, added: 1, already: 0 });
    expect(await b.entries.get(later.id)).toEqual(later);
    expect((await rebuildProjections(b)).setAside).toMatchObject([
      { id: later.id, fault: { code: "newer-version" } },
    ]);
  });

  test("leaves settings and what is half-written alone", async () => {
    const { db } = freshShop();
    await changeSettings(db, { units: "us", signName: "R." });
    await writeDraft(db, "piece-new", { name: "Heron" });
    await bringIn(db, old);
    expect(await readSettings(db)).toMatchObject({ units: "us", signName: "R." });
    expect(await readDraft(db, "piece-new")).toEqual({ name: "Heron" });
  });
});
