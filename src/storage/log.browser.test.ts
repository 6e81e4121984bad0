import * as fc from "fast-check";
import { afterEach, expect, test } from "vitest";
import { freshShop, removeShops } from "../../tests/fixtures/freshShop.ts";
import { coatBody, dayOne, hour, momentAt } from "../../tests/fixtures/logLines.ts";
import type { Command } from "../logbook/log/command.ts";
import type { Entry } from "../logbook/entries/entry.ts";
import { backupOf, bringIn } from "../../tests/fixtures/backups.ts";
import { rebuildProjections } from "./rebuild.ts";
import { runCommand } from "./run.ts";
import type { ShopDb } from "./rows.ts";

afterEach(removeShops);

/** What a pair of hands may do, told without ids: `pick` chooses among the lines that are there. */
type Act =
  | { readonly act: "start" | "move" | "crack" | "archive" | "note"; readonly piece: number }
  | { readonly act: "coat"; readonly piece: number; readonly number: number; readonly ago: number }
  | { readonly act: "air"; readonly room: string; readonly rh: number; readonly ago: number }
  | { readonly act: "room" | "recipe" | "shop"; readonly figure: number }
  | {
      readonly act: "plan" | "fire" | "heat" | "cool";
      readonly fire: "run" | "melt" | "pour";
      readonly ago: number;
    }
  | { readonly act: "logged"; readonly room: string; readonly said: boolean; readonly ago: number }
  | { readonly act: "cup" | "top" | "stock"; readonly figure: number }
  | { readonly act: "strike" | "correct"; readonly pick: number };

const piece = fc.integer({ min: 0, max: 2 });
const ago = fc.integer({ min: 0, max: 6 });
const act: fc.Arbitrary<Act> = fc.oneof(
  {
    weight: 4,
    arbitrary: fc.record({ act: fc.constantFrom("start", "move", "crack", "archive", "note"), piece }),
  },
  {
    weight: 6,
    arbitrary: fc.record({ act: fc.constant("coat"), piece, number: fc.integer({ min: 1, max: 4 }), ago }),
  },
  {
    weight: 4,
    arbitrary: fc.record({
      act: fc.constant("air"),
      room: fc.constantFrom("room/first", "room/attic"),
      rh: fc.integer({ min: 0, max: 100 }).map((percent) => percent / 100),
      ago,
    }),
  },
  {
    weight: 2,
    arbitrary: fc.record({
      act: fc.constantFrom("room", "recipe", "shop"),
      figure: fc.integer({ min: 1, max: 9 }),
    }),
  },
  {
    weight: 4,
    arbitrary: fc.record({
      act: fc.constantFrom("plan", "fire", "heat", "cool"),
      fire: fc.constantFrom("run", "melt", "pour"),
      ago,
    }),
  },
  {
    weight: 3,
    arbitrary: fc.record({
      act: fc.constant("logged"),
      room: fc.constantFrom("room/first", "room/attic"),
      said: fc.boolean(),
      ago,
    }),
  },
  {
    weight: 2,
    arbitrary: fc.record({
      act: fc.constantFrom("cup", "top", "stock"),
      figure: fc.integer({ min: 1, max: 9 }),
    }),
  },
  { weight: 4, arbitrary: fc.record({ act: fc.constantFrom("strike", "correct"), pick: fc.nat() }) },
);
/** Hours between two rounds; acts of one round are done at once, each by the tab it names. */
const rounds = fc.array(
  fc.array(fc.record({ act, tab: fc.integer({ min: 0, max: 1 }) }), { minLength: 1, maxLength: 4 }),
  { minLength: 3, maxLength: 14 },
);

function commandFor(act: Act, now: number, log: readonly Entry[]): Command | null {
  switch (act.act) {
    case "start":
      return {
        do: "log",
        stream: `piece/${act.piece}`,
        type: "piece-started",
        body: { plan: { name: "P" }, roomId: "first" },
      };
    case "move":
      return { do: "log", stream: `piece/${act.piece}`, type: "piece-moved", body: { roomId: "attic" } };
    case "crack":
      return {
        do: "log",
        stream: `piece/${act.piece}`,
        type: "crack-found",
        body: { kind: "open", stage: "coating", where: "rim" },
      };
    case "archive":
      return { do: "log", stream: `piece/${act.piece}`, type: "piece-archived", body: { archived: true } };
    case "note":
      return { do: "log", stream: `piece/${act.piece}`, type: "note-written", body: { text: "thin" } };
    case "coat":
      return {
        do: "log",
        stream: `piece/${act.piece}`,
        type: "coat-dipped",
        body: coatBody(act.number),
        at: now - act.ago * hour,
      };
    case "air":
      return {
        do: "log",
        stream: act.room,
        type: "air-read",
        body: { airC: 20, rh: act.rh, air: "still" },
        at: now - act.ago * hour,
      };
    case "room":
      return {
        do: "log",
        stream: "room/attic",
        type: "room-set",
        body: { name: "Attic", altitudeM: act.figure },
      };
    case "recipe":
      return {
        do: "log",
        stream: "recipe/own",
        type: "recipe-set",
        body: {
          name: "Own",
          coats: [{ kind: "prime", stuccoId: "80-120", targetDryness: 0.95 }],
          morMPa: act.figure,
          safetyFactor: 3,
          floorMm: 5,
        },
      };
    case "shop":
      return { do: "log", stream: "shop/own", type: "shop-figures-set", body: { morMPa: act.figure } };
    case "plan":
    case "fire":
    case "heat":
    case "cool":
      return fireCommand(act, now);
    case "logged":
      return {
        do: "log",
        stream: act.room,
        type: "air-logged",
        at: now - act.ago * hour,
        body: {
          source: "logger",
          air: act.said ? "tunnel" : null,
          afterS: [0, 240],
          airC: [20, 21],
          rh: [0.5, 0.6],
        },
      };
    case "cup":
      return { do: "log", stream: "bucket/first-prime", type: "bucket-read", body: { cupS: act.figure } };
    case "top":
      return {
        do: "log",
        stream: "bucket/first-prime",
        type: "bucket-topped",
        body: { flourKg: 0, solKg: 0, waterKg: act.figure, why: "fresh" },
      };
    case "stock":
      return {
        do: "log",
        stream: "shop/own",
        type: "stock-moved",
        body: { materialId: "m", how: "received", massKg: act.figure },
      };
    case "strike":
    case "correct": {
      const entry = log[act.pick % Math.max(1, log.length)];
      if (entry === undefined) return null;
      return act.act === "strike"
        ? { do: "strike", stream: entry.stream, entryId: entry.id, reason: "slip" }
        : { do: "correct", stream: entry.stream, entryId: entry.id, at: entry.at - hour / 2, reason: "slip" };
    }
  }
}

