import {
  learnFurnace,
  learnLoss,
  type LearnedLoss,
  type MeltSeen,
  type UsefulPower,
} from "../../physics/heat/furnace.ts";
import { meltEnergyJ } from "../../physics/metal/melt.ts";
import type { AlloyFamily } from "../../trade/metals/alloy.ts";
import { coldStartMore, furnaceEfficiency } from "../../trade/furnaces.ts";
import { usualChargeKind, type ChargeKind } from "../../trade/metals/losses.ts";
import type { Melt } from "./fireStates.ts";
import { ownAlloy, ownMeltHeat } from "../shop/ownAlloy.ts";
import type { Shop } from "../piece/piece.ts";
import type { Furnace } from "../shop/shopThings.ts";
import { ranges, within } from "../entries/ranges.ts";

/** Charge and scrap lie at about the heat of the room (judgement: 20 °C more or less is 2 % of a bronze's heat). */
const roomC = 20;
/** As many of the newest melts of a family as the loss is learned from. */
const lossMelts = 6;

export type FurnaceMemory = { readonly hot: UsefulPower | null; readonly cold: UsefulPower | null };

/**
 * Heat and time of one melt as its log tells it: from the start to the first reading at pouring heat, else to the last
 * one above the liquidus. Null where no such reading stands, or the alloy's heat isn't known.
 */
export function meltSeen(melt: Melt, shop: Pick<Shop, "alloys">): MeltSeen | null {
  const { startedAt, hotFurnace, readings, plan } = melt;
  const heat = ownMeltHeat(plan.alloyId, shop);
  if (startedAt === null || hotFurnace === null || heat === null) return null;
  const molten = readings.filter(({ metalC, at }) => metalC >= heat.liquidusC && at > startedAt);
  const seen = molten.find(({ metalC }) => metalC >= plan.pourC) ?? molten.at(-1);
  const massKg = chargedKg(melt);
  if (seen === undefined || !(massKg > 0)) return null;
  return {
    energyJ: meltEnergyJ({ ...heat, massKg, fromC: roomC, pourC: Math.min(seen.metalC, 2500) }),
    timeS: (seen.at - startedAt) / 1000,
    isHotStart: hotFurnace,
  };
}

/** Useful power a furnace has shown, hot and cold lining apart. */
export function furnaceMemory({
  furnaceId,
  melts,
  shop,
}: {
  readonly furnaceId: string;
  readonly melts: readonly Melt[];
  readonly shop: Pick<Shop, "alloys">;
}): FurnaceMemory {
  const seen = melts
    .filter(({ plan }) => plan.furnaceId === furnaceId)
    .flatMap((melt) => meltSeen(melt, shop) ?? []);
  return learnFurnace(seen);
}

/** What a melt was charged with: as its plan says, else (older logs) returns where scrap of unknown make is in it, else clean ingot. */
export const chargeKindOfMelt = ({
  chargeKind,
  items,
}: Pick<Melt["plan"], "chargeKind" | "items">): ChargeKind =>
  chargeKind ?? (items.some(({ alloyId }) => alloyId === null) ? "mixed-returns" : usualChargeKind);

/** Metal that went into one melt, or came out, kg. */
const meltKg = { low: 1e-6, high: 100_000 } as const;

/**
 * The shop's own melt loss of a family's clean ingot, from its newest melts that were weighed out. Melts that say they
 * were charged with returns or turnings teach nothing of it.
 */
export function lossMemory({
  family,
  melts,
  shop,
}: {
  readonly family: AlloyFamily;
  readonly melts: readonly Melt[];
  readonly shop: Pick<Shop, "alloys">;
}): LearnedLoss {
  const weighed = melts
    .filter(({ plan }) => ownAlloy(plan.alloyId, shop)?.family === family)
    .filter(({ plan }) => chargeKindOfMelt(plan) === "clean-ingot")
    .flatMap((melt) => (melt.ended === null ? [] : [{ melt, ended: melt.ended }]))
    .map(({ melt, ended }) => ({
      at: ended.at,
      inKg: chargedKg(melt),
      outKg: ended.pouredKg + ended.piggedKg,
    }))
    .filter(({ inKg, outKg }) => within(meltKg, inKg) && within(meltKg, outKg))
    .sort((a, b) => b.at - a.at);
  return learnLoss(weighed.slice(0, lossMelts));
}

