import type { Crack, Piece } from "../logbook/piece.ts";
import type { Standing } from "../logbook/standing.ts";
import { figure } from "./finding.ts";
import { hoursBetween, wasHot } from "./stage.ts";
import type { FindingOf } from "./variants.ts";

type Found = FindingOf<"open-crack">;

/** A crack holds the piece until it is mended, and the mend until it is dry. */
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

function finding({ id, at, kind, where, patched }: Crack, now: number): Found {
  return {
    rule: "open-crack",
    variant: patched === null ? "open" : "patch-not-dry",
    level: "hold",
    figures: { ageH: figure(hoursBetween(patched?.at ?? at, now), "h") },
    texts: { where, kind },
    entries: patched === null ? [id] : [id, patched.id],
    source: "common practice, no source",
  };
}