const pour = { pourAt: dayOne, pieceIds: [], bed: "air", shellC: 500, metalC: 1150, steps: [] } as const;
const fireBodies = {
  run: {
    plan: ["run-planned", { kilnId: null, purpose: "preheat", pieceIds: [], startC: 20, segments: [] }],
    fire: ["run-started", { kilnC: 20 }],
    heat: ["run-logged", { source: "k", afterS: [0, 200], kilnC: [90, 95] }],
    cool: ["run-ended", { result: "done" }],
  },
  melt: {
    plan: ["melt-planned", { furnaceId: null, alloyId: "a", pieceIds: [], items: [], pourC: 1150 }],
    fire: ["melt-started", { hotFurnace: false }],
    heat: ["melt-read", { metalC: 900 }],
    cool: ["melt-ended", { pouredKg: 3, piggedKg: 1 }],
  },
  pour: {
    plan: ["pour-planned", pour],
    fire: ["pour-item-checked", { item: "sand-dry", ok: true }],
    heat: ["pour-decided", { go: true, name: "R.", passed: [] }],
    cool: ["pour-ended", {}],
  },
} as const;

function fireCommand(
  { act, fire, ago: back }: Extract<Act, { readonly fire: string }>,
  now: number,
): Command {
  const [type, body] = fireBodies[fire][act];
  return { do: "log", stream: `${fire}/one`, type, body, at: now - back * hour } as unknown as Command;
}

/** Plays the rounds into a store through its tabs and gives every entry that was said to be done. */
async function play(
  tabs: readonly ShopDb[],
  script: readonly (readonly { readonly act: Act; readonly tab: number }[])[],
  device = "d-test",
): Promise<readonly Entry[]> {
  const done: Entry[] = [];
  for (const [index, round] of script.entries()) {
    const now = dayOne + index * hour;
    const ran = await Promise.all(
      round.map(async ({ act, tab }) => {
        const command = commandFor(act, now, done);
        const db = tabs[tab % tabs.length];
        return command === null || db === undefined ? null : runCommand(db, command, momentAt(now, device));
      }),
    );
    for (const one of ran) if (one?.ok === true) done.push(...one.entries);
  }
  return done;
}

const byId = (a: { readonly id: string }, b: { readonly id: string }): number => (a.id < b.id ? -1 : 1);
const rowsOf = (db: ShopDb) => db.projections.orderBy("stream").toArray();

test("whatever two tabs do at once, no line is lost, none is doubled, and the rows are what the log comes to", async () => {
  await fc.assert(
    fc.asyncProperty(rounds, async (script) => {
      const { db, again } = freshShop();
      const done = await play([db, again()], script);
      expect(await db.entries.toArray()).toEqual([...done].sort(byId));
      const kept = await rowsOf(db);
      await rebuildProjections(db);
      expect(kept).toEqual(await rowsOf(db));
      for (const row of kept)
        if (row.kind === "piece")
          expect(row.state.coats.map(({ number }) => number)).toEqual(row.state.coats.map((_, i) => i + 1));
      await removeShops();
    }),
    { numRuns: 40 },
  );
}, 60_000);

test("two devices that part and join again come to the same log and the same rows, whichever way they join", async () => {
  await fc.assert(
    fc.asyncProperty(rounds, rounds, rounds, async (shared, mine, theirs) => {
      const [a, b] = [freshShop().db, freshShop().db];
      const common = await play([a], shared);
      expect(await bringIn(b, await backupOf(a, { now: dayOne }))).toMatchObject({
        ok: true,
        already: 0,
      });
      const own = await play([a], mine, "d-a");
      const other = await play([b], theirs, "d-b");
      const [fromA, fromB] = [await backupOf(a, { now: dayOne }), await backupOf(b, { now: dayOne })];
      expect(await bringIn(a, fromB)).toMatchObject({
        ok: true,
        added: other.length,
        already: common.length,
      });
      expect(await bringIn(b, fromA)).toMatchObject({ ok: true, added: own.length, already: common.length });
      expect(await a.entries.toArray()).toEqual([...common, ...own, ...other].sort(byId));
      expect(await a.entries.toArray()).toEqual(await b.entries.toArray());
      expect(await rowsOf(a)).toEqual(await rowsOf(b));
      const kept = await rowsOf(a);
      await rebuildProjections(a);
      expect(kept).toEqual(await rowsOf(a));
      await removeShops();
    }),
    { numRuns: 20 },
  );
}, 60_000);
