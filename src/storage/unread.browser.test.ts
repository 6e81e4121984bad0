import { afterEach, expect, test } from "vitest";
import { backupOf, look } from "../../tests/fixtures/backups.ts";
import { freshShop, removeShops } from "../../tests/fixtures/freshShop.ts";
import { dayOne, hour, line } from "../../tests/fixtures/logLines.ts";
import { loadDemo, readOwnCount, removeDemo } from "./demo.ts";
import { readPiece } from "./reads.ts";
import { rebuildProjections } from "./rebuild.ts";
import { readUnread } from "./unread.ts";

afterEach(removeShops);

const start = line("piece/p", "piece-started", { plan: { name: "P" }, roomId: "first" });

test("a line that can't be read, with or without its time, is named with its piece and goes into the backup", async () => {
  const { db } = freshShop();
  const { recordedAt: _, ...rotten } = line("piece/p", "note-written", { text: "a" }, { id: "r1" });
  const { at: __, ...timeless } = line("piece/p", "note-written", { text: "b" }, { id: "r2" });
  await db.entries.bulkAdd([start, rotten, timeless] as never);
  await rebuildProjections(db);
  const { lines, summaries } = await readUnread(db);
  expect(lines.map(({ id, stream, fault }) => [id, stream, fault?.field])).toEqual([
    ["r1", "piece/p", "recordedAt"],
    ["r2", "piece/p", "at"],
  ]);
  expect(summaries).toEqual([]);
  const piece = await readPiece(db, "p", dayOne + hour);
  expect(piece?.setAside.map(({ id }) => id)).toEqual(["r1", "r2"]);
  const { entries } = await look(null, await backupOf(db, { now: dayOne }));
  expect([entries.found, entries.fresh, entries.bad.length]).toEqual([3, 1, 2]);
});

test("a summary that can't be read is named, and is none once it is made again", async () => {
  const { db } = freshShop();
  await db.entries.add(start);
  await rebuildProjections(db);
  expect((await readPiece(db, "p", dayOne + hour))?.isSummaryRotten).toBe(false);
  await db.projections.update("piece/p", { state: null } as never);
  expect(await readUnread(db)).toEqual({ lines: [], summaries: ["piece/p"] });
  expect((await readPiece(db, "p", dayOne + hour))?.isSummaryRotten).toBe(true);
  await rebuildProjections(db);
  expect(await readUnread(db)).toEqual({ lines: [], summaries: [] });
});

test("lines of the demo count for nothing of the shop's own", async () => {
  const { db } = freshShop();
  const demo = line(
    "piece/demo-a",
    "piece-started",
    { plan: { name: "Demo" }, roomId: "first" },
    { id: "0" },
  );
  await loadDemo(db, [demo]);
  expect(await readOwnCount(db)).toEqual({ entries: 0, firstAt: null });
  await db.entries.add({ ...start, recordedAt: dayOne + 3 * hour });
  expect(await readOwnCount(db)).toEqual({ entries: 1, firstAt: dayOne + 3 * hour });
  await removeDemo(db);
  expect(await readOwnCount(db)).toEqual({ entries: 1, firstAt: dayOne + 3 * hour });
});
