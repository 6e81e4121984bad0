import { afterEach, describe, expect, test } from "vitest";
import oldLog from "../../tests/fixtures/log-v1.json" with { type: "json" };
import { freshShop, removeShops } from "../../tests/fixtures/freshShop.ts";
import { coatBody, dayOne, hour, line, momentAt } from "../../tests/fixtures/logLines.ts";
import { exportShop, importShop } from "./backup.ts";
import { backupMaxBytes, checkBackup } from "./backupFile.ts";
import { readDraft, writeDraft } from "./drafts.ts";
import { getPhoto, putPhoto } from "./photos.ts";
import { readArchive, readBuckets, readPiece, readRack, readRecipes, readRooms, readShop } from "./reads.ts";
import { rebuildProjections } from "./rebuild.ts";
import { runCommand } from "./run.ts";
import { changeSettings, readSettings } from "./settings.ts";
import type { ShopDb } from "./shopDb.ts";

afterEach(removeShops);

const heron = "piece/0199b2c4-1111-7000-8000-000000000001".slice(6);
const old = JSON.stringify(oldLog);
const now = { now: dayOne + 100 * hour };
const everything = async (db: ShopDb) => ({
  entries: await db.entries.toArray(),
  rows: await db.projections.toArray(),
  photos: await db.photos.toCollection().primaryKeys(),
});
const fileOf = (entries: readonly unknown[], over: object = {}): string =>
  JSON.stringify({ format: "dipbook-log", version: 1, madeAt: 0, entries, photos: [], ...over });

describe("an old log opens for ever", () => {
  test("and comes to the piece, the room, the bucket, the recipe and the figures it told then", async () => {
    const { db } = freshShop();
    expect(await importShop(db, old)).toEqual({ ok: true, added: oldLog.entries.length, already: 0 });
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
    await importShop(a, old);
    await putPhoto(
      a,
      new Blob([new Uint8Array(100_000).map((_, i) => i % 251)], { type: "image/jpeg" }),
      "big",
    );
    expect(await importShop(b, await exportShop(a, now))).toMatchObject({ ok: true });
    expect(await everything(b)).toEqual(await everything(a));
    const [before, after] = [await getPhoto(a, "big"), await getPhoto(b, "big")];
    expect(after?.type).toBe("image/jpeg");
    expect(await after?.arrayBuffer()).toEqual(await before?.arrayBuffer());
  });

  test("brought in twice adds nothing the second time", async () => {
    const { db } = freshShop();
    await importShop(db, old);
    const before = await everything(db);
    const count = oldLog.entries.length;
    expect(await importShop(db, await exportShop(db, now))).toEqual({ ok: true, added: 0, already: count });
    expect(await everything(db)).toEqual(before);
  });

  test("of a long log is whole", async () => {
    const [a, b] = [freshShop().db, freshShop().db];
    const readings = Array.from({ length: 4500 }, (_, i) =>
      line("room/first", "air-read", { airC: 20, rh: 0.5, air: "still" }, { at: dayOne + i * 60_000 }),
    );
    await a.entries.bulkAdd(readings);
    await rebuildProjections(a);
    const file = await exportShop(a, now);
    expect(await importShop(b, file)).toEqual({ ok: true, added: 4500, already: 0 });
    expect(await everything(b)).toEqual(await everything(a));
    expect(await importShop(b, file)).toEqual({ ok: true, added: 0, already: 4500 });
  });

  test("of an empty shop can be brought in", async () => {
    const { db } = freshShop();
    expect(await importShop(db, await exportShop(db, now))).toEqual({ ok: true, added: 0, already: 0 });
  });

  test("joins what was logged meanwhile, and the rows tell both", async () => {
    const { db } = freshShop();
    const mine = line(`piece/${heron}`, "note-written", { text: "mine" }, { at: dayOne + 200 * hour });
    await db.entries.add(mine);
    await importShop(db, old);
    expect((await readPiece(db, heron, now.now))?.piece.lastAt).toBe(dayOne + 200 * hour);
    const rows = await db.projections.toArray();
    await rebuildProjections(db);
    expect(rows).toEqual(await db.projections.toArray());
  });

  test("says when it was made, and that it is ours", async () => {
    const { db } = freshShop();
    const file: unknown = JSON.parse(await (await exportShop(db, now)).text());
    expect(file).toEqual({
      format: "dipbook-log",
      version: 1,
      madeAt: now.now,
      entries: [],
      setAside: [],
      photos: [],
    });
  });

  test("carries lines this program could not read, and brings them back as they were", async () => {
    const [a, b] = [freshShop().db, freshShop().db];
    const later = { ...line("piece/p", "note-written", { text: "x" }), version: 7, body: { glaze: true } };
    await a.entries.add(later);
    const file = await exportShop(a, now);
    expect(await importShop(b, file)).toEqual({ ok: true, added: 1, already: 0 });
    expect(await b.entries.get(later.id)).toEqual(later);
    expect((await rebuildProjections(b)).setAside).toMatchObject([
      { id: later.id, fault: { code: "newer-version" } },
    ]);
  });

  test("leaves settings and what is half-written alone", async () => {
    const { db } = freshShop();
    await changeSettings(db, { units: "us", signName: "R." });
    await writeDraft(db, "piece-new", { name: "Heron" });
    await importShop(db, old);
    expect(await readSettings(db)).toMatchObject({ units: "us", signName: "R." });
    expect(await readDraft(db, "piece-new")).toEqual({ name: "Heron" });
  });
});

