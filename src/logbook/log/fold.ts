import { lastReadingOf } from "../air/airLog.ts";
import { builtInRecipe, builtInRoom } from "../piece/builtIns.ts";
import { effective, settle, type Settled } from "./effective.ts";
import type { Entry } from "../entries/entry.ts";
import { evolvePiece, newPiece } from "../piece/evolvePiece.ts";
import { lastOf } from "./lastOf.ts";
import type { Piece, Recipe, Room } from "../piece/piece.ts";

/**
 * The piece its entries tell, or null while nothing that stands starts it. Takes all entries of the stream,
 * struck ones and strikes included, in any order. Total: no sequence of entries throws.
 */
export const foldPiece = (id: string, entries: readonly Entry[]): Piece | null =>
  pieceFrom(id, settle(entries));

/** The same from a log that is settled already. */
export function pieceFrom(id: string, { standing, follow }: Settled): Piece | null {
  const start = standing.find((entry) => entry.type === "piece-started");
  if (start === undefined) return null;
  return standing
    .filter((entry) => entry !== start)
    .reduce((piece, entry) => evolvePiece(piece, entry, follow), newPiece(id, start));
}

/** The room; null for one that is neither built in nor ever named. */
export const foldRoom = (id: string, entries: readonly Entry[]): Room | null =>
  roomFrom(id, effective(entries));

/** The same from the entries that stand, in order. */
export function roomFrom(id: string, standing: readonly Entry[]): Room | null {
  const room = roomSet(id, standing);
  return room && { ...room, last: lastReadingOf(standing) };
}

/** Whether there is such a room, built in or named; its readings are not looked at. */
export const hasRoom = (id: string, standing: readonly Entry[]): boolean => roomSet(id, standing) !== null;

function roomSet(id: string, standing: readonly Entry[]): Room | null {
  const set = lastOf(standing, "room-set");
  if (set === undefined) return builtInRoom(id);
  const { name, altitudeM, retired = false } = set.body;
  return { id, name, altitudeM, retired, last: null };
}

/** The recipe; null for one that is neither a starting one nor ever written. */
export const foldRecipe = (id: string, entries: readonly Entry[]): Recipe | null =>
  recipeFrom(id, effective(entries));

/** The same from the entries that stand, in order. */
export function recipeFrom(id: string, standing: readonly Entry[]): Recipe | null {
  const set = lastOf(standing, "recipe-set");
  return set ? { ...set.body, id, starting: false } : builtInRecipe(id);
}
