import { afterEach, describe, expect, test, vi } from "vitest";
import { backupOf, bringIn, look } from "../../../tests/fixtures/backups.ts";
import { freshShop, removeShops } from "../../../tests/fixtures/freshShop.ts";
import { bytesOf, jpeg, notes, shopOf } from "../../../tests/fixtures/notedShop.ts";
import { dayOne, hour, line } from "../../../tests/fixtures/logLines.ts";
import { writeDraft, readDraft } from "../drafts.ts";
import { putPhoto } from "../photos.ts";
import { changeSettings, readSettings } from "../settings.ts";
import type { ShopDb } from "../rows.ts";
import { windowBytes } from "./fileWindow.ts";
import { sealLine, unsealLine } from "./format.ts";
import { sweepUnfinished } from "./journal.ts";
import { isSound } from "./previewBackup.ts";
import { restoreBackup } from "./restoreBackup.ts";

afterEach(removeShops);

const now = dayOne + 100 * hour;
const state = async (db: ShopDb) => ({
  entries: await db.entries.toArray(),
  rows: await db.projections.toArray(),
  photos: await db.photos.toCollection().primaryKeys(),
  left: [await db.staged.count(), await db.journal.count()],
});

test("a line with any letter changed is told from a sound one", () => {
  const sealed = sealLine({ id: "a", massG: 1250 });
  expect(unsealLine(sealed)).toEqual({ ok: true, row: { id: "a", massG: 1250 } });
  for (let i = 0; i < sealed.length; i += 1) {
    const letter = sealed[i] === "9" ? "8" : "9";
    expect(unsealLine(sealed.slice(0, i) + letter + sealed.slice(i + 1)).ok, `letter ${i}`).toBe(false);
  }
});

describe("what is chosen goes along", () => {
  test("without photos", async () => {
    const db = await shopOf(3, ["x"]);
    const preview = await look(null, await backupOf(db, { now, choice: { photos: false, since: null } }));
    expect([preview.entries.found, preview.photos.found, isSound(preview)]).toEqual([3, 0, true]);
  });

  test("since a date: entries from then on, and only the photos they speak of", async () => {
    const db = await shopOf(10, ["x", "y"]);
    await db.entries.add(
      line("piece/p", "note-written", { text: "crack", photos: ["y"] }, { id: "z", at: dayOne + 20 * hour }),
    );
    const since = dayOne + 8 * hour;
    const preview = await look(null, await backupOf(db, { now, choice: { photos: true, since } }));
    expect([preview.entries.found, preview.photos.found]).toEqual([3, 1]);
  });

  test("settings and half-written forms, taken only when asked, and never another device's name", async () => {
    const [a, b] = [await shopOf(1), freshShop().db];
    await changeSettings(a, { deviceId: "old phone", units: "us", signName: "R." });
    await changeSettings(b, { deviceId: "new phone" });
    await writeDraft(a, "piece-new", { name: "Heron" });
    const file = await backupOf(a, { now });
    await bringIn(b, file);
    expect(await readSettings(b)).toMatchObject({ units: "metric" });
    expect(await readDraft(b, "piece-new")).toBeNull();
    await bringIn(b, file, true);
    expect(await readSettings(b)).toMatchObject({ units: "us", signName: "R.", deviceId: "new phone" });
    expect(await readDraft(b, "piece-new")).toEqual({ name: "Heron" });
  });

  test("a rotten row of the store: carried along, and it spoils nothing", async () => {
    const db = await shopOf(5);
    await db.entries.add({ id: "rotten", stream: "piece/p", type: "note-written", at: dayOne } as never);
    const file = await backupOf(db, { now });
    const preview = await look(null, file);
    expect(preview.entries).toMatchObject({ found: 6, fresh: 5 });
    expect(preview.entries.bad).toMatchObject([{ why: "fault", fault: { field: "recordedAt" } }]);
    const { db: other } = freshShop();
    expect(await bringIn(other, file)).toMatchObject({ ok: true, added: 5 });
  });
});

