import { afterEach, expect, test } from "vitest";
import { freshShop, removeShops } from "../../tests/fixtures/freshShop.ts";
import { dayOne, hour, momentAt } from "../../tests/fixtures/logLines.ts";
import type { Command } from "../logbook/log/command.ts";
import { blocksOfFile, readRoomLines } from "./roomLines.ts";
import { runCommand, runCommands } from "./run.ts";

afterEach(removeShops);

const stream = "room/first";
const at = (h: number): number => dayOne + h * hour;
const late = momentAt(at(3000));
const read = (h: number): Command => ({
  do: "log",
  stream,
  type: "air-read",
  body: { airC: 20, rh: 0.5, air: "still" },
  at: at(h),
});
const blocks = (days: number): readonly Command[] =>
  Array.from({ length: days }, (_, day) => ({
    do: "log",
    stream,
    type: "air-logged",
    body: { source: "shed.csv", air: null, afterS: [0, 3600, 7200], airC: [20, 21, 22], rh: [0.5, 0.5, 0.5] },
    at: at(day * 24),
  }));

test("a file of ninety days is one line among the readings, told whole, and all its blocks can be found", async () => {
  const { db } = freshShop();
  await runCommands(db, blocks(90), late);
  await runCommand(db, read(12), momentAt(at(3001)));
  await runCommand(db, read(2400), momentAt(at(3002)));
  const { lines, hasMore } = await readRoomLines(db, "first", 8);
  expect(lines.map(({ kind }) => kind)).toEqual(["reading", "file", "reading"]);
  expect(lines[1]).toMatchObject({
    source: "shed.csv",
    count: 270,
    from: at(0),
    to: at(89 * 24 + 2),
    isCut: false,
  });
  expect(hasMore).toBe(false);
  const [, file] = lines;
  if (file?.kind !== "file") throw new Error("the second line is the file");
  const ids = await blocksOfFile(db, "first", file);
  expect(ids).toHaveLength(90);
  const strikes = ids.map(
    (entryId) => ({ do: "strike", stream, entryId, reason: "file taken back" }) as const,
  );
  await runCommands(db, strikes, momentAt(at(3003)));
  expect((await readRoomLines(db, "first", 8)).lines.map(({ kind }) => kind)).toEqual(["reading", "reading"]);
});

test("a file of more days than are looked at is told short, and so said", async () => {
  const { db } = freshShop();
  await runCommands(db, blocks(100), late);
  const { lines, hasMore } = await readRoomLines(db, "first", 1);
  expect(lines).toMatchObject([{ kind: "file", isCut: true, to: at(99 * 24 + 2) }]);
  expect(hasMore).toBe(true);
});

test("the same file brought in again after being taken back is a file of its own", async () => {
  const { db } = freshShop();
  const first = await runCommands(db, blocks(2), late);
  if (!first.ok) throw new Error("not logged");
  await runCommands(db, blocks(3).slice(2), momentAt(at(3001)));
  const { lines } = await readRoomLines(db, "first", 8);
  expect(lines.map((line) => (line.kind === "file" ? line.count : 0))).toEqual([3, 6]);
});

test("for the newest eight of 17 000 readings no more than some dozens are read", async () => {
  const { db } = freshShop();
  await runCommand(db, read(0), late);
  const [row] = await db.entries.toArray();
  if (row === undefined) throw new Error("nothing was logged");
  await db.entries.bulkAdd(
    Array.from({ length: 17_000 }, (_, i) => ({ ...row, id: `reading-${i}`, at: at(0) + (i + 1) * 300_000 })),
  );
  let rowsRead = 0;
  db.entries.hook("reading", (stored) => {
    rowsRead++;
    return stored;
  });
  const { lines, hasMore } = await readRoomLines(db, "first", 8);
  expect(rowsRead).toBeGreaterThanOrEqual(8);
  expect(rowsRead).toBeLessThan(100);
  expect(lines).toHaveLength(8);
  expect(hasMore).toBe(true);
  expect(lines[0]).toMatchObject({ reading: { id: "reading-16999" } });
});
