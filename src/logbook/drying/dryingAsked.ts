import type { Standing } from "../piece/standing.ts";

/** What a page may ask of a coat's drying: its state at all, a hand's word on it, a weighing. */
export type DryingAsked = { readonly card: boolean; readonly touch: boolean; readonly weigh: boolean };

/**
 * What of its drying a shell is asked for now. All of it ends with the fire. A coat that may be covered needs no hand on
 * it any more; with all coats on the scale still tells of the last drying, where a hand does not.
 */
export function dryingAsked({ piece, cover, forFire, next }: Standing): DryingAsked {
  const isBeforeFire = piece.phase === "coating" || piece.phase === "reviewed";
  if (cover === null || !isBeforeFire || cover.by === "fire")
    return { card: false, touch: false, weigh: false };
  const isDry = cover.state === "dry";
  const waitsForFire = next === null && forFire !== null && forFire.state !== "dry";
  return { card: true, touch: !isDry, weigh: !isDry || waitsForFire };
}
