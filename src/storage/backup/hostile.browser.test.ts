import { afterEach, describe, expect, test } from "vitest";
import oldLog from "../../../tests/fixtures/log-v1.json" with { type: "json" };
import { bringIn, look } from "../../../tests/fixtures/backups.ts";
import { freshShop, removeShops } from "../../../tests/fixtures/freshShop.ts";
import { coatBody, dayOne, hour, line } from "../../../tests/fixtures/logLines.ts";
import type { ShopDb } from "../rows.ts";
import { judgeRow } from "./judgeRow.ts";

afterEach(removeShops);

const old = JSON.stringify(oldLog);
const everything = async (db: ShopDb) => ({
  entries: await db.entries.toArray(),
  rows: await db.projections.toArray(),
  photos: await db.photos.toCollection().primaryKeys(),
  aside: [await db.staged.count(), await db.journal.count()],
});
const fileOf = (entries: readonly unknown[], over: object = {}): string =>
  JSON.stringify({ format: "dipbook-log", version: 1, madeAt: 0, entries, photos: [], ...over });
const good = line("piece/p", "piece-started", { plan: { name: "P" }, roomId: "first" });
const coat = line("piece/p", "coat-dipped", coatBody(1), { at: dayOne + hour });
const picture = { id: "p", type: "image/png", data: "AAAA" };

describe("a file that is no backup changes nothing and is explained", () => {
  test.each([
    ["nothing at all", "", { code: "not-a-backup", found: "an empty file" }],
    ["a picture", "\u0089PNG\r\n", { code: "not-a-backup", found: "another zip" }],
    ["a number", "42", { code: "not-a-backup" }],
    ["null", "null", { code: "not-a-backup" }],
    ["a list", " []", { code: "not-a-backup" }],
    ["brackets without end", ` ${"[".repeat(200_000)}`, { code: "not-a-backup" }],
    [
      "another program's file",
      JSON.stringify({ format: "notes", version: 1, entries: [] }),
      { code: "not-a-backup" },
    ],
    ["a file with no version", fileOf([good], { version: undefined }), { code: "not-a-backup" }],
    ["a version of one and a half", fileOf([good], { version: 1.5 }), { code: "not-a-backup" }],
    [
      "a file of a newer kind",
      fileOf([good], { version: 2 }),
      { code: "newer-backup", version: 2, known: 1 },
    ],
    ["entries that are no list", fileOf([], { entries: { 0: good } }), { code: "not-a-backup" }],
  ])("%s", async (_what, text, why) => {
    const { db } = freshShop();
    await db.entries.add(good);
    const before = await everything(db);
    expect(await bringIn(db, text)).toMatchObject({ ok: false, why });
    expect(await everything(db)).toEqual(before);
  });
});

describe("what can't be read of a backup is named, and costs nothing else", () => {
  test.each([
    ["one broken line", fileOf([good, { ...coat, at: "noon" }]), "at"],
    [
      "a line that would reach a prototype",
      fileOf([coat, good]).replace('"plan":{', '"plan":{"__proto__":{"x":1},'),
      "body.plan",
    ],
    ["a stream with a path in it", fileOf([good, { ...coat, stream: "piece/../x" }]), "stream"],
    ["a set-aside line without an id", fileOf([good], { setAside: [{ at: 1 }] }), "type"],
  ])("%s", async (_what, text, field) => {
    const { db } = freshShop();
    const { entries } = await look(db, text);
    expect([entries.fresh, entries.bad.length]).toEqual([1, 1]);
    expect(entries.bad[0]).toMatchObject({ place: 2, fault: { field } });
    expect(await bringIn(db, text)).toMatchObject({ ok: true, added: 1 });
    expect(({} as { x?: unknown }).x).toBeUndefined();
  });

  test("a set-aside line nested without end", async () => {
    const { db } = freshShop();
    const deep = `${JSON.stringify(coat).slice(0, -1)},"deep":${"[".repeat(100_000)}${"]".repeat(100_000)}}`;
    const text = fileOf([good], { setAside: ["DEEP"] }).replace('"DEEP"', () => deep);
    expect(await bringIn(db, text)).toMatchObject({ ok: true, added: 1 });
  });

  test.each([
    ["a photo that is a script", [{ ...picture, type: "image/svg+xml" }], 0],
    ["a photo that is no base64", [{ ...picture, data: "%%%" }], 0],
    ["two photos under one id: the first stays", [picture, { ...picture, data: "AAAAAAAA" }], 1],
  ])("%s", async (_what, photos, kept) => {
    const { db } = freshShop();
    const text = fileOf([good], { photos });
    const { photos: seen } = await look(db, text);
    expect(seen.bad.length + seen.clashes.length).toBe(1);
    expect(await bringIn(db, text)).toMatchObject({ ok: true, added: 1, photos: kept });
  });

  test("a line of a newer program is kept as it is", async () => {
    const { db } = freshShop();
    const later = { ...coat, version: 99, body: { glaze: true } };
    expect((await look(db, fileOf([good, later]))).entries).toMatchObject({ fresh: 2, aside: 1 });
    await bringIn(db, fileOf([good, later]));
    expect(await db.entries.get(coat.id)).toEqual(later);
  });
});

