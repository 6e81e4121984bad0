import { ranges, type NumberRange } from "./ranges.ts";

/** Keys of the shop's own bucket limits, as an entry keeps them. */
const bucketLimitKeys = [
  "fitLowC",
  "fitHighC",
  "stopLowC",
  "stopHighC",
  "ownOffK",
  "lightFitGCm3",
  "lightStopGCm3",
  "heavyFitGCm3",
  "heavyStopGCm3",
  "fitLowPH",
  "fitHighPH",
  "stopPH",
  "meterPH",
  "weekDropPH",
  "fitSilica",
  "lowestSilica",
  "highestSilica",
  "fitGelH",
  "stopGelH",
  "fitPlateShare",
  "stopPlateShare",
  "fitBacteria",
  "stopBacteria",
  "oldDays",
  "tooOldDays",
  "weeklyShare",
  "primeMadeH",
  "backupMadeH",
  "flourAddedH",
  "waterAddedH",
] as const;
export type BucketLimitKey = (typeof bucketLimitKeys)[number];

/** The shop's own limits of its buckets, and hours of mixing; what is left out takes the starting value. */
export type OwnBucketLimits = { readonly [K in BucketLimitKey]?: number | undefined };

/** Of two that belong together the first is never above the second. */
export const bucketLimitPairs: readonly (readonly [low: BucketLimitKey, high: BucketLimitKey])[] = [
  ["stopLowC", "fitLowC"],
  ["fitLowC", "fitHighC"],
  ["fitHighC", "stopHighC"],
  ["lightFitGCm3", "lightStopGCm3"],
  ["heavyFitGCm3", "heavyStopGCm3"],
  ["stopPH", "fitLowPH"],
  ["fitLowPH", "fitHighPH"],
  ["fitHighPH", "meterPH"],
  ["fitSilica", "lowestSilica"],
  ["fitSilica", "highestSilica"],
  ["stopGelH", "fitGelH"],
  ["fitPlateShare", "stopPlateShare"],
  ["fitBacteria", "stopBacteria"],
  ["oldDays", "tooOldDays"],
];

type Given = Readonly<Partial<Record<BucketLimitKey, number | null | undefined>>>;

/** The range of each upper one of a pair, from the lower one on where that is given. */
export const bucketLimitSpans = (given: Given): Readonly<Partial<Record<BucketLimitKey, NumberRange>>> =>
  Object.fromEntries(
    bucketLimitPairs.map(([low, high]) => [
      high,
      { low: Math.max(ranges[high].low, given[low] ?? ranges[high].low), high: ranges[high].high },
    ]),
  );
