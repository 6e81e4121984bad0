import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import type { Coat, Piece } from "../piece/piece.ts";
import type { Standing } from "../piece/standing.ts";
import { canTakeCoat, type DipPlan } from "./dipPlan.ts";

/**
 * One visit to a bucket. The order of the tiles is frozen in it, so that no tile moves from under a finger, and
 * so is how many coats each piece had: a piece is done once its log holds more. Kept as a draft, so that a
 * reload finds the visit as it was.
 */
export type DipSession = DipPlan & {
  readonly dipId: string;
  readonly startedAt: number;
  readonly prewet: boolean;
  readonly order: readonly { readonly pieceId: string; readonly coats: number }[];
  readonly leftOut: readonly string[];
};

/** After this long a visit is over, even if nobody said so; one that has nothing left to dip is over sooner. */
const unfinishedMs = 30 * minuteMs;
const finishedMs = 2 * minuteMs;

/** Pieces that want this coat first, then those without a recipe's wish, then those that want another kind. */
function fit(standing: Standing, plan: DipPlan): number {
  if (standing.next?.kind === plan.kind) return 0;
  return standing.next === null ? (standing.recipe === null ? 1 : 3) : 2;
}

/** Starts a visit. `standings` come in rack order, which is kept among pieces that fit equally well. */
export function startSession(
  standings: readonly Standing[],
  plan: DipPlan,
  { dipId, now, prewet }: { dipId: string; now: number; prewet: boolean },
): DipSession {
  const order = standings
    .filter(canTakeCoat)
    .map((standing, place) => ({ standing, place }))
    .sort((a, b) => fit(a.standing, plan) - fit(b.standing, plan) || a.place - b.place)
    .map(({ standing: { piece } }) => ({ pieceId: piece.id, coats: piece.coats.length }));
  return { ...plan, dipId, startedAt: now, prewet, order, leftOut: [] };
}

/** The coat this visit (or another tab meanwhile) gave a piece; null while it still waits. */
export function coatGiven(piece: Pick<Piece, "coats">, coatsBefore: number): Coat | null {
  if (piece.coats.length <= coatsBefore) return null;
  return piece.coats.reduce((newest, coat) => (coat.number > newest.number ? coat : newest));
}

/** True while a visit found in the drafts should be taken up again. */
export function stillOn(session: DipSession, pieces: ReadonlyMap<string, Piece>, now: number): boolean {
  const coats = session.order.map(({ pieceId, coats: before }) => {
    const piece = pieces.get(pieceId);
    return {
      pieceId,
      gone: piece === undefined,
      given: piece === undefined ? null : coatGiven(piece, before),
    };
  });
  const lastAt = Math.max(session.startedAt, ...coats.map(({ given }) => given?.dippedAt ?? 0));
  const open = coats.some(
    ({ pieceId, gone, given }) => !gone && given === null && !session.leftOut.includes(pieceId),
  );
  return session.order.length > 0 && now - lastAt < (open ? unfinishedMs : finishedMs);
}
