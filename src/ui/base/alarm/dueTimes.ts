import type { CoverAnswer, FireAnswer, Standing } from "../../../logbook/piece/standing.ts";

/** What a piece waits for: its outer coat to be checked or dry, or the end of its last drying. Epoch ms. */
export type DueTime = {
  /** `<pieceId>-coat-<n>`: the same for the same coat of the same piece, however often its time is worked out anew. */
  readonly id: string;
  readonly pieceId: string;
  readonly name: string;
  readonly coat: number;
  readonly dueMs: number;
  /** True where no further coat may go on, however dry this one is. */
  readonly isHeld?: boolean | undefined;
} & (
  | { readonly allows: "next-coat"; readonly cover: CoverAnswer }
  | { readonly allows: "review"; readonly forFire: FireAnswer }
);

/**
 * The due times of the rack, earliest first. What has no time has none here, and says why on its piece. `held`: those
 * that may get no further coat yet.
 */
export function dueTimes(
  standings: readonly Standing[],
  held: ReadonlySet<Standing> = new Set(),
): readonly DueTime[] {
  return standings
    .flatMap((one) => dueOf(one, held.has(one)))
    .sort((a, b) => a.dueMs - b.dueMs || (a.id < b.id ? -1 : 1));
}

function dueOf({ piece, cover, forFire, next, recipe }: Standing, isHeld: boolean): readonly DueTime[] {
  if (piece.archived || piece.phase !== "coating" || cover === null || forFire === null) return [];
  const whose = {
    id: `${piece.id}-coat-${cover.coat.number}`,
    pieceId: piece.id,
    name: piece.plan.name,
    coat: cover.coat.number,
    ...(isHeld ? { isHeld } : {}),
  };
  if (next === null && recipe !== null) {
    const { dryAt } = forFire;
    return dryAt === null ? [] : [{ ...whose, allows: "review", dueMs: dryAt, forFire }];
  }
  const dueMs = checkTime(cover);
  return dueMs === null ? [] : [{ ...whose, allows: "next-coat", dueMs, cover }];
}

/** When hands are wanted: as soon as it may be checked, or is dry. In air that was never read nobody can say. */
function checkTime({ checkAt, dryAt, reason }: CoverAnswer): number | null {
  const soonest = reason === "no-readings" ? null : checkAt;
  return dryAt === null || soonest === null ? (dryAt ?? soonest) : Math.min(dryAt, soonest);
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
