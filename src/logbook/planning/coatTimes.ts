import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import type { Piece } from "../piece/piece.ts";
import type { NoReadyReason, Standing } from "../piece/standing.ts";
import { coatsToCome, standingAhead, withCoat, type Ahead, type CoatToCome } from "./coatsAhead.ts";
import { firstWithin, lastWithin, type WorkSpans } from "./workSpans.ts";

/**
 * The figure a coat is waited for by: `late` is when even the late guess has it dry, `middle` when it is as likely dry
 * as not, or the minimum is over, and must be felt first. The last drying before fire has only its cautious figure.
 */
export type By = "late" | "middle";

/** Why no time can be given: the forecast's own reason, or nobody is at the bucket any more in the time looked at. */
export type NoTime = NoReadyReason | "damp-air" | "after-the-hours" | "not-known";

/** The soonest way through the coats that are left. */
export type SoonestWay =
  | {
      readonly ok: true;
      /** When each coat that is left can go on, epoch ms. */
      readonly dips: readonly number[];
      /** The piece with each of them on, from the first; for whoever asks further. */
      readonly pieces: readonly Piece[];
      /** When each is ready for what comes next: the next coat, and at last the fire. */
      readonly readyAt: readonly number[];
      /** When the shell may go in the kiln, as far as its water goes; never before the standing's own time. */
      readonly dryAt: number;
    }
  | { readonly ok: false; readonly why: NoTime };

type Of = {
  readonly standing: Standing;
  readonly ahead: Ahead;
  readonly hours: WorkSpans;
};

/** When each coat that is left can go on at the soonest, from the standing's own time on, and the shell be dry for fire. */
export function soonestWay({ standing, ahead, hours }: Of, by: By): SoonestWay {
  const coats = coatsToCome(standing);
  const dips: number[] = [];
  const pieces: Piece[] = [];
  const readyAt: number[] = [];
  let then = standing;
  for (const [place, coat] of coats.entries()) {
    const ready = then.cover === null ? standing.now : coverAt(then, by);
    if (ready === null) return { ok: false, why: then.cover?.reason ?? "not-known" };
    if (place > 0) readyAt.push(ready);
    const at = firstWithin(hours, Math.max(ready, standing.now));
    if (at === null) return { ok: false, why: "after-the-hours" };
    dips.push(at);
    const piece = withCoat(pieces.at(-1) ?? standing.piece, coat, { at, around: ahead.around });
    pieces.push(piece);
    then = standingAhead(piece, ahead, at);
  }
  const dryAt = then.forFire?.dryAt ?? null;
  if (dryAt === null) return { ok: false, why: then.forFire?.reason ?? "not-known" };
  readyAt.push(dryAt);
  // What has been dry for days can go in from now on.
  return { ok: true, dips, pieces, readyAt, dryAt: Math.max(dryAt, standing.now) };
}

const coverAt = ({ cover }: Standing, by: By): number | null =>
  (by === "late" ? cover?.dryAt : cover?.checkAt) ?? null;

/** Times are to five minutes: nobody dips by the second. */
const stepMs = 5 * minuteMs;
/** The search for one coat ends after so many looks; each halves what is left or ends at the hours. */
const mostLooks = 16;

/**
 * By when each coat that is left must be on at the latest, epoch ms, so that the shell is dry for fire by `dryBy`: worked
 * out backwards, each in the hours and dry, by the figure asked for, when the next one's latest time comes. Null where
 * the soonest way is later than that. Each time is the latest to five minutes.
 */
export function latestTimes(
  of: Of,
  { way, by, dryBy }: { readonly way: SoonestWay; readonly by: By; readonly dryBy: number },
): readonly number[] | null {
  if (!way.ok || way.dryAt > dryBy) return null;
  const coats = coatsToCome(of.standing);
  const times: number[] = [];
  let deadline = dryBy;
  for (let place = coats.length - 1; place >= 0; place--) {
    const soonest = way.dips[place];
    const ready = way.readyAt[place];
    const coat = coats[place];
    if (soonest === undefined || ready === undefined || coat === undefined) return null;
    const beneath = way.pieces[place - 1] ?? of.standing.piece;
    const isLast = place === coats.length - 1;
    const readyIf = (at: number): number | null => readyAfter({ beneath, coat, at, isLast, by }, of.ahead);
    const at = latestFor({ soonest, ready, deadline, readyIf, hours: of.hours });
    times.unshift(at);
    deadline = at;
  }
  return times;
}

/** When a coat put on at `at` is ready for what comes next. What lies beneath is dry by then, so it gives it no water. */
function readyAfter(
  {
    beneath,
    coat,
    at,
    isLast,
    by,
  }: {
    readonly beneath: Piece;
    readonly coat: CoatToCome;
    readonly at: number;
    readonly isLast: boolean;
    readonly by: By;
  },
  ahead: Ahead,
): number | null {
  const then = standingAhead(withCoat(beneath, coat, { at, around: ahead.around }), ahead, at);
  return isLast ? (then.forFire?.dryAt ?? null) : coverAt(then, by);
}

/**
 * The latest moment in the hours from which a coat is ready by the deadline. It is known to be so from `soonest`. Ready
 * times all but always rise with the dip; where air turns from damp to dry they may not, so only what was seen to be in
 * time is given.
 */
function latestFor({
  soonest,
  ready,
  deadline,
  readyIf,
  hours,
}: {
  readonly soonest: number;
  readonly ready: number;
  readonly deadline: number;
  readonly readyIf: (at: number) => number | null;
  readonly hours: WorkSpans;
}): number {
  let known = { at: soonest, takesMs: ready - soonest };
  let tooLate = deadline;
  for (let look = 0; look < mostLooks; look++) {
    const upTo = tooLate - stepMs;
    const byLength = snapped(hours, Math.min(upTo, deadline - known.takesMs));
    const halfWay = snapped(hours, Math.min(upTo, (known.at + tooLate) / 2));
    const last = snapped(hours, upTo);
    const at = [byLength, halfWay, last].find((one) => one !== null && one > known.at) ?? null;
    if (at === null) break;
    const then = readyIf(at);
    if (then !== null && then <= deadline) known = { at, takesMs: then - at };
    else tooLate = at;
  }
  return known.at;
}

/** In the hours and to five minutes, not after `at`; null where there are no hours before it. */
function snapped(hours: WorkSpans, at: number): number | null {
  const inHours = lastWithin(hours, at);
  if (inHours === null) return null;
  const rounded = Math.floor(inHours / stepMs) * stepMs;
  // Rounding must not take it out of the hours it was found in.
  return lastWithin(hours, rounded) === rounded ? rounded : inHours;
}
