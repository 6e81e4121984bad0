import { millisecondsInHour as hourMs } from "date-fns/constants";
import { wettedAt } from "../logbook/drying/dryMinimum.ts";
import { firstHotAt } from "../logbook/fire/hotTimes.ts";
import type { Coat, Piece } from "../logbook/piece/piece.ts";
import type { Standing } from "../logbook/piece/standing.ts";
import { practice } from "../trade/practice.ts";

export const hoursBetween = (fromMs: number, toMs: number): number => (toMs - fromMs) / hourMs;

/** What came to light at a time is told there and then; hours later it has been told. */
export const isNews = (at: number, now: number): boolean => hoursBetween(at, now) <= practice.toldOnceH.value;

/** What rules are asked about: a piece as it stands, or as it is laid out for its review before burnout. */
export type Asked = Standing & { readonly atReview?: true };

/** True while water on the shell still matters: it is being coated, or stands reviewed before the fire. */
export const isBeforeFire = ({ phase }: Piece): boolean => phase === "coating" || phase === "reviewed";

/** True once metal went in, or the piece was given up. */
export const isPastPour = ({ phase }: Piece): boolean =>
  phase === "poured" || phase === "knocked-out" || phase === "finished" || phase === "scrapped";

/** True when no coat is to come: the recipe is through, or the piece has gone on without. */
export const coatsAreDone = ({ piece, next, recipe, action }: Standing): boolean =>
  piece.phase !== "coating" || (next === null && (recipe !== null || action.kind !== "dip"));

export const wasHot = (piece: Piece, span: { since: number; until?: number }): boolean =>
  firstHotAt(piece, span) !== null;

/** The outermost coat's drying while it still matters and isn't over; null otherwise. */
export function coatStillDrying({ piece, outer }: Standing): Standing["outer"] {
  if (outer === null || outer.verdict === "dry" || !isBeforeFire(piece)) return null;
  return wasHot(piece, { since: wettedAt(outer.coat) }) ? null : outer;
}

/** The time a prime coat was the outer one. */
export type Stretch = {
  readonly coat: Coat;
  readonly from: number;
  readonly to: number;
  /** True while nothing covers it and no fire has touched it. */
  readonly isOuter: boolean;
};

/**
 * The stretches of all prime coats, first to last; a coat put on after a burnout has no pattern behind it. Of one from
 * before the log nothing is asked once it is covered.
 */
export function primeStretches({ piece, now }: Standing): readonly Stretch[] {
  return piece.coats.flatMap((coat, i) => {
    if (coat.kind !== "prime" || coat.afterBurnout) return [];
    const cover = piece.coats[i + 1];
    if (coat.beforeLog !== undefined && cover !== undefined) return [];
    const fireAt = piece.burnouts.find(({ startedAt }) => startedAt >= coat.dippedAt)?.startedAt;
    const to = Math.min(cover?.dippedAt ?? now, fireAt ?? now, now);
    return [
      {
        coat,
        from: coat.dippedAt,
        to,
        isOuter: cover === undefined && fireAt === undefined && isBeforeFire(piece),
      },
    ];
  });
}

/** Prime stretches that the readings of the piece's present room speak of. */
export const primeStretchesHere = (standing: Standing): readonly Stretch[] =>
  primeStretches(standing).filter(({ coat }) => coat.roomId === standing.piece.rooms.at(-1)?.roomId);
