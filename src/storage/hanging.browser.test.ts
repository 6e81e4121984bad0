import { afterEach, describe, expect, test } from "vitest";
import { freshShop, removeShops } from "../../tests/fixtures/freshShop.ts";
import { coatBody, dayOne, hour, line, momentAt } from "../../tests/fixtures/logLines.ts";
import { standingOf } from "../logbook/piece/buildStanding.ts";
import type { EntryBodies, EntryType } from "../logbook/entries/entry.ts";
import type { Standing } from "../logbook/piece/standing.ts";
import { recoatedBeforeDry } from "../rules/recoatedBeforeDry.ts";
import { readArchive, readPiece, readRack } from "./reads.ts";
import { rebuildProjections } from "./rebuild.ts";
import { readingsIn, readingsSince } from "./roomReadings.ts";
import { runCommand } from "./run.ts";
import type { ShopDb } from "./rows.ts";

afterEach(removeShops);

const at = (h: number): number => dayOne + h * hour;
const air = (h: number, rh = 0.5) =>
  line("room/first", "air-read", { airC: 20, rh, air: "still" }, { at: at(h) });

async function log<T extends EntryType>(
  db: ShopDb,
  hours: number,
  type: T,
  body: EntryBodies[T],
): Promise<string> {
  const command = { do: "log", stream: "piece/heron", type, body, at: at(hours) } as unknown as Parameters<
    typeof runCommand
  >[1];
  const ran = await runCommand(db, command, momentAt(at(hours)));
  if (!ran.ok) throw new Error(`${type} was not logged: ${JSON.stringify(ran)}`);
  return ran.entries[0]?.id ?? "";
}

/** Eight readings, three coats of which the second went on over a damp one, a touch and a weight. */
async function hasty(db: ShopDb): Promise<void> {
  await db.entries.bulkAdd([-4, 0, 3, 6, 9, 12, 24, 36].map((h) => air(h)));
  await log(db, 0, "piece-started", { plan: { name: "heron" }, roomId: "first" });
  const first = await log(db, 1, "coat-dipped", coatBody(1));
  await log(db, 1.2, "dryness-seen", { method: "touch", verdict: "damp", coatId: first });
  const second = await log(db, 1.4, "coat-dipped", coatBody(2));
  await log(db, 8, "dryness-seen", { method: "weight", massG: 2410, coatId: second });
  await log(db, 20, "coat-dipped", coatBody(3));
}

async function pour(db: ShopDb): Promise<void> {
  await log(db, 60, "burnout-started", {});
  await log(db, 66, "burnout-ended", { result: "clean" });
  await log(db, 67, "shell-fired", { peakC: 900, holdMin: 60 });
  await log(db, 68, "shell-preheated", { shellC: 600 });
  await log(db, 69, "metal-poured", { metalC: 1100, shellC: 590, massKg: 6, outOfKilnMin: 2 });
}

const page = async (db: ShopDb, now: number): Promise<Standing> => {
  const read = await readPiece(db, "heron", at(now));
  if (read === null) throw new Error("no piece");
  return standingOf(read.piece, read, at(now));
};
const rack = async (
  db: ShopDb,
  now: number,
  archivedIds: readonly string[] | null = null,
): Promise<Standing> => {
  const read = await readRack(db, at(now), { archivedIds });
  const [piece] = read.pieces;
  if (piece === undefined) throw new Error("no piece");
  return standingOf(piece, read, at(now));
};
const coatsOf = ({ drying }: Standing) =>
  drying.map(({ leftShare, verdict, readyAt, basis }) => ({
    leftShare,
    verdict,
    likely: readyAt.likely,
    readings: basis.readings,
    assumed: basis.assumed,
  }));