test("a backup is written and read in stretches, however large it is", async () => {
  const photos = Array.from({ length: 12 }, (_, i) => `p${i}`);
  const { db } = freshShop();
  await db.entries.bulkAdd(notes(50));
  for (const [i, id] of photos.entries()) await putPhoto(db, jpeg(i + 1, 1_000_000), id);
  const asked: number[] = [];
  const spies = (["arrayBuffer", "stream", "text"] as const).map((way) => {
    const plain = Object.getOwnPropertyDescriptor(Blob.prototype, way)?.value as () => never;
    return vi.spyOn(Blob.prototype, way).mockImplementation(function (this: Blob) {
      asked.push(this.size);
      return plain.call(this);
    });
  });
  const largest = (): number => Math.max(...asked.splice(0));
  try {
    const file = await backupOf(db, { now });
    expect(file.size).toBeGreaterThan(12_000_000);
    expect(largest()).toBeLessThanOrEqual(windowBytes);
    expect((await look(null, file)).photos.found).toBe(12);
    expect(largest()).toBeLessThanOrEqual(windowBytes);
    const { db: other } = freshShop();
    expect(await bringIn(other, file)).toMatchObject({ ok: true, photos: 12 });
    expect(largest()).toBeLessThanOrEqual(windowBytes);
  } finally {
    for (const spy of spies) spy.mockRestore();
  }
});

describe("a damaged backup gives what can be read", () => {
  test("cut off: the lines and photos before the cut, and what is missing is said", async () => {
    const db = await shopOf(50, ["a", "b", "c"]);
    const file = await backupOf(db, { now });
    const whole = await bytesOf(file);
    const last = await look(null, file.slice(0, whole.length - 300));
    expect(last.head.isWhole).toBe(false);
    expect([last.entries.fresh, last.photos.fresh]).toEqual([50, 3]);
    const half = await look(null, file.slice(0, Math.floor(whole.length * 0.3)));
    expect(half.entries.fresh).toBeGreaterThan(10);
    expect(half.entries.fresh).toBeLessThan(50);
    expect(half.entries.bad).toHaveLength(1);
    const { db: other } = freshShop();
    expect(await bringIn(other, file.slice(0, Math.floor(whole.length * 0.3)))).toMatchObject({
      ok: true,
      added: half.entries.fresh,
    });
  });

  test("one changed digit in one line costs that line alone", async () => {
    const file = await backupOf(await shopOf(50), { now });
    const text = await bytesOf(file);
    const at = new TextDecoder("latin1").decode(text).indexOf("note 17,");
    text[at + 5] = 0x39;
    const preview = await look(null, new Blob([text]));
    expect([preview.entries.fresh, preview.entries.bad]).toMatchObject([49, [{ why: "checksum" }]]);
    expect(isSound(preview)).toBe(false);
  });

  test("one flipped bit in a photo is found, and the photo is left out", async () => {
    const file = await backupOf(await shopOf(1, ["a", "b"]), { now });
    const bytes = await bytesOf(file);
    const at = new TextDecoder("latin1").decode(bytes).indexOf("\u0002".repeat(100));
    bytes[at + 50] = 0;
    const preview = await look(null, new Blob([bytes]));
    expect([preview.photos.fresh, preview.photos.bad]).toEqual([1, [{ name: "b", why: "checksum" }]]);
  });

  test("a part cut out of the middle: what stands before and behind it is read", async () => {
    const db = await shopOf(20, ["a", "b", "c", "d"]);
    const bytes = await bytesOf(await backupOf(db, { now }));
    const at = new TextDecoder("latin1").decode(bytes).indexOf("\u0002".repeat(100));
    const preview = await look(null, new Blob([bytes.slice(0, at), bytes.slice(at + 500)]));
    expect([preview.entries.fresh, preview.photos.fresh]).toEqual([20, 3]);
    expect(isSound(preview)).toBe(false);
  });
});

