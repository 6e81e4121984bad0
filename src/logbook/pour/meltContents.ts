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

/** The widest of two makes: each element from the least to the most of either. */
function widest(a: Contents, b: Contents): Contents {
  return Object.fromEntries(
    elements.flatMap((element) => {
      const [one, other] = [a[element], b[element]];
      if (one === undefined && other === undefined) return [];
      const low = Math.min(one?.low ?? 0, other?.low ?? 0);
      return [[element, { low, high: Math.max(one?.high ?? 0, other?.high ?? 0) }] as const];
    }),
  );
}

/**
 * What the hazards of a charge go by: its mix where all of it is known; with items still unsaid, that mix and the alloy
 * it is to be, the worse of both; without any, the alloy. Null where neither is known.
 */
export function chargeContents({
  mix,
  isWhole,
  alloy,
}: {
  readonly mix: Contents | null;
  /** What every item is made of has been said. */
  readonly isWhole: boolean;
  readonly alloy: Contents | null;
}): Contents | null {
  if (mix === null || alloy === null) return mix ?? alloy;
  return isWhole ? mix : widest(mix, alloy);
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
