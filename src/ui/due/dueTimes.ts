import type { Standing } from "../../logbook/standing.ts";

/** A coat and the moment it should be dry enough for what comes next. Epoch ms. */
export type DueTime = {
  /** `<pieceId>-coat-<n>`: the same for the same coat of the same piece, however often its time is reckoned anew. */
  readonly id: string;
  readonly pieceId: string;
  readonly name: string;
  readonly coat: number;
  /** What the dry coat allows: the next one, or the review once there is none to come. */
  readonly allows: "next-coat" | "review";
  readonly dueMs: number;
  readonly early: number | null;
  readonly late: number | null;
  /** True when someone felt, weighed or measured it: no longer a sum alone. */
  readonly seen: boolean;
};

/** The due times of the rack, earliest first. A coat with no likely time has none, and says why on its piece. */
export function dueTimes(standings: readonly Standing[]): readonly DueTime[] {
  return standings.flatMap(dueOf).sort((a, b) => a.dueMs - b.dueMs || (a.id < b.id ? -1 : 1));
}

function dueOf({ piece, outer, next, recipe, finalDry }: Standing): readonly DueTime[] {
  if (piece.archived || piece.phase !== "coating" || outer === null) return [];
  const isReview = next === null && recipe !== null;
  // A review wants the whole shell dry: the least wait is one moment, with nothing likely about it.
  const whole = isReview ? (finalDry?.least.at ?? null) : null;
  const { likely, early, late } = isReview ? { likely: whole, early: null, late: whole } : outer.readyAt;
  if (likely === null) return [];
  return [
    {
      id: `${piece.id}-coat-${outer.coat.number}`,
      pieceId: piece.id,
      name: piece.plan.name,
      coat: outer.coat.number,
      allows: isReview ? "review" : "next-coat",
      dueMs: likely,
      early,
      late,
      seen: outer.evidence !== null,
    },
  ];
}

export type DueList = {
  /** Came due since someone last looked, newest of the list last. */
  readonly cameDue: readonly DueTime[];
  readonly ready: readonly DueTime[];
  readonly coming: readonly DueTime[];
};

/** Sorts due times by whether they have been shown: those after `shownMs` came due unseen and are listed first. */
export function dueList(
  dues: readonly DueTime[],
  { shownMs, nowMs }: { shownMs: number; nowMs: number },
): DueList {
  const past = dues.filter(({ dueMs }) => dueMs <= nowMs);
  return {
    cameDue: past.filter(({ dueMs }) => dueMs > shownMs),
    ready: past.filter(({ dueMs }) => dueMs <= shownMs),
    coming: dues.filter(({ dueMs }) => dueMs > nowMs),
  };
}