test("a line that differs from the one we have under the same id: ours stays, and the clash is told", async () => {
  const { db } = freshShop();
  await bringIn(db, fileOf([good, coat]));
  const forged = { ...coat, at: coat.at + 1 };
  const fresh = line("piece/p", "note-written", { text: "new" });
  const file = fileOf([fresh, good, forged]);
  expect((await look(db, file)).entries).toMatchObject({ fresh: 1, already: 1, clashes: [coat.id] });
  expect(await bringIn(db, file)).toMatchObject({ ok: true, added: 1, already: 1, clashes: 1 });
  expect(await db.entries.get(coat.id)).toEqual(coat);
});

test("the same line written with its keys in another order is the same line", async () => {
  const { db } = freshShop();
  await bringIn(db, fileOf([coat]));
  const turned = Object.fromEntries(
    Object.entries({ ...coat, body: Object.fromEntries(Object.entries(coat.body).reverse()) }).reverse(),
  );
  expect((await look(db, fileOf([turned, turned]))).entries).toMatchObject({
    fresh: 0,
    already: 2,
    clashes: [],
  });
});

test("a JSON backup cut off anywhere gives the lines before the cut", async () => {
  const lines = oldLog.entries.map((entry) => JSON.stringify(entry)).join(",\n");
  const text = `{"format":"dipbook-log","version":1,"madeAt":5,\n"entries":[\n${lines}\n],"setAside":[\n\n],"photos":[\n\n]}\n`;
  expect((await look(null, text)).entries).toMatchObject({ found: oldLog.entries.length, bad: [] });
  const cut = text.slice(0, Math.floor(text.length * 0.6));
  const { head, entries } = await look(null, cut);
  expect(head.isWhole).toBe(false);
  const before = cut.split("\n").slice(2, -1).length;
  expect([entries.fresh, entries.bad.length]).toEqual([before, 1]);
});

test("a JSON backup with one spoilt line of many gives all the others", async () => {
  const lines = oldLog.entries.map((entry) => JSON.stringify(entry));
  lines[3] = lines[3]?.slice(0, 40) ?? "";
  const text = `{"format":"dipbook-log","version":1,"madeAt":5,\n"entries":[\n${lines.join(",\n")}\n],"setAside":[\n\n],"photos":[\n\n]}\n`;
  const { entries } = await look(null, text);
  expect(entries.fresh).toBe(oldLog.entries.length - 1);
  expect(entries.bad).toMatchObject([{ place: 4, why: "not-json" }]);
});

test("a line bent at any one place is refused or read, and never stops the program", () => {
  const wrong = [null, -1, 1e308, "", "x", [], {}, true, "__proto__"];
  for (const entry of oldLog.entries)
    for (const key of Object.keys(entry))
      for (const value of wrong)
        expect(["entry", "aside", "bad"]).toContain(judgeRow({ ...entry, [key]: value }, true).kind);
  expect(old.length).toBeGreaterThan(1000);
});
