import { elements, type Contents } from "../../physics/metal/scrap.ts";
import { metalContentsOf } from "../../trade/metals/contents.ts";
import type { ElementShare } from "../entries/fireBodies.ts";
import { isPutAway, type Melt } from "../fire/fireStates.ts";
import { ownAlloy } from "../shop/ownAlloy.ts";
import type { Shop } from "../piece/piece.ts";
import { within } from "../entries/ranges.ts";

type OwnAlloys = Pick<Shop, "alloys">;

const whole = { low: 0, high: 1 } as const;
/** Less than this of an element is not kept: half a hundredth of a percent. */
const tooLittle = 0.00005;

/** What an alloy of this shop may hold: of its own copies, the row they stand on. Null where it isn't known. */
export function alloyContents(alloyId: string | undefined, shop: OwnAlloys): Contents | null {
  const alloy = alloyId === undefined ? null : ownAlloy(alloyId, shop);
  return alloy === null ? null : metalContentsOf(alloy.id);
}

/** What a melt may hold: the mix as it was calculated, else the alloy it was meant to be. */
export function meltContents({ plan }: Pick<Melt, "plan">, shop: OwnAlloys): Contents | null {
  const mix = plan.mayHold ?? [];
  const known = elements.flatMap((element) => {
    const found = mix.find((one) => one.element === element);
    return found !== undefined && within(whole, found.low) && within(whole, found.high)
      ? [[element, { low: found.low, high: found.high }] as const]
      : [];
  });
  return known.length === 0 ? alloyContents(plan.alloyId, shop) : Object.fromEntries(known);
}

/** The melt a piece is or was poured from: the last one that names it, put-away plans left out; null where none does. */
export const meltOfPiece = (melts: readonly Melt[], pieceId: string): Melt | null =>
  melts
    .filter((melt) => !isPutAway(melt) && melt.pieceIds.includes(pieceId))
    .toSorted((a, b) => a.plan.at - b.plan.at)
    .at(-1) ?? null;

/** A mix as the log keeps it. */
export const mayHoldOf = (shares: Contents): readonly ElementShare[] =>
  elements.flatMap((element) => {
    const share = shares[element];
    return share === undefined || share.high < tooLittle
      ? []
      : [{ element, low: Math.max(0, share.low), high: Math.min(1, share.high) }];
  });