describe("a photo of the same id with other bytes never takes the place of what is here", () => {
  const first = { id: "x", byte: 1 };
  test.each([
    ["already in the log", [first], [{ id: "x", byte: 2 }]],
    ["logged while nothing was here, then restored twice", [first], [first, { id: "x", byte: 3 }]],
  ])("%s", async (_what, here, brought) => {
    const { db } = freshShop();
    for (const { id, byte } of here) await putPhoto(db, jpeg(byte), id);
    for (const { id, byte } of brought) {
      const other = freshShop().db;
      await other.entries.bulkAdd(notes(2));
      await putPhoto(other, jpeg(byte), id);
      await bringIn(db, await backupOf(other, { now }));
    }
    const kept = await db.photos.get("x");
    expect((await bytesOf(kept?.blob ?? new Blob())).every((byte) => byte === 1)).toBe(true);
    expect(await db.photos.count()).toBe(1);
  });

  test("nor is one that was here taken out again when a restore with the same id is cut off", async () => {
    const { db } = freshShop();
    await putPhoto(db, jpeg(1), "x");
    const file = await backupOf(await shopOf(30, ["x", "y"]), { now });
    const abort = new AbortController();
    const onProgress = ({ doneBytes, ofBytes }: { doneBytes: number; ofBytes: number }) => {
      if (doneBytes > ofBytes * 0.9) abort.abort(new Error("cancelled"));
    };
    const work = { settings: true, signal: abort.signal, onProgress };
    await expect(restoreBackup(db, file, work)).rejects.toThrow("cancelled");
    expect(await db.photos.toCollection().primaryKeys()).toEqual(["x"]);
  });
});

test("of two lines of one id in a file the first comes in, as the look through it says", async () => {
  const [one, two] = [notes(1)[0], { ...notes(1)[0], at: dayOne + 5 * hour }];
  const rows = [one, two].map((row) => JSON.stringify(row));
  const file = `{"format":"dipbook-log","version":1,"madeAt":5,"entries":[${rows.join(",")}],"photos":[]}`;
  const { db } = freshShop();
  expect((await look(db, file)).entries).toMatchObject({ fresh: 1, clashes: ["n0"] });
  expect(await bringIn(db, file)).toMatchObject({ ok: true, added: 1 });
  expect(await db.entries.get("n0")).toEqual(one);
});

test("a line taken out of a part, or doubled in it, is found though every line left is sound", async () => {
  const bytes = await bytesOf(await backupOf(await shopOf(20), { now }));
  const text = new TextDecoder("latin1").decode(bytes);
  const [from, to] = [text.indexOf('{"c":"'), text.indexOf('{"c":"', text.indexOf('{"c":"') + 10)];
  const second = bytes.slice(to, to + (to - from));
  // Lines 1 and 2 are of one length, so that line 2 twice leaves the zip as long as it was.
  expect(text[to + (to - from) - 1]).toBe("\n");
  bytes.set(second, from);
  const preview = await look(null, new Blob([bytes]));
  expect(preview.entries.bad).toMatchObject([{ place: 1, why: "not-all-there" }]);
  expect(isSound(preview)).toBe(false);
});

describe("a restore that does not come to its end", () => {
  test("cancelled: the log is as it was, and nothing of the backup is left", async () => {
    const file = await backupOf(await shopOf(30, ["a", "b", "c"]), { now });
    const { db } = freshShop();
    await db.entries.add(line("piece/q", "note-written", { text: "mine" }));
    const before = await state(db);
    const abort = new AbortController();
    const onProgress = ({ doneBytes, ofBytes }: { doneBytes: number; ofBytes: number }) => {
      if (doneBytes > ofBytes * 0.6) abort.abort(new Error("cancelled"));
    };
    await expect(
      restoreBackup(db, file, { settings: true, signal: abort.signal, onProgress }),
    ).rejects.toThrow("cancelled");
    expect(await state(db)).toEqual(before);
  });

  test("killed after the photos: the next start takes them out again", async () => {
    const { db } = freshShop();
    await putPhoto(db, jpeg(9), "mine");
    await db.photos.add({ id: "a", blob: jpeg(1) });
    await db.journal.add({ key: "photo/a", photoId: "a" });
    await db.staged.bulkAdd(notes(4));
    expect(await sweepUnfinished(db)).toBe(1);
    expect(await state(db)).toEqual({ entries: [], rows: [], photos: ["mine"], left: [0, 0] });
    expect(await sweepUnfinished(db)).toBe(0);
  });

  test("a sweep passes over a restore that is under way", async () => {
    const { db } = freshShop();
    await navigator.locks.request("dipbook-restore", async () => {
      await db.journal.add({ key: "photo/a", photoId: "a" });
      expect(await sweepUnfinished(db)).toBe(0);
      expect(await db.journal.count()).toBe(1);
    });
  });
});
