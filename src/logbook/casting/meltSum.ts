import { correctMelt, diluteKg, type Addition, type Correction } from "../../physics/slurry/addition.ts";
import {
  judgeCharge,
  type ChargeJudged,
  type CompositionLimit,
  type LimitJudged,
} from "../../physics/metal/chargeVerdict.ts";
import {
  mixCharge,
  type ChargeItem,
  type ChargeMix,
  type ChargeRefusal,
  type Element,
} from "../../physics/metal/scrap.ts";
import type { Shop } from "../piece/piece.ts";
import { ownAlloy } from "../shop/ownAlloy.ts";
import { compositionOf } from "../../trade/metals/contents.ts";
import { usualRecovery } from "../../trade/recovery.ts";
import { symbolOf } from "../../trade/elementSymbols.ts";
import { contentsOfItem, itemLimits, mayHoldBeryllium, nameOfItem, type ItemDraft } from "./meltDraft.ts";
import { kept } from "./limits.ts";

export type MixSum = {
  readonly massKg: number;
  /** Items of which nothing is said yet: they are in the weight and not in the mixture. */
  readonly unsaid: readonly string[];
  /** Items whose make nobody knows: no exact addition follows from a guess. */
  readonly guessed: readonly string[];
  /** All of it is this alloy by its name: its makers' certificates say more than the alloy's whole range. */
  readonly isAllNamed: boolean;
  readonly judged: ChargeJudged | null;
  readonly mix: ChargeMix | null;
  readonly fix: Fix | null;
};

export type Dilution = {
  readonly element: Element;
  readonly share: number;
  readonly most: number;
  readonly addition: Addition;
};

export type Fix = {
  readonly targets: readonly { readonly element: Element; readonly share: number }[];
  readonly raise: Correction | null;
  readonly dilutions: readonly Dilution[];
};

/** The charge against what the alloy may hold, and what would put it right; the verdict is null where no limits are known. */
export function mixSum({
  items,
  tableId,
  shop,
  alloyNamed,
}: {
  readonly items: readonly ItemDraft[];
  /** The alloy's row in the table. */
  readonly tableId: string;
  readonly shop: Pick<Shop, "alloys">;
  readonly alloyNamed: (id: string) => string;
}): MixSum {
  const weighed = items.map((item) => kept(item, itemLimits)).filter(({ massKg }) => massKg !== null);
  const massKg = weighed.reduce((sum, item) => sum + (item.massKg ?? 0), 0);
  // Whether scrap may hold beryllium is asked before anything is reckoned of it.
  const isOpen = (item: ItemDraft): boolean => mayHoldBeryllium(item) && item.springy === null;
  const read = weighed.map((item) => ({ item, contents: isOpen(item) ? null : contentsOfItem(item, shop) }));
  const unsaid = read.flatMap(({ item, contents }) =>
    contents === null ? [nameOfItem(item, alloyNamed)] : [],
  );
  const charge = read.flatMap(({ item, contents }): readonly ChargeItem[] =>
    contents === null
      ? []
      : [
          {
            name: nameOfItem(item, alloyNamed),
            massKg: item.massKg ?? 0,
            contents,
            isBerylliumSuspect: item.springy === "yes",
          },
        ],
  );
  const guessed = weighed
    .filter(({ kind }) => kind === "unknown-copper" || kind === "unknown-aluminium")
    .map((item) => nameOfItem(item, alloyNamed));
  const isThis = ({ kind, alloyId }: ItemDraft): boolean =>
    kind === "alloy" && alloyId !== null && ownAlloy(alloyId, shop)?.id === tableId;
  const said = { massKg, unsaid, guessed, isAllNamed: weighed.length > 0 && weighed.every(isThis) };
  const limits = compositionOf(tableId)?.limits ?? null;
  if (charge.length === 0) return { ...said, judged: null, mix: null, fix: null };
  const asked = { items: charge, recovery: usualRecovery };
  const mixed: ChargeMix | ChargeRefusal = mixCharge(asked);
  if (!mixed.ok) return { ...said, judged: mixed, mix: null, fix: null };
  const judged = limits === null ? null : judgeCharge({ ...asked, limits });
  const isWanting =
    judged?.ok === true && judged.verdict !== "pass" && unsaid.length === 0 && guessed.length === 0;
  return { ...said, judged, mix: mixed, fix: isWanting ? fixOf(mixed, judged.limits) : null };
}

/** Exact additions for what is likely too little, and the clean metal that would thin what is likely too much. */
function fixOf(mix: ChargeMix, limits: readonly LimitJudged[]): Fix | null {
  const meltKg = mix.meltKg.likely;
  const single = limits.flatMap(({ limit, share }) => {
    const [element] = limit.of;
    return limit.of.length === 1 && element !== undefined ? [{ element, limit, share: share.likely }] : [];
  });
  const targets = single
    .filter(({ element, limit, share }) => share < (limit.min ?? 0) && !isBase(limit) && element !== "other")
    .map(({ element, limit }) => ({ element, share: aimOf(limit) }));
  const dilutions = single
    .filter(({ limit, share }) => share > (limit.max ?? 1) * (1 + 1e-9))
    .map(({ element, limit: { max = 1 }, share }): Dilution => ({
      element,
      share,
      most: max,
      addition: diluteKg({ meltKg, share, targetShare: max, diluentShare: 0 }),
    }));
  if (targets.length === 0 && dilutions.length === 0) return null;
  const shares = Object.fromEntries(
    Object.entries(mix.shares).map(([element, { likely }]) => [element, likely]),
  );
  return {
    targets,
    dilutions,
    raise:
      targets.length === 0
        ? null
        : correctMelt({
            meltKg,
            shares,
            targets: Object.fromEntries(targets.map(({ element, share }) => [element, share])),
            additives: targets.map(({ element }) => ({
              name: symbolOf(element),
              shares: { [element]: 1 },
              recovery: { [element]: usualRecovery[element]?.likely ?? 1 },
            })),
          }),
  };
}

/** Half or more of the metal: it is raised by what is the rest of the charge, not by a pinch. */
const isBase = ({ min = 0 }: CompositionLimit): boolean => min >= 0.5;

/** Middle of its limits; with the least alone, a hair above it. */
const aimOf = ({ min = 0, max }: CompositionLimit): number =>
  max === undefined ? min * 1.02 : (min + max) / 2;
