import { practice } from "../../trade/practice.ts";
import { dampLoadShare } from "../../trade/shellStrength.ts";
import type { Piece } from "./piece.ts";
import type { CoatDrying, WallStanding } from "./standing.ts";

type Of = { readonly piece: Pick<Piece, "coats" | "firings">; readonly drying: readonly CoatDrying[] };

/** Share of its load that the wall bears, 1 where nothing weakened it: the worst of coats covered damp and of a fire too cool or too short. */
export function loadShare({
  piece,
  drying,
  wallBasis,
}: Of & { readonly wallBasis: WallStanding["basis"] }): number {
  const damp = dampShare({ piece, drying, isWallMeasured: wallBasis === "measured" });
  return Math.min(damp, isUnderFired(piece) ? practice.weakShare.value : 1);
}

/** The same of coats covered damp alone. */
export function dampShare({
  piece: { coats },
  drying,
  isWallMeasured,
}: Of & { readonly isWallMeasured: boolean }): number {
  const accepted = new Map(coats.flatMap(({ acceptedDamp: damp }) => (damp ? [[damp.coatId, damp]] : [])));
  const shares = drying.slice(0, -1).map(({ coat, verdict, evidence, readyAt, basis, leftShare }) => {
    if (verdict === "wet") return dampLoadShare({ leftShare, isWallMeasured });
    // In air nobody read only what is wet at the dry end of the guess counts.
    if (basis.assumed) return 1;
    // What was accepted as damp stays so, unless someone saw it dry or the air read since makes it likely.
    const acceptedLeft = accepted.get(coat.id)?.leftShare ?? 0;
    if (acceptedLeft <= 0 || evidence?.says === "dry" || readyAt.likely !== null) return 1;
    return dampLoadShare({ leftShare: acceptedLeft, isWallMeasured });
  });
  return Math.min(1, ...shares);
}

/** A fire too cool or too short for the wall that stands now. */
function isUnderFired({ coats, firings }: Of["piece"]): boolean {
  const lastDip = coats.at(-1)?.dippedAt ?? -Infinity;
  const ofThisWall = firings.filter(({ at }) => at >= lastDip);
  const firedWell = ofThisWall.some(
    ({ peakC, holdMin }) => peakC >= practice.firedC.value && holdMin >= practice.firedMin.value,
  );
  return ofThisWall.length > 0 && !firedWell;
}
