import { afterEach, expect, test } from "vitest";
import { freshShop, removeShops } from "../../tests/fixtures/freshShop.ts";
import { dayOne, line } from "../../tests/fixtures/logLines.ts";
import { importShop } from "./backup.ts";
import { putPhoto } from "./photos.ts";
import { rawBackup } from "./rawBackup.ts";
import { openRaw } from "./rawRows.ts";

afterEach(removeShops);

async function filled() {
  const { db } = freshShop();
  await db.entries.bulkAdd(
    ["a", "b"].map((id) => line(`piece/${id}`, "note-written", { text: "ring chipped" })),
  );
  await putPhoto(db, new Blob([new Uint8Array([1, 2, 3])], { type: "image/jpeg" }), "p1");
  return db;
}

test("a backup from the raw rows is read by the app, entries and photos alike", async () => {
  const db = await filled();
  const { blob, entries, photos } = await rawBackup(db.name, dayOne);
  expect([entries, photos]).toEqual([2, 1]);
  const { db: other } = freshShop();
  expect(await importShop(other, blob)).toEqual({ ok: true, added: 2, already: 0 });
  expect(await other.photos.count()).toBe(1);
  expect(await other.entries.toArray()).toEqual(await db.entries.toArray());
});

test("it is made while the app's own opening is refused, from a newer store too", async () => {
  const db = await filled();
  const { name } = db;
  db.close();
  await new Promise<void>((done, fail) => {
    const asking = indexedDB.open(name, 300);
    asking.addEventListener("success", () => {
      asking.result.close();
      done();
    });
    asking.addEventListener("error", () => fail(asking.error));
  });
  expect((await rawBackup(name, dayOne)).entries).toBe(2);
});

test("asking for a store that is not there makes none", async () => {
  expect(await openRaw("no-such-store")).toBeNull();
  expect((await indexedDB.databases()).map(({ name }) => name)).not.toContain("no-such-store");
});
