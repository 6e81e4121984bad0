import { touchesDry } from "./bareDrying.ts";
import { wettedAt } from "./dryMinimum.ts";
import { firstHotAt } from "../fire/hotTimes.ts";
import type { Piece } from "../piece/piece.ts";
import type { CoatDrying, CoverAnswer, DryMinimum } from "../piece/standing.ts";
import { placesOfPlan } from "./slowPlace.ts";

/**
 * May the outer coat be covered? Every screen and rule that asks reads this answer.
 *
 * Perhaps dry ("check") from the later of the air's likely time and the minimum; dry from the later of the air's
 * cautious end and the minimum. What was measured dry stands from the moment it was measured, before the minimum too.
 * A touch counts once likely time and minimum are over, and never in a hollow or a blind core: there it feels the
 * face. Fire since the last wetting has dried it. `now` decides the state alone; the times follow log and air.
 */
export function coverAnswer(
  piece: Piece,
  { outer, minimum, now }: { readonly outer: CoatDrying; readonly minimum: DryMinimum; readonly now: number },
): CoverAnswer {
  const { coat, evidence, reason } = outer;
  const { likely, late } = outer.readyAt;
  const touches = touchesDry(piece, { coat, from: wettedAt(coat) });
  const isUnread = likely === null && reason === "no-readings";
  const saidWet = evidence?.says === "wet" && touches.length === 0;
  const checkAt =
    likely === null ? (isUnread && !saidWet ? minimum.until : null) : Math.max(likely, minimum.until);
  const countsFrom = hasDeepPlace(piece) ? null : checkAt;
  const touchAt = countsFrom === null ? null : (touches.find((at) => at >= countsFrom) ?? null);
  const first = firstOf<NonNullable<CoverAnswer["by"]>>([
    ...measuredDry(outer),
    { at: firedDryAt(piece, outer, now), by: "fire" },
    { at: touchAt, by: "touch" },
    {
      at: late === null ? null : Math.max(late, minimum.until),
      by: (late ?? 0) >= minimum.until ? "air" : "minimum",
    },
  ]);
  const { at: dryAt, by } = first ?? { at: null, by: null };
  const isDry = dryAt !== null && dryAt <= now;
  const mayCheck = checkAt !== null && checkAt <= now;
  const feltAt = touches.at(-1) ?? null;
  return {
    coat,
    state: isDry ? "dry" : !mayCheck ? "drying" : isUnread ? "unknown" : "check",
    checkAt,
    dryAt,
    by,
    airAt: late,
    minimum,
    touch: isDry || feltAt === null ? null : { at: feltAt, countsFrom },
    reason: likely === null ? reason : null,
  };
}

/** A place that a hand does not reach: what it feels is the face. */
export const hasDeepPlace = ({ plan }: Pick<Piece, "plan">): boolean =>
  placesOfPlan(plan).some((place) => place === "recess" || place === "blind");

/** What was measured dry, with its moment. */
export const measuredDry = ({ evidence }: CoatDrying) =>
  evidence?.says === "dry" && evidence.by !== "felt" ? [{ at: evidence.seen.at, by: evidence.by }] : [];

/** When fire dried the coat, unless it was seen wet after; null where none has. */
export function firedDryAt(piece: Piece, { coat, evidence }: CoatDrying, now: number): number | null {
  const hotAt = firstHotAt(piece, { since: wettedAt(coat), until: now });
  return hotAt !== null && evidence?.says === "wet" && evidence.seen.at > hotAt ? null : hotAt;
}

/** The earliest of what has a time; of two at once the one named first. */
export function firstOf<B>(
  all: readonly { readonly at: number | null; readonly by: B }[],
): { readonly at: number; readonly by: B } | null {
  const timed = all.flatMap(({ at, by }) => (at === null ? [] : [{ at, by }]));
  return timed.reduce<{ readonly at: number; readonly by: B } | null>(
    (first, one) => (first === null || one.at < first.at ? one : first),
    null,
  );
}
