import { pickups } from "../../trade/pickup.ts";
import type { CoatKind } from "../../trade/coats.ts";
import { coatWaterOf } from "../../trade/coatWater.ts";
import type { Bucket } from "../piece/piece.ts";
import { ranges, within } from "../entries/ranges.ts";

/** Silica of a common sol, a mass fraction, where nobody told another; common practice. */
const usualSilica = 0.3;
/** Slurries hold between these, mass fractions: judgement. */
const believable = { low: 0.05, high: 0.6 };

/** Water in the slurry by mass, 0–1: the starting water of a coat over the starting slurry it keeps. */
export function startingFraction(kind: CoatKind, primeNumber: number): number {
  return coatWaterOf(kind, primeNumber).waterKgM2 / pickups[kind].slurryKgM2;
}

/**
 * Water in a bucket's slurry by mass at a time, 0–1, by what was put into it; null where nobody told. Water that
 * made up for evaporation had gone before, so it is left out.
 */
export function bucketFraction(bucket: Bucket | undefined, at: number): number | null {
  const mix = bucket?.mixes.findLast((one) => one.at <= at);
  if (bucket === undefined || mix === undefined) return null;
  const added = bucket.tops.filter((top) => top.at > mix.at && top.at <= at && top.why !== "evaporation");
  let waterKg = 0;
  let massKg = 0;
  for (const { flourKg, solKg, waterKg: water, solSilica } of [mix, ...added]) {
    const silica = within(ranges.silica, solSilica) ? solSilica : usualSilica;
    waterKg += water + solKg * (1 - silica);
    massKg += flourKg + solKg + water;
  }
  const fraction = massKg > 0 ? waterKg / massKg : NaN;
  return within(believable, fraction) ? fraction : null;
}
