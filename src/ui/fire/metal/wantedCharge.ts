import { chargeParts, type ChargeParts } from "../../../physics/metal/melt.ts";
import { lossMemory } from "../../../logbook/fire/furnaceMemory.ts";
import type { Melt } from "../../../logbook/fire/fireStates.ts";
import type { Shop } from "../../../logbook/piece/piece.ts";
import { metalOf } from "../../../logbook/piece/pieceMetal.ts";
import type { Alloy } from "../../../trade/metals/alloy.ts";
import { marginOf } from "../../../trade/volumeRoutes.ts";
import type { RackItem } from "../../base/state/live.ts";
import type { MeltDraft } from "../../../logbook/casting/meltDraft.ts";

export type WantedCharge = {
  readonly parts: ChargeParts;
  readonly lossShare: number;
  /** Pieces whose metal isn't known: the charge leaves them out. */
  readonly unknown: readonly string[];
};

/** What to weigh in for the pieces chosen, with the margin of a measured mass and the shop's own loss; null while none has its metal. */
export function wantedCharge({
  draft,
  rack,
  alloy,
  melts,
  shop,
}: {
  readonly draft: Pick<MeltDraft, "pieceIds">;
  readonly rack: readonly RackItem[];
  readonly alloy: Alloy;
  readonly melts: readonly Melt[];
  readonly shop: Shop;
}): WantedCharge | null {
  const pieces = rack
    .map(({ standing }) => standing.piece)
    .filter(({ id }) => draft.pieceIds.includes(id))
    .map((piece) => ({ name: piece.plan.name, kg: metalOf(piece, alloy) }));
  const castingKg = pieces.reduce((sum, { kg }) => sum + (kg ?? 0), 0);
  if (!(castingKg > 0)) return null;
  const learned = lossMemory({ family: alloy.family, melts, shop });
  const usual = alloy.loss?.["mixed-returns"].value;
  const lossShare =
    learned.kind === "learned"
      ? Math.min(0.6, learned.lossShare)
      : usual === undefined
        ? 0.03
        : (usual.low + usual.high) / 2;
  return {
    parts: chargeParts({ castingKg, gatingKg: 0, marginShare: marginOf.weighed.value, lossShare }),
    lossShare,
    unknown: pieces.filter(({ kg }) => kg === null).map(({ name }) => name),
  };
}