describe("what a coat was when it was covered stays so", () => {
  test("after the pour, months later, and once it is put away; on its page, the rack and the archive", async () => {
    const { db } = freshShop();
    await hasty(db);
    const before = await page(db, 2);
    const [wet] = recoatedBeforeDry(before);
    expect(wet?.figures["leftShare"]?.value).toBeGreaterThan(0.3);
    expect(wet?.figures["leftShare"]?.value).toBeLessThan(0.98);
    const covered = coatsOf(await page(db, 50)).slice(0, 2);
    expect(covered[0]?.leftShare).toBe(before.drying[0]?.leftShare);
    expect(covered.every(({ readings, assumed }) => readings > 0 && !assumed)).toBe(true);

    await pour(db);
    await db.entries.bulkAdd([100, 2000, 2010].map((h) => air(h, 0.3)));
    for (const now of [70, 2020]) {
      const [onPage, onRack] = [await page(db, now), await rack(db, now)];
      expect(coatsOf(onPage).slice(0, 2)).toEqual(covered);
      expect(coatsOf(onRack)).toEqual(coatsOf(onPage));
      expect(recoatedBeforeDry(onPage)[0]?.figures).toEqual(wet?.figures);
      expect(onPage.readings.at(-1)?.at).toBe(at(2010));
    }
    await log(db, 2021, "piece-archived", { archived: true });
    expect(coatsOf(await rack(db, 2022, ["heron"])).slice(0, 2)).toEqual(covered);
    expect(coatsOf(await page(db, 2022)).slice(0, 2)).toEqual(covered);
  });
});

describe("what was said at a dip", () => {
  const saidOf = ({ drying }: Standing) => drying.map(({ said, leftShare }) => [said, leftShare]);

  test("stands on page, rack and archive, whatever stretch of the room is read for them, until a late reading", async () => {
    const { db } = freshShop();
    await db.entries.bulkAdd([-400, -30, -4, 0, 0.6].map((h) => air(h)));
    await log(db, 0, "piece-started", { plan: { name: "heron" }, roomId: "first" });
    await log(db, 1, "coat-dipped", coatBody(1));
    const said = (await page(db, 1.5)).saying;
    expect(said).toMatchObject({ cover: "drying", saidAt: at(1.5) });
    await log(db, 1.5, "coat-dipped", { ...coatBody(2), said: said ?? undefined });
    const then = saidOf(await page(db, 1.6));
    expect(then[0]).toEqual([{ ...said, anew: null }, said?.leftShare]);
    await db.entries.bulkAdd([2, 20, 36, 100, 2000].map((h) => air(h, 0.3)));
    await pour(db);
    // Another piece over the same years, so that the archive reads more of the room.
    await db.entries.bulkAdd([
      line("piece/otter", "piece-started", { plan: { name: "otter" }, roomId: "first" }, { at: at(-390) }),
      line("piece/otter", "coat-dipped", coatBody(1), { at: at(-380) }),
      line("piece/otter", "piece-archived", { archived: true }, { at: at(-300) }),
    ]);
    await log(db, 2021, "piece-archived", { archived: true });
    await rebuildProjections(db);
    const both = await readRack(db, at(2022), { archivedIds: ["heron", "otter"] });
    const inArchive = both.pieces.find(({ id }) => id === "heron");
    if (inArchive === undefined) throw new Error("no piece");
    for (const standing of [
      await page(db, 2022),
      await rack(db, 2022, ["heron"]),
      standingOf(inArchive, both, at(2022)),
    ])
      expect(saidOf(standing)[0]).toEqual(then[0]);
    await db.entries.bulkAdd([air(1.2, 0.97)]);
    for (const standing of [await page(db, 2030), await rack(db, 2030, ["heron"])]) {
      const late = standing.drying[0]?.said;
      expect(late).toMatchObject({ leftShare: said?.leftShare });
      expect(late?.anew?.why).toEqual([{ of: "air", how: "added", count: 1, at: at(1.2) }]);
    }
  });
});

/** Rows that are read of the log and of the summaries while `run` lasts. */
async function rowsRead(
  db: ShopDb,
  run: () => Promise<unknown>,
): Promise<{ entries: number; summaries: number }> {
  const read = { entries: 0, summaries: 0 };
  const line = <T>(row: T): T => {
    read.entries += 1;
    return row;
  };
  const summary = <T>(row: T): T => {
    read.summaries += 1;
    return row;
  };
  db.entries.hook("reading", line);
  db.projections.hook("reading", summary);
  await run();
  db.entries.hook("reading").unsubscribe(line);
  db.projections.hook("reading").unsubscribe(summary);
  return read;
}

