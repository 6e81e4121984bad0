import * as fc from "fast-check";
import { afterEach, expect, test } from "vitest";
import { backupOf, bringIn } from "../../../../tests/fixtures/backups.ts";
import { freshShop, removeShops } from "../../../../tests/fixtures/freshShop.ts";
import { coatBody, dayOne, hour, momentAt } from "../../../../tests/fixtures/logLines.ts";
import { streamOf } from "../../../logbook/entries/entry.ts";
import type { Command } from "../../../logbook/log/command.ts";
import { makeMemo } from "../../../logbook/log/memo.ts";
import { loadDemo, removeDemo } from "../../../storage/demo.ts";
import { memoOf } from "../../../storage/memoOf.ts";
import { readRack } from "../../../storage/reads.ts";
import { rebuildProjections } from "../../../storage/rebuild.ts";
import { runCommand } from "../../../storage/run.ts";
import type { ShopDb } from "../../../storage/rows.ts";
import { demoEntries } from "../../shop/demo/demoShop.ts";
import { workOutRack } from "./rackItems.ts";

afterEach(removeShops);

const rooms = ["first", "shed"] as const;
const at = (h: number): number => dayOne + h * hour;
const now = at(400);

/** Runs a command at that hour. A refused one writes nothing and gives an empty id. */
async function run(db: ShopDb, h: number, command: object): Promise<string> {
  const ran = await runCommand(db, { ...command, at: at(h) } as unknown as Command, momentAt(at(h) + 1000));
  return ran.ok ? (ran.entries[0]?.id ?? "") : "";
}
const log = (db: ShopDb, h: number, stream: string, type: string, body: object): Promise<string> =>
  run(db, h, { do: "log", stream, type, body });

/** Two rooms, a piece in each, a coat on both. */
async function shop(): Promise<ShopDb> {
  const { db } = freshShop();
  await log(db, 0, "room/shed", "room-set", { name: "Shed" });
  for (const roomId of rooms) {
    await log(db, 0.1, streamOf("room", roomId), "air-read", { airC: 20, rh: 0.5, air: "still" });
    await log(db, 0.2, `piece/in-${roomId}`, "piece-started", { plan: { name: roomId }, roomId });
    await log(db, 0.3, `piece/in-${roomId}`, "coat-dipped", coatBody(1, roomId));
  }
  return db;
}

const memoised = async (db: ShopDb) => workOutRack(memoOf(db), await readRack(db, now), now).items;
async function fromNothing(db: ShopDb) {
  const { stamps: _, ...unstamped } = await readRack(db, now);
  return workOutRack(makeMemo(), unstamped, now).items;
}

/** Figures may differ in their last digits, where a sum went on from the middle; times by a millisecond. */
function expectSame(found: unknown, wanted: unknown, where = "item"): void {
  if (typeof found === "number" && typeof wanted === "number" && Number.isFinite(wanted)) {
    const most = Math.abs(wanted) > 1e9 ? 1 : 1e-9 * Math.max(1, Math.abs(wanted));
    expect(Math.abs(found - wanted), where).toBeLessThanOrEqual(most);
  } else if (typeof wanted === "object" && wanted !== null && typeof found === "object" && found !== null) {
    expect(Object.keys(found), where).toEqual(Object.keys(wanted));
    for (const [key, value] of Object.entries(wanted))
      expectSame((found as Readonly<Record<string, unknown>>)[key], value, `${where}.${key}`);
  } else expect(found, where).toBe(wanted);
}

const room = fc.constantFrom(...rooms);
const step = fc.oneof(
  fc.record({ do: fc.constant("read" as const), room, rh: fc.double({ min: 0.2, max: 0.95, noNaN: true }) }),
  fc.record({ do: fc.constant("read-late" as const), room, back: fc.integer({ min: 1, max: 20 }) }),
  fc.record({ do: fc.constant("coat" as const), room }),
  fc.record({ do: fc.constant("touch" as const), room, verdict: fc.constantFrom("dry", "wet", "damp") }),
  fc.record({ do: fc.constant("move" as const), room }),
  fc.record({ do: fc.constant("strike" as const), pick: fc.nat({ max: 1000 }) }),
  fc.record({ do: fc.constant("figure" as const), factor: fc.double({ min: 0.5, max: 2, noNaN: true }) }),
  fc.record({ do: fc.constant("altitude" as const), altitudeM: fc.integer({ min: 0, max: 3000 }) }),
  fc.record({ do: fc.constantFrom("restore", "rebuild", "demo", "no-demo", "old-row") }),
);
type Step = typeof step extends fc.Arbitrary<infer S> ? S : never;

