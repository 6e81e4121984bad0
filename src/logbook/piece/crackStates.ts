import { firstHotAt } from "../fire/hotTimes.ts";
import type { Crack, Piece } from "./piece.ts";

/** Patched and dry are two things: a patch is water in the shell until it has dried by itself. */
export type CrackState = {
  readonly crack: Crack;
  readonly state: "open" | "patch-wet" | "patch-dry";
  /** What says that the patch is dry, or what answers for it; null while it is not. */
  readonly by: "looked" | "coat" | "fire" | null;
  /** In a part that is cut off before the pour: it holds nothing up. */
  readonly isTrimmedOff: boolean;
};

/**
 * How each crack of a shell stands, in the order they were found. A patch is dry once it was itself found dry, and by
 * fire; a coat over it answers for it with its own drying. What is felt or weighed of the outer coat says nothing of it.
 */
export const crackStates = (piece: Piece): readonly CrackState[] =>
  piece.cracks.map((crack) => {
    const isTrimmedOff = crack.trimmedOff === true;
    if (crack.patched === null) return { crack, state: "open", by: null, isTrimmedOff };
    const by = driedBy(piece, crack, crack.patched.at);
    return { crack, state: by === null ? "patch-wet" : "patch-dry", by, isTrimmedOff };
  });

function driedBy(piece: Piece, { patchDry }: Crack, patchedAt: number): CrackState["by"] {
  if (patchDry !== undefined && patchDry.at >= patchedAt) return "looked";
  if (firstHotAt(piece, { since: patchedAt }) !== null) return "fire";
  return piece.coats.some(({ dippedAt }) => dippedAt >= patchedAt) ? "coat" : null;
}

/** Open ones in what stays on: they stop the work until they are patched. */
export const openCracks = (states: readonly CrackState[]): readonly CrackState[] =>
  states.filter(({ state, isTrimmedOff }) => state === "open" && !isTrimmedOff);

/** Patches in what stays on that are not dry yet. */
export const wetPatches = (states: readonly CrackState[]): readonly CrackState[] =>
  states.filter(({ state, isTrimmedOff }) => state === "patch-wet" && !isTrimmedOff);
