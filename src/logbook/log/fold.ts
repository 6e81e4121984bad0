import { lastReadingOf } from "../air/airLog.ts";
import { builtInRecipe, builtInRoom } from "../piece/builtIns.ts";
import { effective, settle } from "./effective.ts";
import type { Entry } from "../entries/entry.ts";
import { evolvePiece, newPiece } from "../piece/evolvePiece.ts";
import { lastOf } from "./lastOf.ts";
import type { Piece, Recipe, Room } from "../piece/piece.ts";

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
  const room = roomSet(id, standing);
  return room && { ...room, last: lastReadingOf(standing) };
}

/** Whether there is such a room, built in or named; its readings are not looked at. */
export const hasRoom = (id: string, entries: readonly Entry[]): boolean =>
  builtInRoom(id) !== null || roomSet(id, effective(entries)) !== null;

function roomSet(id: string, standing: readonly Entry[]): Room | null {
  const set = lastOf(standing, "room-set");
  if (set === undefined) return builtInRoom(id);
  const { name, altitudeM, retired = false } = set.body;
  return { id, name, altitudeM, retired, last: null };
}

/** The recipe; null for one that is neither a starting one nor ever written. */
export function foldRecipe(id: string, entries: readonly Entry[]): Recipe | null {
  const set = lastOf(effective(entries), "recipe-set");
  return set ? { ...set.body, id, starting: false } : builtInRecipe(id);
}