const good = line("piece/p", "piece-started", { plan: { name: "P" }, roomId: "first" });
const coat = line("piece/p", "coat-dipped", coatBody(1), { at: dayOne + hour });
const picture = { id: "p", type: "image/png", data: "AAAA" };
const hostile: readonly (readonly [string, string, object])[] = [
  ["nothing at all", "", { code: "not-json" }],
  ["half a file", old.slice(0, 3000), { code: "not-json" }],
  ["a picture", "\u0089PNG\r\n", { code: "not-json" }],
  ["a number", "42", { code: "not-a-backup" }],
  ["null", "null", { code: "not-a-backup" }],
  ["a list", "[]", { code: "not-a-backup" }],
  ["brackets without end", "[".repeat(200_000), { code: "not-json" }],
  [
    "another program's file",
    JSON.stringify({ format: "notes", version: 1, entries: [] }),
    { code: "not-a-backup" },
  ],
  ["a file with no version", fileOf([good], { version: undefined }), { code: "not-a-backup" }],
  ["a version of one and a half", fileOf([good], { version: 1.5 }), { code: "not-a-backup" }],
  ["a file of a newer kind", fileOf([good], { version: 2 }), { code: "newer-backup", version: 2, known: 1 }],
  ["entries that are no list", fileOf([], { entries: { 0: good } }), { code: "not-a-backup" }],
  [
    "one broken line among good ones",
    fileOf([good, { ...coat, at: "noon" }]),
    { code: "bad-entry", entry: 2, field: "at" },
  ],
  ["a line of a newer program", fileOf([good, { ...coat, version: 99 }]), { code: "newer-entry", entry: 2 }],
  [
    "one id for two different lines",
    fileOf([good, { ...coat, id: good.id }]),
    { code: "id-clash", entry: 2, id: good.id },
  ],
  [
    "a line that would reach a prototype",
    fileOf([good]).replace('"plan":{', '"plan":{"__proto__":{"x":1},'),
    { code: "bad-entry", entry: 1 },
  ],
  [
    "a stream with a path in it",
    fileOf([{ ...good, stream: "piece/../x" }]),
    { code: "bad-entry", field: "stream" },
  ],
  [
    "a set-aside line nested without end",
    fileOf([good], { setAside: ["DEEP"] }).replace(
      '"DEEP"',
      () => `${JSON.stringify(coat).slice(0, -1)},"deep":${"[".repeat(100_000)}${"]".repeat(100_000)}}`,
    ),
    { code: "bad-entry", entry: 2 },
  ],
  [
    "a set-aside line without an id",
    fileOf([good], { setAside: [{ at: 1 }] }),
    { code: "bad-entry", entry: 2 },
  ],
  [
    "a photo that is a script",
    fileOf([good], { photos: [{ ...picture, type: "image/svg+xml" }] }),
    { code: "bad-photo", photo: 1 },
  ],
  [
    "a photo that is no base64",
    fileOf([good], { photos: [{ ...picture, data: "%%%" }] }),
    { code: "bad-photo", photo: 1 },
  ],
  [
    "two photos under one id",
    fileOf([good], { photos: [picture, { ...picture, data: "AAAAAAAA" }] }),
    { code: "photo-clash", photo: 2 },
  ],
];

