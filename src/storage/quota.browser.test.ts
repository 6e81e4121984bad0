import { afterEach, expect, test, vi } from "vitest";
import oldLog from "../../tests/fixtures/log-v1.json" with { type: "json" };
import { freshShop, removeShops } from "../../tests/fixtures/freshShop.ts";
import { dayOne, momentAt } from "../../tests/fixtures/logLines.ts";
import type { Command } from "../logbook/log/command.ts";
import { bringIn } from "../../tests/fixtures/backups.ts";
import { isOutOfSpace } from "./quota.ts";
import { runCommand } from "./run.ts";

afterEach(removeShops);

const start: Command = {
  do: "log",
  stream: "piece/p",
  type: "piece-started",
  body: { plan: { name: "P" }, roomId: "first" },
};
const note: Command = { do: "log", stream: "piece/p", type: "note-written", body: { text: "thin" } };

type Put = IDBObjectStore["put"];

/** Rows of one table fail as they do on a full disk; those written before them in the transaction went in. */
function fullDisk(table: string): () => void {
  const plain = Object.getOwnPropertyDescriptor(IDBObjectStore.prototype, "put")?.value as Put;
  const spy = vi.spyOn(IDBObjectStore.prototype, "put").mockImplementation(function (
    this: IDBObjectStore,
    ...args
  ) {
    if (this.name === table) throw new DOMException("no room", "QuotaExceededError");
    return plain.apply(this, args);
  });
  return () => spy.mockRestore();
}

test("when there is no room left the maker is told, and a line written by half is taken back", async () => {
  const { db } = freshShop();
  await runCommand(db, start, momentAt(dayOne));
  const before = [await db.entries.toArray(), await db.projections.toArray()];
  const mend = fullDisk("projections");
  expect(await runCommand(db, note, momentAt(dayOne))).toEqual({ ok: false, failure: "out-of-space" });
  expect(await bringIn(db, JSON.stringify(oldLog))).toEqual({ ok: false, why: { code: "out-of-space" } });
  mend();
  expect([await db.entries.toArray(), await db.projections.toArray()]).toEqual(before);
  expect(await runCommand(db, note, momentAt(dayOne))).toMatchObject({ ok: true });
});

test("any other failure is not taken for a full disk", async () => {
  const { db } = freshShop();
  const spy = vi.spyOn(IDBObjectStore.prototype, "put").mockImplementation(() => {
    throw new DOMException("no", "DataError");
  });
  await expect(runCommand(db, start, momentAt(dayOne))).rejects.toThrow("no");
  spy.mockRestore();
  expect(await db.entries.toArray()).toEqual([]);
});

// As a full Chromium 156 gave them to Dexie 4.4.7, the quota overridden: the commit fails, and no single row does.
test("a full disk is known by the shape it was seen to have", () => {
  const full = { name: "QuotaExceededError", message: "" };
  expect(isOutOfSpace({ name: "AbortError", message: "QuotaExceededError ", inner: full })).toBe(true);
  expect(isOutOfSpace({ name: "BulkError", failures: [{ name: "AbortError", inner: full }] })).toBe(true);
  expect(isOutOfSpace({ name: "AbortError", inner: null })).toBe(false);
  expect(isOutOfSpace("QuotaExceededError")).toBe(false);
});