/** The charge as it was planned, item by item; an item no crucible takes is left out. */
export const plannedChargeKg = ({ plan }: Pick<Melt, "plan">): number =>
  plan.items.reduce((sum, { massKg }) => sum + (within(ranges.chargeKg, massKg) ? massKg : 0), 0);

/** What is in the crucible: the charge as it was weighed, else as it was planned. */
export const chargedKg = (melt: Pick<Melt, "plan" | "weighedKg">): number =>
  within(ranges.chargeKg, melt.weighedKg) ? melt.weighedKg : plannedChargeKg(melt);

export type PowerKnown = {
  readonly lowW: number;
  readonly likelyW: number;
  readonly highW: number;
  /** From this lining's own melts; from its melts of the other kind; the share set for it; a starting value. */
  readonly basis: "learned" | "learned-other" | "own-share" | "starting";
  readonly melts: number;
  readonly source: string;
};

/** How far one melt differs from the next in the same furnace. Judgement. */
const meltSpread = 0.15;

/** What of a furnace's power goes into the metal, W: its own melts first, then its own share, then a starting value. */
export function usefulPower({
  furnace,
  memory,
  isHotStart,
}: {
  readonly furnace: Furnace;
  readonly memory: FurnaceMemory;
  readonly isHotStart: boolean;
}): PowerKnown {
  const [same, other] = isHotStart ? [memory.hot, memory.cold] : [memory.cold, memory.hot];
  if (same !== null)
    return {
      lowW: same.medianW * (1 - meltSpread),
      likelyW: same.medianW,
      highW: same.medianW * (1 + meltSpread),
      basis: "learned",
      melts: same.melts,
      source: "median of this furnace's own melts",
    };
  if (other !== null) {
    const { low, high } = coldStartTimes();
    const times = isHotStart ? { low, high } : { low: 1 / high, high: 1 / low };
    return {
      lowW: other.medianW * times.low,
      likelyW: other.medianW * Math.sqrt(times.low * times.high),
      highW: other.medianW * times.high,
      basis: "learned-other",
      melts: other.melts,
      source: `its melts of the other kind; a cold lining takes longer: ${coldStartMore.source}`,
    };
  }
  return fromShare(furnace, isHotStart);
}

function fromShare({ powerKW, efficiency, heat }: Furnace, isHotStart: boolean): PowerKnown {
  const isGas = heat === "propane" || heat === "natural-gas";
  const cold = coldStartTimes();
  const slower = isHotStart ? { low: 1, high: 1 } : { low: 1 / cold.high, high: 1 / cold.low };
  if (efficiency !== undefined) {
    const hotW = powerKW * 1000 * efficiency;
    return {
      lowW: hotW * slower.low * (1 - meltSpread),
      likelyW: hotW * Math.sqrt(slower.low * slower.high),
      highW: hotW * slower.high * (1 + meltSpread),
      basis: "own-share",
      melts: 0,
      source: "the share set for this furnace",
    };
  }
  const share = isGas
    ? furnaceEfficiency[isHotStart ? "gas-hot" : "gas-first-heat"]
    : furnaceEfficiency[heat === "induction" ? "induction" : "electric-resistance"];
  // The gas figures tell a first heat apart already.
  const times = isGas ? { low: 1, high: 1 } : slower;
  const lowW = powerKW * 1000 * share.value.low * times.low;
  const highW = powerKW * 1000 * share.value.high * times.high;
  return { lowW, likelyW: Math.sqrt(lowW * highW), highW, basis: "starting", melts: 0, source: share.source };
}

/** A cold start over a hot one, by time. */
const coldStartTimes = (): { readonly low: number; readonly high: number } => ({
  low: 1 + coldStartMore.value.low,
  high: 1 + coldStartMore.value.high,
});
