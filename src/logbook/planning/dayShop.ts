import { brimShare, crucibleFill } from "../../physics/metal/crucible.ts";
import { kilnFillShare } from "../../trade/kilnFill.ts";
import { chargeOf } from "../casting/chargeSum.ts";
import { chargeKindOf, newMelt } from "../casting/meltDraft.ts";
import type { Melt } from "../fire/fireStates.ts";
import type { Shop } from "../piece/piece.ts";
import { ownMeltFigures } from "../shop/ownAlloy.ts";
import type { Furnace, Kiln } from "../shop/shopThings.ts";
import type { PackShop } from "./packPour.ts";

/** What the shop has for a pour day: its own things, and what packing asks of them. */
export type DayShop = {
  readonly furnaces: readonly Furnace[];
  readonly kilns: readonly Kiln[];
  /** Ended melts, from which the loss is learned. */
  readonly melts: readonly Melt[];
  readonly shop: Shop;
  readonly pack: PackShop;
};

/** The id that stands for a crucible or a kiln nobody has set up: nothing is checked against it. */
export const notSetUp = "";

/**
 * The crucibles whose volume is known, filled as far as tongs lift them; where none is known one that nothing is checked
 * against. The same of kilns.
 */
export function dayShop(shop: Shop, melts: readonly Melt[]): DayShop {
  const furnaces = shop.furnaces.filter(({ retired, crucibleL }) => !retired && crucibleL !== undefined);
  const kilns = shop.kilns.filter(({ retired }) => !retired);
  return {
    furnaces,
    kilns,
    melts,
    shop,
    pack: {
      crucibles:
        furnaces.length === 0
          ? [{ id: notSetUp, mostKg: () => null }]
          : furnaces.map(({ id, crucibleL = 0 }) => ({
              id,
              mostKg: (alloyId) => mostKgOf({ brimMl: crucibleL * 1000, alloyId, shop }),
            })),
      kilns:
        kilns.length === 0
          ? [{ id: notSetUp, maxC: Infinity, usableL: null }]
          : kilns.map(({ id, maxC, volumeL }) => ({ id, maxC, usableL: volumeL * kilnFillShare.value })),
      meltKg: (packed) =>
        chargeOf({
          castings: packed.map(({ metalKg, known }) => ({ castingKg: metalKg, gatingKg: 0, by: known })),
          heelKg: 0,
          // What melting loses is weighed in beside this and is not molten at the pour.
          lossShare: 0,
        })?.meltKg ?? 0,
    },
  };
}

/** What a melt's plan starts with: nothing typed, metal of the usual kind. */
export const usualKind = chargeKindOf(newMelt);

/** Melt a crucible holds, by the one sum of its fill, kg; null for an alloy whose density is not known. */
function mostKgOf({
  brimMl,
  alloyId,
  shop,
}: {
  readonly brimMl: number;
  readonly alloyId: string;
  readonly shop: Shop;
}): number | null {
  const figures = ownMeltFigures(alloyId, shop);
  if (figures === null || !(brimMl > 0)) return null;
  const liquidKgM3 = figures.crucibleKgM3.value;
  return crucibleFill({ meltKg: 0, liquidKgM3, brimMl, fillShare: brimShare.tongs }).mostKg;
}
