import type { BucketLimits, LimitSpan } from "../../physics/slurry/bucketFacts.ts";
import { firstMix } from "../../physics/slurry/slurry.ts";
import { binderOf } from "../../trade/binders.ts";
import { flourOf } from "../../trade/flours.ts";
import type { BucketCup } from "./bucketCups.ts";
import { bucketCup } from "./bucketCups.ts";
import { shopBucketLimits } from "./bucketLimits.ts";
import type { Bucket, Shop } from "../piece/piece.ts";
import type { NumberRange } from "../entries/ranges.ts";
import { ranges, within } from "../entries/ranges.ts";

/** A figure to aim at and where it comes from. */
export type Aim = { readonly value: number; readonly basis: "own" | "starting" | "reckoned" };

/** What the bucket is meant to be, its own targets first, then what follows from them. Null is not known. */
export type BucketAim = {
  readonly flourGCm3: Aim | null;
  readonly solGCm3: Aim;
  readonly solSilica: Aim;
  readonly ratio: Aim | null;
  readonly densityGCm3: Aim | null;
  readonly cup: BucketCup | null;
  readonly bandS: { readonly lowS: number; readonly highS: number } | null;
  /** The temperature its seconds are compared at: its target, or the middle of its first five readings. */
  readonly slurryC: Aim | null;
  readonly fullL: number | null;
  readonly leastL: number | null;
  readonly limits: BucketLimits;
};

/** A flour this heavy is zircon or holds zircon, and its slurries take the wider tolerance of density (judgement). */
const heavyGCm3 = 3;
/** So many readings tell a bucket's usual temperature (judgement). */
const usualFrom = 5;
/** Temperatures seconds can be carried between, °C. */
const carried: LimitSpan = { low: 5, high: 40 };

export function bucketAim(bucket: Bucket, shop: Pick<Shop, "cups" | "bucketLimits">): BucketAim {
  const { targets } = bucket;
  const flour = targets.flourId === undefined ? null : flourOf(targets.flourId);
  const sol = binderOf("sol-30");
  const flourGCm3 =
    aim(heard(ranges.flourGCm3, targets.flourGCm3), "own") ?? aim(flour?.densityGCm3.value, "starting");
  const solGCm3 = aim(heard(ranges.densityGCm3, targets.solGCm3), "own") ?? {
    value: sol?.densityGCm3.value ?? 1.2,
    basis: "starting",
  };
  const solSilica = aim(heard(ranges.silica, targets.solSilica), "own") ?? {
    value: sol?.silica.value ?? 0.3,
    basis: "starting",
  };
  const ratio = aim(heard(ranges.ratio, targets.ratio), "own");
  const family = flour?.family ?? ((flourGCm3?.value ?? 0) >= heavyGCm3 ? "heavy" : "light");
  const { lowS, highS } = targets;
  return {
    flourGCm3,
    solGCm3,
    solSilica,
    ratio,
    densityGCm3:
      aim(heard(ranges.densityGCm3, targets.densityGCm3), "own") ??
      aim(reckonedDensity({ flourGCm3, solGCm3, solSilica, ratio }), "reckoned"),
    cup: bucketCup(targets, shop),
    bandS: lowS === undefined || highS === undefined ? null : { lowS, highS },
    slurryC: slurryAim(bucket),
    fullL: targets.fullL ?? null,
    leastL: targets.leastL ?? null,
    limits: shopBucketLimits(family, shop.bucketLimits),
  };
}

/** A target no bucket could have is none. */
const heard = (range: NumberRange, value: number | undefined): number | undefined =>
  within(range, value) ? value : undefined;

const aim = (value: number | undefined, basis: Aim["basis"]): Aim | null =>
  value === undefined ? null : { value, basis };

function reckonedDensity({
  flourGCm3,
  solGCm3,
  solSilica,
  ratio,
}: Pick<BucketAim, "flourGCm3" | "solGCm3" | "solSilica" | "ratio">): number | undefined {
  if (flourGCm3 === null || ratio === null) return undefined;
  const mix = firstMix({
    volumeL: 1,
    flourGCm3: flourGCm3.value,
    binderGCm3: solGCm3.value,
    binderSilica: solSilica.value,
    ratio: ratio.value,
  });
  return mix.ok ? mix.densityGCm3 : undefined;
}

function slurryAim({ targets, readings }: Bucket): Aim | null {
  if (within(carried, targets.slurryC)) return { value: targets.slurryC, basis: "own" };
  const told = readings
    .map(({ slurryC }) => slurryC)
    .filter((slurryC) => within(carried, slurryC))
    .slice(0, usualFrom)
    .toSorted((a, b) => a - b);
  const middle = told[Math.floor(usualFrom / 2)];
  return told.length < usualFrom || middle === undefined ? null : { value: middle, basis: "reckoned" };
}
