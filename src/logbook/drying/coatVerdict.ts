import { logBelow, tenthQuantile } from "../../physics/stats/normal.ts";
import type { CoatTrack } from "../../physics/drying/coatTrack.ts";
import type { SpanBelief } from "./coatBelief.ts";
import type { UsedObservation, UnusedObservation } from "./coatSpan.ts";
import type { CoatBelief, CoatDrying } from "../piece/standing.ts";

/**
 * The word on a coat: dry when nine in ten say so, wet when not one in ten does, perhaps in between.
 *
 * A hand that felt it dry makes it perhaps, and no more: it reads the outer film alone.
 */
export function verdictOf(
  { early, late }: CoatTrack,
  { judgedAt, evidence }: { judgedAt: number; evidence: CoatDrying["evidence"] },
): CoatDrying["verdict"] {
  const isOver = ({ readyAt }: { readonly readyAt: number | null }): boolean =>
    readyAt !== null && readyAt <= judgedAt;
  if (isOver(late)) return "dry";
  if (evidence?.says === "dry" && evidence.by === "felt") return "maybe";
  return isOver(early) ? "maybe" : "wet";
}

/** The belief as it is shown: water in kg/m² at the time of judgement, and the chance that it is dry by then. */
export function beliefShown(
  { heard, unheard, conflicts, spread: { sigmaLn } }: SpanBelief,
  {
    band,
    track,
    judgedAt,
    from,
  }: {
    band: Pick<CoatBelief, "low" | "median" | "high">;
    track: CoatTrack;
    judgedAt: number;
    from: number;
  },
): CoatBelief {
  return {
    ...band,
    dryChance: dryChanceAt(track, { at: judgedAt, from }),
    // As it dries by now: a coat found wet has proven slower than the belief of all its checks.
    factor: { early: track.early.factor, likely: track.likely.factor, late: track.late.factor, sigmaLn },
    ...checksShown({ heard, unheard }),
    conflicts: conflicts.map(({ seenId, why, apart }) => ({ seenId, why, apart })),
  };
}

/** What each check said, or why it says nothing. */
export function checksShown({ heard, unheard }: Checks): Pick<CoatBelief, "heard" | "unheard"> {
  return {
    heard: heard.map(({ seen, said }) => ({ seenId: seen.id, at: seen.at, said })),
    unheard: unheard.map(({ seen, why }) => ({ seenId: seen.id, at: seen.at, why })),
  };
}
type Checks = { readonly heard: readonly UsedObservation[]; readonly unheard: readonly UnusedObservation[] };

const below = (z: number): number => Math.exp(logBelow(z));

/**
 * The chance, 0–1, that a coat is ready at a time, read between its three guesses: their times of ready are where
 * one, five and nine in ten are ready, and between them the logarithm of the time goes as a bell curve's.
 */
export function dryChanceAt(
  { early, likely, late }: Pick<CoatTrack, "early" | "likely" | "late">,
  { at, from }: { at: number; from: number },
): number {
  const lnOf = (readyAt: number | null): number =>
    readyAt === null ? Infinity : Math.log(Math.max(1, readyAt - from));
  const ln = Math.log(Math.max(1, at - from));
  const knots = [early, likely, late].map(({ readyAt }, i) => ({
    ln: lnOf(readyAt),
    z: (i - 1) * tenthQuantile,
  }));
  const after = knots.findIndex((knot) => knot.ln > ln);
  // Past the ends the curve goes on as steep as beside them.
  const right = after === -1 ? 2 : Math.max(1, after);
  const [a, b] = [knots[right - 1], knots[right]];
  if (a === undefined || b === undefined || a.ln === Infinity) return 0;
  if (b.ln === Infinity) return below(a.z);
  if (b.ln - a.ln < 1e-12) return ln >= b.ln ? below(b.z) : below(a.z);
  return below(a.z + ((ln - a.ln) / (b.ln - a.ln)) * (b.z - a.z));
}
