import { coatWaterOf } from "../../trade/coatWater.ts";
import type { CoatKind } from "../../trade/coats.ts";
import { startingRecipeOf } from "../../trade/startingRecipes.ts";
import { sealMm, stuccoOf } from "../../trade/stuccos.ts";
import { ranges, within } from "../entries/ranges.ts";
import type { OwnByKind } from "../shop/shopThings.ts";
import type { Coat } from "../piece/piece.ts";
import { startingFraction } from "./slurryWater.ts";

type LaidCoat = {
  readonly kind: CoatKind;
  readonly stuccoId: string | null;
  readonly beforeLog?: Coat["beforeLog"];
};

/** Wall a coat gives by the table of stuccos, mm; slurry alone for a coat without stucco, or with an unknown one. */
export function tableMm({ stuccoId }: LaidCoat): number {
  const stucco = stuccoId === null ? null : stuccoOf(stuccoId);
  return stucco?.mmPerCoat.value ?? sealMm.value;
}

/** Wall a coat of a kind is taken to give before any was read, mm: as in the general starting recipe. */
export function startingMm(kind: CoatKind): number {
  const coat = startingRecipeOf("start-general")?.coats.find((one) => one.kind === kind);
  return tableMm(coat ?? { kind, stuccoId: null });
}

/**
 * Wall a coat gives, mm: the shop's own figure for its kind where it has one, else by the table of stuccos. A coat from
 * before the log whose stucco is not known counts as its kind in the general starting recipe.
 */
export function coatMm(coat: LaidCoat, own: OwnByKind): number {
  const mm = own[coat.kind];
  if (within(ranges.buildMm, mm)) return mm;
  return coat.beforeLog !== undefined && coat.stuccoId === null ? startingMm(coat.kind) : tableMm(coat);
}

/** Water one dip leaves, kg/m²: from the slurry the shop has weighed where it has, else the starting value. */
export function coatWaterKgM2(
  { kind, primeNumber }: { readonly kind: CoatKind; readonly primeNumber: number },
  ownSlurryKgM2: OwnByKind,
): number {
  const slurryKgM2 = ownSlurryKgM2[kind];
  return within(ranges.coatKgM2, slurryKgM2)
    ? Math.min(mostWaterKgM2, slurryKgM2 * startingFraction(kind, primeNumber))
    : coatWaterOf(kind, primeNumber).waterKgM2;
}

/** As far as the sums of drying go. */
const mostWaterKgM2 = 5;
