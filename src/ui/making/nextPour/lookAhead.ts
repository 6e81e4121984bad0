import type { Pour, Melt } from "../../../logbook/fire/fireStates.ts";
import type { Memo } from "../../../logbook/log/memo.ts";
import type { Shop } from "../../../logbook/piece/piece.ts";
import { latestTimes } from "../../../logbook/planning/coatTimes.ts";
import { dayShop, type DayShop } from "../../../logbook/planning/dayShop.ts";
import { pieceAhead, waitsForMetal, type PieceAhead } from "../../../logbook/planning/pieceAhead.ts";
import { plannedShells } from "../../../logbook/pour/leaveHeat.ts";
import { pourProposal, type GoingPiece, type PourProposal } from "../../../logbook/planning/pourProposal.ts";
import type { WorkSpans } from "../../../logbook/planning/workSpans.ts";
import { coverHold } from "../../../rules/coverHold.ts";
import type { RackData } from "../../../storage/reads.ts";
import { rackItem } from "../../base/state/rackItems.ts";

/** A piece that goes, with by when each of its coats must be on, epoch ms; null where that figure gives none. */
export type PieceTimes = GoingPiece & {
  readonly late: readonly number[] | null;
  readonly middle: readonly number[] | null;
  /** Time to spare until its next step must be done. */
  readonly slackMs: number;
};

export type NextPour = {
  readonly workedOutAt: number;
  /** The day it was asked for. */
  readonly pourAt: number;
  readonly pourId: string | null;
  readonly day: DayShop;
  readonly proposal: PourProposal;
  /** Least time to spare first. */
  readonly times: readonly PieceTimes[];
  /** Pieces no sum can be done for. */
  readonly faults: readonly string[];
  readonly pieces: number;
};

export type Question = {
  readonly rack: RackData;
  readonly shop: Shop;
  readonly melts: readonly Melt[];
  readonly pours: readonly Pour[];
  /** The planned pour this day is that of; null for any other day. */
  readonly pourId: string | null;
  readonly pourAt: number;
  readonly hours: WorkSpans;
  readonly now: number;
  /** The look's own: see `standingAhead`. */
  readonly memo: Memo;
};

/**
 * The whole proposal, piece by piece: it says how far it is and lets the page breathe between two of them. Null where
 * `onStep` says that nobody waits for it any more.
 */
export async function lookAhead(
  { rack, shop, melts, pours, pourId, pourAt, hours, now, memo }: Question,
  onStep: (done: number, of: number) => Promise<boolean>,
): Promise<NextPour | null> {
  const ahead = { around: rack, memo };
  const others = pours.filter(({ id }) => id !== pourId);
  const own = pours.filter(({ id }) => id === pourId);
  // Of a shell that is in two plans, the pour asked about says its heat.
  const inPlans = plannedShells([...others, ...own]);
  const pieces: PieceAhead[] = [];
  const faults: string[] = [];
  for (const [done, piece] of rack.pieces.entries()) {
    if (!(await onStep(done, rack.pieces.length))) return null;
    try {
      const { standing, findings } = rackItem(piece, rack, now, memo);
      const isHeld = coverHold(findings) !== null;
      if (waitsForMetal(standing))
        pieces.push(pieceAhead(standing, { ahead, hours, isHeld, planned: inPlans.get(piece.id) }));
    } catch {
      faults.push(piece.plan?.name ?? piece.id);
    }
  }
  const day = dayShop(shop, melts);
  const elsewhere = new Map(others.flatMap((pour) => pour.pieceIds.map((id) => [id, pour.id] as const)));
  const planned = new Set(own.flatMap(({ pieceIds }) => pieceIds));
  const steps = pourProposal(pieces, { pourAt, day, elsewhere, planned });
  let step = steps.next();
  while (step.done !== true) {
    if (!(await onStep(rack.pieces.length, rack.pieces.length))) return null;
    step = steps.next();
  }
  const proposal = step.value;
  const going = proposal.kilns.flatMap((group) => group.pieces);
  const times: PieceTimes[] = [];
  for (const [done, one] of going.entries()) {
    if (!(await onStep(done, going.length))) return null;
    times.push(timesOf(one, { ahead, hours, now }));
  }
  return {
    workedOutAt: now,
    pourAt,
    pourId,
    day,
    proposal,
    times: times.toSorted((a, b) => a.slackMs - b.slackMs),
    faults,
    pieces: pieces.length,
  };
}

function timesOf(
  one: GoingPiece,
  {
    ahead,
    hours,
    now,
  }: Pick<Question, "hours" | "now"> & { readonly ahead: Parameters<typeof pieceAhead>[1]["ahead"] },
): PieceTimes {
  const { of, verdict } = one;
  const { dryBy } = verdict;
  const asked = { standing: of.standing, ahead, hours };
  const late = latestTimes(asked, { way: of.ways.late, by: "late", dryBy });
  const middle = latestTimes(asked, { way: of.ways.middle, by: "middle", dryBy });
  const [way, by] = late === null ? [of.ways.middle, middle] : [of.ways.late, late];
  const soonest = way.ok ? (way.dips[0] ?? null) : null;
  const first = by?.[0] ?? null;
  const slackMs =
    soonest !== null && first !== null ? first - Math.max(now, soonest) : Math.max(0, verdict.spareMs);
  return { ...one, late, middle, slackMs };
}
