import { expect, test } from "vitest";
import { builtInRecipe, builtInShop } from "../../../logbook/piece/builtIns.ts";
import { readingsOf } from "../../../logbook/air/airLog.ts";
import { makeMemo } from "../../../logbook/log/memo.ts";
import { foldPiece, foldRoom } from "../../../logbook/log/fold.ts";
import type { RackData } from "../../../storage/reads.ts";
import { learningStamp } from "../../../logbook/drying/dryingMemory.ts";
import { type Entry, shopStream } from "../../../logbook/entries/entry.ts";
import { demoEntries } from "../../shop/demo/demoShop.ts";
import { projectionOf } from "../../../storage/projection.ts";
import { freshMs, workOutRack } from "./rackItems.ts";

const rackItems = (...from: Parameters<typeof workOutRack>) => workOutRack(...from).items;

const now = Date.parse("2026-03-04T14:02:00Z");
const recipes = new Map(
  ["start-small", "start-general", "start-large"]
    .flatMap((id) => builtInRecipe(id) ?? [])
    .map((r) => [r.id, r]),
);

/** The demo shop read afresh, as the store gives it: nothing is the same object twice; `without` the last line of a room. */
function read(without: string | null = null): RackData {
  const all = demoEntries(now, "UTC");
  const last = all.findLast(({ stream }) => stream === without);
  const entries = all.filter((entry) => entry !== last);
  const streams = [...new Set(entries.map(({ stream }) => stream))];
  const own = (kind: string) =>
    streams
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
    readings: new Map(rooms.map(({ id, entries }) => [id, readingsOf(entries)])),
    stamps: new Map<string, string | number>([
      ...[...recipes.keys()].map((id) => [`recipe/${id}`, "untouched"] as const),
      [shopStream, "untouched"],
      [learningStamp, "untouched"],
      ...streams.map((stream) => [stream, stampIn(stream, entries)] as const),
    ]),
  };
}

const stampIn = (stream: string, entries: readonly Entry[]): number =>
  projectionOf(
    stream,
    entries.filter((entry) => entry.stream === stream),
  )?.stamp ?? 0;

test("a piece on which nothing has moved is not reckoned again", () => {
  const cache = makeMemo();
  const first = rackItems(cache, read(), now);
  expect(first.length).toBe(13);
  expect(rackItems(cache, read(), now + 1000)).toEqual(first);
  expect(rackItems(cache, read(), now + 1000).every((item, place) => item === first[place])).toBe(true);
});

test("a piece whose log has changed is calculated anew, the others not", () => {
  const cache = makeMemo();
  const first = rackItems(cache, read(), now);
  const [changed, ...others] = read().pieces;
  if (changed === undefined) throw new Error("the demo shop has no piece");
  const renamed = { ...changed, plan: { ...changed.plan, name: "Another name" } };
  const stamps = new Map([...(read().stamps ?? []), [`piece/${changed.id}`, 7] as const]);
  const second = rackItems(cache, { ...read(), pieces: [renamed, ...others], stamps }, now + 1000);
  const fresh = second.filter((item) => !first.includes(item));
  expect(fresh.map(({ standing }) => standing.piece.plan.name)).toEqual(["Another name"]);
});

test("a reading of a room counts for what hung in that room, and for nothing else", () => {
  const hungIn = (room: string) =>
    new Set(
      read().pieces.flatMap(({ id, rooms }) =>
        rooms.some(({ roomId }) => `room/${roomId}` === room) ? [id] : [],
      ),
    );
  for (const room of [...read().rooms.keys()].map((id) => `room/${id}`)) {
    const cache = makeMemo();
    const first = rackItems(cache, read(room), now);
    const fresh = rackItems(cache, read(), now).filter((item) => !first.includes(item));
    expect(new Set(fresh.map(({ standing }) => standing.piece.id))).toEqual(hungIn(room));
  }
  const sizes = [...read().rooms.keys()].map((id) => hungIn(`room/${id}`).size);
  expect(Math.max(...sizes)).toBeGreaterThan(0);
  expect(Math.min(...sizes)).toBeLessThan(read().pieces.length);
});

test("what a store older than the stamps holds is worked out each time", () => {
  const cache = makeMemo();
  const { stamps: _, ...unstamped } = read();
  const first = rackItems(cache, unstamped, now);
  const second = rackItems(cache, unstamped, now);
  expect(second).toEqual(first);
  expect(second.some((item) => first.includes(item))).toBe(false);
});

test("time that has moved on is told, and so is a clock set back", () => {
  const cache = makeMemo();
  const first = rackItems(cache, read(), now);
  expect(rackItems(cache, read(), now + freshMs).some((item) => first.includes(item))).toBe(false);
  expect(rackItems(cache, read(), now - 1).every(({ standing }) => standing.now === now - 1)).toBe(true);
});
