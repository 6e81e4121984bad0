import type { Coat, DrynessSeen, Piece } from "../piece/piece.ts";
import type { DryingFrom } from "./shellDrying.ts";
import { shellDrying } from "./shellDrying.ts";
import type { CoatDrying } from "../piece/standing.ts";

/**
 * The outer coat's drying by air, weights and whatever was found wet, as if no hand or eye had found it dry: those tell
 * of the outer film, and what they say must not move a time that the film doesn't decide. `outer` itself where none has.
 */
export function bareDrying(piece: Piece, outer: CoatDrying, from: DryingFrom): CoatDrying {
  const isFilm = (seen: DrynessSeen): boolean => seen.coatId === outer.coat.id && saysDry(seen);
  if (!piece.dryness.some(isFilm)) return outer;
  const bare = {
    ...piece,
    id: `${piece.id} bare`,
    dryness: piece.dryness.filter((seen) => !isFilm(seen)),
  };
  return shellDrying(bare, from).at(-1) ?? outer;
}

const isOfFilm = ({ method }: DrynessSeen): boolean => method === "touch" || method === "colour";
const saysDry = (seen: DrynessSeen): boolean =>
  (seen.method === "touch" || seen.method === "colour") && seen.verdict === "dry";

/** When a hand found the coat dry since it was last wetted, oldest first, with nothing found wet after. */
export function touchesDry(
  { dryness }: Pick<Piece, "dryness">,
  { coat, from }: { readonly coat: Coat; readonly from: number },
): readonly number[] {
  const ofCoat = dryness.filter((seen) => seen.coatId === coat.id && seen.at >= from);
  const wetAt = ofCoat.findLast((seen) => isOfFilm(seen) && !saysDry(seen))?.at ?? -Infinity;
  return ofCoat
    .filter((seen) => seen.method === "touch" && saysDry(seen) && seen.at > wetAt)
    .map(({ at }) => at);
}
