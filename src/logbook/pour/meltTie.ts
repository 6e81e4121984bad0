import { isPutAway, type Melt, type Pour } from "../fire/fireStates.ts";
import type { Piece } from "../piece/piece.ts";
import { meltOfPiece } from "./meltContents.ts";

type Fills = Pick<Piece, "id" | "pours">;
type Logs = {
  readonly melts: readonly Melt[];
  readonly pours: readonly Pick<Pour, "id" | "plan" | "pieceIds" | "ended">[];
};

/**
 * The melt a piece's metal came from, or is to come from; null where nothing ties one to it. Poured: the melt its pour's
 * line names, else the one of that pour's plan, else the last that was planned for it before the metal. Not poured yet:
 * the melt of the newest open pour it is in, else the last that is planned for it.
 */
export function meltFor({ id, pours: own }: Fills, { melts, pours }: Logs): Melt | null {
  const named = (meltId: string | undefined): Melt | null =>
    melts.find((melt) => melt.id === meltId && !isPutAway(melt)) ?? null;
  const last = own.at(-1);
  if (last === undefined) {
    const plans = pours
      .filter(({ pieceIds, ended }) => ended === null && pieceIds.includes(id))
      .toSorted((a, b) => a.plan.at - b.plan.at);
    return named(plans.at(-1)?.plan.meltId) ?? meltOfPiece(melts, id);
  }
  const ofPour = pours.find((pour) => pour.id === last.pourId)?.plan.meltId;
  return (
    named(last.meltId) ??
    named(ofPour) ??
    meltOfPiece(
      melts.filter(({ plan }) => plan.at <= last.at),
      id,
    )
  );
}

/** The pieces a melt fills: those poured from it and those it is meant for, in the order they are given. */
export const piecesOfMelt = <P extends Fills>(
  { id }: Pick<Melt, "id">,
  pieces: readonly P[],
  logs: Logs,
): readonly P[] => pieces.filter((piece) => meltFor(piece, logs)?.id === id);