describe("an archive of two hundred pieces over two years, with the room's logger on all the time", () => {
  const pieces = 200;
  const days = 730;

  test("its list reads no line of a room, and all pieces at once read each line of it once", async () => {
    const { db } = freshShop();
    const afterS = Array.from({ length: 24 }, (_, i) => i * 3600);
    const body = {
      source: "x",
      air: "still",
      afterS,
      airC: afterS.map(() => 20),
      rh: afterS.map(() => 0.5),
    } as const;
    await db.entries.bulkAdd(
      Array.from({ length: days }, (_, day) => line("room/first", "air-logged", body, { at: at(24 * day) })),
    );
    for (let i = 0; i < pieces; i += 1) {
      const from = 24 * (7 + Math.floor((i * (days - 20)) / pieces));
      const own = `piece/p${i}`;
      await db.entries.bulkAdd([
        line(own, "piece-started", { plan: { name: own }, roomId: "first" }, { at: at(from) }),
        line(own, "coat-dipped", coatBody(1), { at: at(from + 1) }),
        line(own, "coat-dipped", coatBody(2), { at: at(from + 10) }),
        line(
          own,
          "metal-poured",
          { metalC: 1100, shellC: 590, massKg: 6, outOfKilnMin: 2 },
          { at: at(from + 48) },
        ),
        line(own, "piece-archived", { archived: true }, { at: at(from + 72) }),
      ]);
    }
    await rebuildProjections(db);
    const now = at(24 * days);
    const ids = Array.from({ length: pieces }, (_, i) => `p${i}`);
    const list = await rowsRead(db, () => readArchive(db));
    expect(list).toEqual({ entries: 0, summaries: pieces });
    const whole = await rowsRead(db, () => readRack(db, now, { archivedIds: ids }));
    expect(whole.entries).toBeLessThanOrEqual(days + 2);
    expect(whole.summaries).toBeLessThanOrEqual(pieces + 4);
    const none = await rowsRead(db, () => readRack(db, now));
    expect(none.entries).toBeLessThanOrEqual(16);
  });
});

describe("readings in spans of time", () => {
  const hours = async (
    db: ShopDb,
    spans: readonly (readonly [number, number])[],
  ): Promise<readonly number[]> => {
    const read = await readingsIn(
      db,
      "first",
      spans.map(([from, to]) => ({ from: at(from), to: at(to) })),
    );
    return read.map((one) => (one.at - dayOne) / hour);
  };

  test("are led by the one that held, closed by the next, and leave out what lies between", async () => {
    const { db } = freshShop();
    await db.entries.bulkAdd(Array.from({ length: 100 }, (_, i) => air(10 * i)));
    expect(
      await hours(db, [
        [105, 125],
        [505, 511],
      ]),
    ).toEqual([100, 110, 120, 130, 500, 510, 520]);
    expect(await hours(db, [[985, Infinity]])).toEqual([980, 990]);
    expect(await hours(db, [])).toEqual([]);
    expect(await readingsIn(db, "first", [{ from: Infinity, to: Infinity }])).toHaveLength(1);
    expect(await readingsSince(db, "first", at(985))).toHaveLength(2);
  });

  test("leave out what was struck long after the span", async () => {
    const { db } = freshShop();
    await db.entries.bulkAdd(Array.from({ length: 100 }, (_, i) => air(10 * i)));
    const wrong = await readingsIn(db, "first", [{ from: at(105), to: at(111) }]);
    const entryId = wrong.find((one) => one.at === at(110))?.id ?? "";
    await runCommand(
      db,
      { do: "strike", stream: "room/first", entryId, reason: "other room" },
      momentAt(at(3000)),
    );
    expect(await hours(db, [[105, 111]])).toEqual([100, 120]);
  });
});
