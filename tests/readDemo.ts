import { readingsOf } from "../src/logbook/air/airLog.ts";
import { builtInRecipe } from "../src/logbook/piece/builtIns.ts";
import { streamOf, type Entry, type StreamKind } from "../src/logbook/entries/entry.ts";
import { foldRoom } from "../src/logbook/log/fold.ts";
import { foldBucket } from "../src/logbook/bucket/foldBucket.ts";
import { foldShop } from "../src/logbook/shop/foldShop.ts";
import type { Surroundings } from "../src/logbook/piece/surroundings.ts";
import { startingRecipes } from "../src/trade/startingRecipes.ts";

type Entries = readonly Entry[];

/** The ids of one kind of stream, in the order they were begun. */
export const idsOf = (entries: Entries, kind: StreamKind): readonly string[] => [
  ...new Set(
    entries.flatMap(({ stream }) => (stream.startsWith(`${kind}/`) ? [stream.slice(kind.length + 1)] : [])),
  ),
];

export const entriesOf = (entries: Entries, kind: StreamKind, id: string): Entries =>
  entries.filter(({ stream }) => stream === streamOf(kind, id));

/** All that stands round the pieces of these entries, as the store would give it. */
export function surroundingsOf(entries: Entries): Surroundings {
  const rooms = idsOf(entries, "room");
  return {
    rooms: new Map(
      rooms.map((id) => [id, foldRoom(id, entriesOf(entries, "room", id))] as const).flatMap(known),
    ),
    readings: new Map(rooms.map((id) => [id, readingsOf(entriesOf(entries, "room", id))])),
    recipes: new Map(startingRecipes.map(({ id }) => [id, builtInRecipe(id)] as const).flatMap(known)),
    buckets: new Map(
      idsOf(entries, "bucket")
        .map((id) => [id, foldBucket(id, entriesOf(entries, "bucket", id))] as const)
        .flatMap(known),
    ),
    shop: foldShop(entriesOf(entries, "shop", "own")),
  };
}

const known = <T>([id, state]: readonly [string, T | null]): readonly (readonly [string, T])[] =>
  state === null ? [] : [[id, state]];
