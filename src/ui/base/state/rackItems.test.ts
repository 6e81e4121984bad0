import { expect, test } from "vitest";
import { builtInRecipe, builtInShop } from "../../../logbook/piece/builtIns.ts";
import { readingsOf } from "../../../logbook/air/airLog.ts";
import { foldPiece, foldRoom } from "../../../logbook/log/fold.ts";
import type { RackData } from "../../../storage/reads.ts";
import { demoEntries } from "../../shop/demo/demoShop.ts";
import { freshMs, workOutRack, type RackCache } from "./rackItems.ts";

const rackItems = (...from: Parameters<typeof workOutRack>) => workOutRack(...from).items;

const now = Date.parse("2026-03-04T14:02:00Z");
const recipes = new Map(
  ["start-small", "start-general", "start-large"]
    .flatMap((id) => builtInRecipe(id) ?? [])
    .map((r) => [r.id, r]),
);

/** The demo shop read afresh, as the store gives it: nothing is the same object twice. */
function read(without = 0): RackData {
  const entries = demoEntries(now, "UTC");
  const own = (kind: string) =>
    [...new Set(entries.map(({ stream }) => stream))]
      .filter((stream) => stream.startsWith(`${kind}/`))
      .map((stream) => [stream, entries.filter((entry) => entry.stream === stream)] as const);
  const pieces = own("piece").flatMap(([stream, entries]) => foldPiece(stream.slice(6), entries) ?? []);
  const rooms = own("room").map(([stream, entries]) => ({ id: stream.slice(5), entries }));
  return {
    pieces,
    recipes,
    buckets: new Map(),
    shop: builtInShop,
    rooms: new Map(
      rooms.flatMap(({ id, entries }) => foldRoom(id, entries) ?? []).map((room) => [room.id, room]),
    ),
    readings: new Map(
      rooms.map(({ id, entries }) => [id, readingsOf(entries).slice(0, -without || undefined)]),
    ),
  };
}

test("a piece on which nothing has moved is not reckoned again", () => {
  const cache: RackCache = new Map();
  const first = rackItems(cache, read(), now);
  expect(first.length).toBe(8);
  expect(rackItems(cache, read(), now + 1000)).toEqual(first);
  expect(rackItems(cache, read(), now + 1000).every((item, place) => item === first[place])).toBe(true);
});

test("a piece whose log has changed is reckoned anew, the others not", () => {
  const cache: RackCache = new Map();
  const first = rackItems(cache, read(), now);
  const [changed, ...others] = read().pieces;
  if (changed === undefined) throw new Error("the demo shop has no piece");
  const renamed = { ...changed, plan: { ...changed.plan, name: "Another name" } };
  const second = rackItems(cache, { ...read(), pieces: [renamed, ...others] }, now + 1000);
  const fresh = second.filter((item) => !first.includes(item));
  expect(fresh.map(({ standing }) => standing.piece.plan.name)).toEqual(["Another name"]);
});

test("a reading of the air more or less counts for every piece", () => {
  const cache: RackCache = new Map();
  const first = rackItems(cache, read(1), now);
  expect(rackItems(cache, read(), now).some((item) => first.includes(item))).toBe(false);
});

test("time that has moved on is told, and so is a clock set back", () => {
  const cache: RackCache = new Map();
  const first = rackItems(cache, read(), now);
  expect(rackItems(cache, read(), now + freshMs).some((item) => first.includes(item))).toBe(false);
  expect(rackItems(cache, read(), now - 1).every(({ standing }) => standing.now === now - 1)).toBe(true);
});
