import { learningStamp } from "../../src/logbook/drying/dryingMemory.ts";
import { shopStream, streamOf } from "../../src/logbook/entries/entry.ts";
import type { Stamps } from "../../src/logbook/log/memo.ts";
import type { Piece } from "../../src/logbook/piece/piece.ts";
import type { Surroundings } from "../../src/logbook/piece/surroundings.ts";

/** For tests only: stamps that change whenever anything does, for pieces and surroundings that come from no store. */
export function testStamps(
  pieces: readonly Piece[],
  { rooms, readings, recipes, buckets, shop, learned = null, runs = new Map() }: Surroundings,
): Stamps {
  const kinds = {
    piece: pieces.map((piece) => [piece.id, piece] as const),
    recipe: recipes,
    bucket: buckets,
    run: runs,
  };
  const all = Object.entries(kinds).flatMap(([kind, states]) =>
    [...states].map(([id, state]) => [`${kind}/${id}`, JSON.stringify(state)] as const),
  );
  const air = [...rooms].map(
    ([id, room]) => [streamOf("room", id), JSON.stringify([room, readings.get(id)])] as const,
  );
  const taught = learned && [learned.shop, [...learned.groups], [...learned.without]];
  return new Map([
    ...all,
    ...air,
    [shopStream, JSON.stringify(shop)],
    [learningStamp, JSON.stringify(taught)],
  ]);
}

/** The same surroundings with such stamps. */
export const stamped = (pieces: readonly Piece[], around: Surroundings): Surroundings => ({
  ...around,
  stamps: testStamps(pieces, around),
});
