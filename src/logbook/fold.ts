import { builtInBucket, builtInRecipe, builtInRoom, builtInShop } from "./builtIns.ts";
import { effective, settle } from "./effective.ts";
import type { Entry, EntryOf, EntryType } from "./entry.ts";
import { evolvePiece, newPiece } from "./evolvePiece.ts";
import type { AirReading, Bucket, Piece, Recipe, Room, Shop } from "./piece.ts";

/**
 * The piece its entries tell, or null while nothing that stands starts it. Takes all entries of the stream,
 * struck ones and strikes included, in any order. Total: no sequence of entries throws.
 */
export function foldPiece(id: string, entries: readonly Entry[]): Piece | null {
  const { standing, follow } = settle(entries);
  const start = standing.find((entry) => entry.type === "piece-started");
  if (start === undefined) return null;
  return standing
    .filter((entry) => entry !== start)
    .reduce((piece, entry) => evolvePiece(piece, entry, follow), newPiece(id, start));
}

/** The room; null for one that is neither built in nor ever named. */
export function foldRoom(id: string, entries: readonly Entry[]): Room | null {
  const standing = effective(entries);
  const set = lastOf(standing, "room-set");
  const from = set
    ? {
        id,
        name: set.body.name,
        altitudeM: set.body.altitudeM,
        retired: set.body.retired ?? false,
        last: null,
      }
    : builtInRoom(id);
  return from && { ...from, last: readingsIn(standing).at(-1) ?? null };
}

/** All readings that stand, oldest first. */
export const readingsOf = (entries: readonly Entry[]): readonly AirReading[] =>
  readingsIn(effective(entries));

/** The bucket; null for one that is neither built in nor ever named. */
export function foldBucket(id: string, entries: readonly Entry[]): Bucket | null {
  const standing = effective(entries);
  const set = lastOf(standing, "bucket-set");
  const from = set ? { id, ...set.body, retired: set.body.retired ?? false, last: null } : builtInBucket(id);
  const read = lastOf(standing, "bucket-read");
  return from && { ...from, last: read ? { ...read.body, id: read.id, at: read.at } : null };
}

/** The recipe; null for one that is neither a starting one nor ever written. */
export function foldRecipe(id: string, entries: readonly Entry[]): Recipe | null {
  const set = lastOf(effective(entries), "recipe-set");
  return set ? { ...set.body, id, starting: false } : builtInRecipe(id);
}

/** The shop's own figures. A figure left out of an entry stays; null clears it. */
export function foldShop(entries: readonly Entry[]): Shop {
  return effective(entries).reduce<Shop>((shop, entry) => {
    if (entry.type !== "shop-figures-set") return shop;
    const { dryingFactor = shop.dryingFactor, morMPa = shop.morMPa } = entry.body;
    return { dryingFactor, morMPa };
  }, builtInShop);
}

function readingsIn(standing: readonly Entry[]): readonly AirReading[] {
  return standing.flatMap((entry) =>
    entry.type === "air-read" ? [{ ...entry.body, id: entry.id, at: entry.at }] : [],
  );
}

function lastOf<T extends EntryType>(standing: readonly Entry[], type: T): EntryOf<T> | undefined {
  return standing.findLast((entry): entry is Extract<Entry, { type: T }> & EntryOf<T> => entry.type === type);
}
