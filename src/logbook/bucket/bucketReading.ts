import { cupMean } from "../../physics/slurry/cupReading.ts";
import { cupViscosityMm2S, solidsFromDensity, type CupViscosity } from "../../physics/slurry/slurry.ts";
import { liquorSilica } from "../../physics/slurry/sol.ts";
import type { SolidsKnown, SolidsRefusal } from "../../physics/slurry/solids.ts";
import { platePickupKgM2 } from "../../physics/slurry/stock.ts";
import { secondsAtReference } from "../../physics/slurry/waterViscosity.ts";
import { weighedDensity } from "../../physics/slurry/weighedDensity.ts";
import type { BucketAim } from "./bucketAim.ts";
import type { BucketCup } from "./bucketCups.ts";
import { bucketCup } from "./bucketCups.ts";
import type { BucketReading, Shop } from "../piece/piece.ts";
import { ranges, within } from "../entries/ranges.ts";

export type SecondsRead = {
  /** The mean of the dips, or what was written down. */
  readonly seconds: number;
  readonly dipsS: readonly number[];
  /** Spread of the dips over their mean; null below two. */
  readonly spread: number | null;
  /** Two dips differ too far: a third was wanted. */
  readonly wantsThird: boolean;
  /** Null where the cup's kind is not known. */
  readonly viscosity: CupViscosity | null;
  /** The same slurry's seconds at the bucket's own temperature; null where that can't be told. */
  readonly atReferenceS: number | null;
  /** Taken more than 2 K from it: drawn hollow, not charted. */
  readonly hollow: boolean;
};

export type DensityRead = {
  readonly densityGCm3: number;
  readonly how: "instrument" | "weighed";
  /** What scale and cup leave open; null for an instrument. */
  readonly plusMinusGCm3: number | null;
};

/** A reading with all that follows from it. The reading itself stays the truth. */
export type ReadingStanding = {
  readonly reading: BucketReading;
  readonly at: number;
  readonly cup: BucketCup | null;
  readonly seconds: SecondsRead | null;
  readonly density: DensityRead | null;
  /** Silica of the settled liquor, a mass fraction. */
  readonly silica: number | null;
  /** Null without a density or a flour to reckon with. */
  readonly solids: SolidsKnown | SolidsRefusal | null;
  readonly plateKgM2: number | null;
};

type Kept = {
  readonly cup: BucketCup | null;
  readonly slurryC: number | null;
  readonly flourGCm3: number | null;
  readonly standing: ReadingStanding;
};
/** What was reckoned of a reading: a bucket is looked at for every coat that was dipped from it. */
const kept = new WeakMap<BucketReading, Kept>();

/** Total: numbers no bucket could have are left out of the sums. */
export function bucketReading(
  reading: BucketReading,
  { aim, shop }: { readonly aim: BucketAim; readonly shop: Pick<Shop, "cups"> },
): ReadingStanding {
  const cup = bucketCup(reading, shop) ?? (hasSeconds(reading) ? aim.cup : null);
  const slurryC = aim.slurryC?.value ?? null;
  const flourGCm3 = aim.flourGCm3?.value ?? null;
  const before = kept.get(reading);
  if (before?.slurryC === slurryC && before.flourGCm3 === flourGCm3 && isSameCup(before.cup, cup))
    return before.standing;
  const standing = reckoned(reading, { aim, cup });
  kept.set(reading, { cup, slurryC, flourGCm3, standing });
  return standing;
}

const isSameCup = (a: BucketCup | null, b: BucketCup | null): boolean =>
  a?.key === b?.key && a?.kind === b?.kind && a?.name === b?.name;

function reckoned(
  reading: BucketReading,
  { aim, cup }: { readonly aim: BucketAim; readonly cup: BucketCup | null },
): ReadingStanding {
  const density = densityOf(reading);
  const { liquorGCm3, ovenSolids, plateG, plateCm2 } = reading;
  const liquor = within(ranges.densityGCm3, liquorGCm3) ? liquorSilica({ liquorGCm3 }) : null;
  return {
    reading,
    at: reading.at,
    cup,
    seconds: secondsOf(reading, cup, aim),
    density,
    silica: liquor?.ok ? liquor.silica : null,
    solids:
      density === null || aim.flourGCm3 === null
        ? null
        : solidsFromDensity({
            densityGCm3: density.densityGCm3,
            flourGCm3: aim.flourGCm3.value,
            liquidGCm3: within(ranges.densityGCm3, liquorGCm3) ? liquorGCm3 : undefined,
            ovenSolids: within(ranges.share, ovenSolids) ? ovenSolids : undefined,
          }),
    plateKgM2:
      within(ranges.plateG, plateG) && within(ranges.plateCm2, plateCm2)
        ? platePickupKgM2({ gainedG: plateG, areaCm2: plateCm2 })
        : null,
  };
}

const hasSeconds = ({ cupS, dipsS = [] }: BucketReading): boolean => cupS !== undefined || dipsS.length > 0;

function secondsOf(
  { cupS, dipsS = [], slurryC }: BucketReading,
  cup: BucketCup | null,
  { slurryC: reference }: BucketAim,
): SecondsRead | null {
  const dips = dipsS.filter((dip) => within(ranges.cupS, dip));
  const { meanS, spread, ask } = cupMean(dips);
  const seconds = meanS ?? (within(ranges.cupS, cupS) ? cupS : null);
  if (seconds === null) return null;
  const there =
    cup?.kind && reference !== null && slurryC !== undefined && slurryC >= 5 && slurryC <= 40
      ? secondsAtReference({ cup: cup.kind, seconds, slurryC, referenceC: reference.value })
      : null;
  return {
    seconds,
    dipsS: dips,
    spread,
    wantsThird: ask === "third",
    viscosity: cup?.kind ? cupViscosityMm2S({ cup: cup.kind, seconds }) : null,
    atReferenceS: there?.ok ? there.seconds : null,
    hollow: there?.ok === true && there.hollow,
  };
}

function densityOf({ densityGCm3, weighedG, weighedMl }: BucketReading): DensityRead | null {
  if (
    weighedG !== undefined &&
    within(ranges.weighedMl, weighedMl) &&
    within(ranges.densityGCm3, weighedG / weighedMl)
  ) {
    const weighed = weighedDensity({ fullG: weighedG, emptyG: 0, volumeMl: weighedMl });
    return { densityGCm3: weighed.densityGCm3, how: "weighed", plusMinusGCm3: weighed.plusMinusGCm3 };
  }
  return within(ranges.densityGCm3, densityGCm3)
    ? { densityGCm3, how: "instrument", plusMinusGCm3: null }
    : null;
}
