import type { Piece } from "./piece.ts";
import type { CoatDrying } from "./standing.ts";

/** A hand's "dry" on a coat since `from`, oldest first, with nothing wet after it. */
export function touchesDry(
  { dryness }: Pick<Piece, "dryness">,
  { coatId, from }: { readonly coatId: string; readonly from: number },
): readonly number[] {
  const ofCoat = dryness.filter((seen) => seen.coatId === coatId && seen.at >= from);
  const isPlain = (seen: (typeof ofCoat)[number]): boolean =>
    seen.method === "touch" || seen.method === "colour";
  const wetAt = ofCoat.findLast((seen) => isPlain(seen) && "verdict" in seen && seen.verdict !== "dry")?.at;
  return ofCoat
    .filter(({ method, at }) => method === "touch" && at > (wetAt ?? -Infinity))
    .map(({ at }) => at);
}

/**
 * When the air, with what was measured, brings a coat to dry: likely and at the latest, epoch ms, null for no time.
 * A time that a touch alone has set, in air nobody read, is none: a hand feels the outer film.
 */
export function airWord(
  { coat, evidence, readyAt: { early, likely, late }, reason }: CoatDrying,
  piece: Pick<Piece, "dryness">,
): Pick<CoatDrying, "reason"> & { readonly likely: number | null; readonly late: number | null } {
  const isTouch =
    evidence?.says === "dry" &&
    evidence.by === "felt" &&
    early !== null &&
    early === late &&
    touchesDry(piece, { coatId: coat.id, from: coat.dippedAt }).includes(late);
  return isTouch ? { likely: null, late: null, reason: "no-readings" } : { likely, late, reason };
}
