import type { Crack, Piece } from "../logbook/piece/piece.ts";
import type { Standing } from "../logbook/piece/standing.ts";
import { figure } from "./finding.ts";
import { hoursBetween, wasHot } from "./stage.ts";
import type { FindingOf } from "./variants.ts";

type Found = FindingOf<"open-crack">;

/** A crack holds the piece until it is patched, and the patch until it is dry. In a part that is trimmed off it is a note. */
export function openCrack({ piece, now, drying }: Standing): readonly Found[] {
  return piece.cracks.flatMap((crack): readonly Found[] => {
    if (crack.patched === null) return [finding(crack, now)];
    return patchIsSettled(piece, crack.patched.at, drying) ? [] : [finding(crack, now)];
  });
}

/** Dry by its own evidence, covered by a coat (whose own drying then counts), or heated since. */
function patchIsSettled(piece: Piece, patchedAt: number, drying: Standing["drying"]): boolean {
  const outer = drying.at(-1);
  const seenDry = outer?.evidence?.says === "dry" && outer.evidence.seen.at >= patchedAt;
  return (
    seenDry ||
    piece.coats.some(({ dippedAt }) => dippedAt >= patchedAt) ||
    piece.firings.some(({ at }) => at >= patchedAt) ||
    wasHot(piece, { since: patchedAt })
  );
}

function finding({ id, at, kind, where, patched, trimmedOff = false }: Crack, now: number): Found {
  const variant = patched === null ? "open" : "patch-not-dry";
  return {
    rule: "open-crack",
    variant: trimmedOff ? "trimmed-off" : variant,
    level: trimmedOff ? "note" : "hold",
    figures: { ageH: figure(hoursBetween(patched?.at ?? at, now), "h") },
    texts: { where, kind },
    entries: patched === null ? [id] : [id, patched.id],
    source: "common practice, no source",
  };
}
