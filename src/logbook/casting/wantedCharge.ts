import type { ChargeParts } from "../../physics/metal/melt.ts";
import type { Alloy } from "../../trade/metals/alloy.ts";
import type { ChargeKind } from "../../trade/metals/losses.ts";
import type { Melt } from "../fire/fireStates.ts";
import { lossMemory } from "../fire/furnaceMemory.ts";
import type { Piece, Shop } from "../piece/piece.ts";
import { metalKnownOf, metalOf } from "../piece/pieceMetal.ts";
import { chargeOf, lossFor, lossTaken, type LossKnown } from "./chargeSum.ts";

export type WantedCharge = {
  readonly parts: ChargeParts;
  readonly loss: LossKnown | null;
  readonly lossShare: number;
  /** Pieces whose metal isn't known: the charge leaves them out. */
  readonly unknown: readonly string[];
};

/**
 * What to weigh in for pieces poured together, by their plans: each with the margin of how well its metal is known, and
 * the loss of this kind of charge. Null while none has its metal.
 */
export function wantedCharge({
  pieces,
  alloy,
  chargeKind,
  lossShare,
  melts,
  shop,
}: {
  readonly pieces: readonly Pick<Piece, "plan" | "patterns">[];
  readonly alloy: Alloy;
  readonly chargeKind: ChargeKind;
  /** Typed in place of all that is known; null where it was not. */
  readonly lossShare: number | null;
  readonly melts: readonly Melt[];
  readonly shop: Shop;
}): WantedCharge | null {
  const known = pieces.map((piece) => ({
    name: piece.plan.name,
    kg: metalOf(piece, alloy),
    by: metalKnownOf(piece, alloy),
  }));
  const learned = lossMemory({ family: alloy.family, melts, shop });
  const loss = lossFor({ draft: { lossShare, chargeKind }, alloyId: alloy.id, learned });
  const parts = chargeOf({
    castings: known.flatMap(({ kg, by }) => (kg === null ? [] : [{ castingKg: kg, gatingKg: 0, by }])),
    heelKg: 0,
    lossShare: lossTaken(loss),
  });
  return parts === null
    ? null
    : {
        parts,
        loss,
        lossShare: lossTaken(loss),
        unknown: known.filter(({ kg }) => kg === null).map(({ name }) => name),
      };
}