async function take(db: ShopDb, h: number, one: Step): Promise<void> {
  switch (one.do) {
    case "read":
      await log(db, h, streamOf("room", one.room), "air-read", { airC: 21, rh: one.rh, air: "still" });
      return;
    case "read-late": {
      const body = { airC: 12, rh: 0.9, air: "still" };
      await log(db, Math.max(0.15, h - one.back), streamOf("room", one.room), "air-read", body);
      return;
    }
    case "coat": {
      const stream = `piece/in-${one.room}`;
      const number = (
        await db.entries.where("[stream+at]").between([stream, 0], [stream, Infinity]).toArray()
      ).filter(({ type }) => type === "coat-dipped").length;
      await log(db, h, stream, "coat-dipped", coatBody(number + 1, one.room));
      return;
    }
    case "touch": {
      const rack = await readRack(db, now);
      const coatId = rack.pieces.find(({ id }) => id === `in-${one.room}`)?.coats.at(-1)?.id ?? "";
      const body = { method: "touch", verdict: one.verdict, coatId };
      await log(db, h, `piece/in-${one.room}`, "dryness-seen", body);
      return;
    }
    case "move":
      await log(db, h, "piece/in-first", "piece-moved", { roomId: one.room });
      return;
    case "strike": {
      const rows = (await db.entries.toArray()).filter(({ type }) => type !== "piece-started");
      const row = rows[one.pick % rows.length];
      if (row) await run(db, h, { do: "strike", stream: row.stream, entryId: row.id, reason: "wrong" });
      return;
    }
    case "figure":
      await log(db, h, "shop", "shop-figures-set", { dryingFactor: one.factor });
      return;
    case "altitude":
      await log(db, h, "room/shed", "room-set", { name: "Shed", altitudeM: one.altitudeM });
      return;
    case "restore": {
      // Another device has gone on with the same log: a line of the past comes in.
      const { db: other } = freshShop();
      await bringIn(other, await backupOf(db, { now }));
      await log(other, 0.25 + h / 1000, "room/first", "air-read", { airC: 8, rh: 0.8, air: "still" });
      await log(other, h, "piece/in-shed", "coat-redipped", {
        coatId:
          (await readRack(other, now)).pieces.find(({ id }) => id === "in-shed")?.coats.at(-1)?.id ?? "",
      });
      await bringIn(db, await backupOf(other, { now }));
      return;
    }
    case "rebuild":
      await rebuildProjections(db);
      return;
    case "demo":
      // It comes again under the same ids at another time.
      await loadDemo(db, demoEntries(at(h), "Europe/Rome"));
      return;
    case "no-demo":
      await removeDemo(db);
      return;
    case "old-row":
      // As an older program wrote it.
      await db.projections.toCollection().modify((row: { stamp?: number | undefined }) => {
        delete row.stamp;
      });
  }
}

test(
  "whatever is written, struck, restored, rebuilt or taken out, the memo's answers are those worked out from nothing",
  () =>
    fc.assert(
      fc.asyncProperty(fc.array(step, { minLength: 4, maxLength: 12 }), async (steps) => {
        const db = await shop();
        expectSame(await memoised(db), await fromNothing(db));
        for (const [i, one] of steps.entries()) {
          await take(db, 2 + 5 * i, one);
          expectSame(await memoised(db), await fromNothing(db), `${i} ${one.do}`);
        }
        await removeShops();
      }),
      { numRuns: 8 },
    ),
  300_000,
);

test("a new reading in one room works out anew what hangs there, and what hangs elsewhere not", async () => {
  const db = await shop();
  const before = await memoised(db);
  expect(before.map(({ standing }) => standing.piece.id).toSorted()).toEqual(["in-first", "in-shed"]);
  await take(db, 3, { do: "read", room: "shed", rh: 0.7 });
  const fresh = (await memoised(db)).filter((item) => !before.includes(item));
  expect(fresh.map(({ standing }) => standing.piece.id)).toEqual(["in-shed"]);
});