describe("a file that is hostile or broken changes nothing and is explained", () => {
  test.each(hostile)("%s", async (_what, text, problem) => {
    const { db } = freshShop();
    await runCommand(
      db,
      { do: "log", stream: "piece/mine", type: "piece-started", body: good.body },
      momentAt(dayOne),
    );
    const before = await everything(db);
    expect(await importShop(db, text)).toMatchObject({ ok: false, problems: [problem] });
    expect(await importShop(db, new Blob([text]))).toMatchObject({ ok: false, problems: [problem] });
    expect(await everything(db)).toEqual(before);
    expect(({} as { x?: unknown }).x).toBeUndefined();
  });

  test("a line that differs from the one we have under the same id", async () => {
    const { db } = freshShop();
    await importShop(db, fileOf([good, coat]));
    const before = await everything(db);
    const forged = { ...coat, at: coat.at + 1 };
    const fresh = line("piece/p", "note-written", { text: "new" });
    expect(await importShop(db, fileOf([fresh, good, forged]))).toEqual({
      ok: false,
      problems: [{ code: "id-clash", entry: 3, id: coat.id }],
    });
    expect(await everything(db)).toEqual(before);
  });

  test("the same line written with its keys in another order is the same line", async () => {
    const { db } = freshShop();
    await importShop(db, fileOf([coat]));
    const turned = Object.fromEntries(
      Object.entries({ ...coat, body: Object.fromEntries(Object.entries(coat.body).reverse()) }).reverse(),
    );
    expect(await importShop(db, fileOf([turned, turned]))).toEqual({ ok: true, added: 0, already: 2 });
  });

  test("a file of nothing but faults lists the first twenty", () => {
    const checked = checkBackup(fileOf(Array.from({ length: 5000 }, () => ({}))));
    expect(checked.ok ? [] : checked.problems.map((problem) => "entry" in problem && problem.entry)).toEqual(
      Array.from({ length: 20 }, (_, index) => index + 1),
    );
  });

  test("a file too large to hold is refused before it is read", async () => {
    const { db } = freshShop();
    const chunk = new Blob([new Uint8Array(50_000_000)]);
    const huge = new Blob(Array.from({ length: 11 }, () => chunk));
    expect(await importShop(db, huge)).toEqual({
      ok: false,
      problems: [{ code: "too-large", bytes: 550_000_000, maxBytes: backupMaxBytes }],
    });
  });

  test("a line bent at any one place is refused or read, and never stops the program", async () => {
    const wrong = [null, -1, 1e308, "", "x", [], {}, true, "__proto__"];
    for (const [index, entry] of oldLog.entries.entries())
      for (const key of Object.keys(entry))
        for (const value of wrong) {
          const bent: unknown[] = [...oldLog.entries];
          bent[index] = { ...entry, [key]: value };
          expect(typeof checkBackup(fileOf(bent)).ok).toBe("boolean");
        }
  });
});
