import type { Piece } from "./piece.ts";

/** What is left of the pattern: all of it, the film that stays after a dewax, or nothing. */
export type PatternState = "inside" | "film" | "gone";

/**
 * A burnout that was not stopped, or a firing, has burnt the pattern out; a dewax leaves a film of wax that only fire
 * takes away.
 */
export function patternState({ burnouts, firings, dewaxes }: Piece): PatternState {
  const isBurnt = burnouts.some(({ ended }) => ended !== null && ended.result !== "stopped");
  if (isBurnt || firings.length > 0) return "gone";
  return dewaxes.length > 0 ? "film" : "inside";
}
