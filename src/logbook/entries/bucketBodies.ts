import { z } from "zod";
import type { Fault } from "./bodyFaults.ts";
import {
  filled,
  flag,
  id,
  label,
  listOf,
  note,
  numberOf,
  photos,
  short,
  withRules,
  words,
  type Body,
} from "./bodyParts.ts";
import { ranges } from "./ranges.ts";

const weights = z.strictObject({
  flourKg: numberOf("flourKg"),
  solKg: numberOf("solKg"),
  waterKg: numberOf("waterKg"),
});
/** What went in: a weight that was not put in is 0, never left out. */
export type Makings = Body<typeof weights>;
const makings = { ...weights.shape, solSilica: numberOf("solSilica").optional() };

/** Nothing at all was put in: that is no mix and no top-up. */
const something = ({ flourKg, solKg, waterKg }: Makings): Fault =>
  flourKg + solKg + waterKg > 0 ? null : { code: "missing", field: "makings" };

const use = z.enum(["prime", "backup", "single", "seal"]);
export type BucketUse = Body<typeof use>;

const targets = z.strictObject({
  flourId: id.optional(),
  flourGCm3: numberOf("flourGCm3").optional(),
  /** The sol as it comes: density and the mass fraction of silica in it, 0–1. */
  solGCm3: numberOf("solGCm3").optional(),
  solSilica: numberOf("solSilica").optional(),
  /** Flour to sol by mass. */
  ratio: numberOf("ratio").optional(),
  fullL: numberOf("fullL").optional(),
  /** Slurry that must stay in it to cover the tallest piece. */
  leastL: numberOf("leastL").optional(),
  openM2: numberOf("openM2").optional(),
  densityGCm3: numberOf("densityGCm3").optional(),
  /** The cup its seconds are read with, and the band it is kept in. */
  cupId: id.optional(),
  lowS: numberOf("lowS").optional(),
  highS: numberOf("highS").optional(),
  slurryC: numberOf("slurryC").optional(),
  /** Hours a coat of this slurry dries at the least; stands before the shop's for its kind of coat. */
  leastDryH: numberOf("leastDryH").optional(),
});
/** What the bucket is meant to be. A key left out is not known. */
export type BucketTargets = Body<typeof targets>;

export const bucketBodies = {
  "bucket-set": withRules(
    z.strictObject({ name: filled(short), use, slurry: label, retired: flag, ...targets.shape }),
    {
      limits: ({ fullL, lowS }) => ({
        leastL: { low: 0, high: fullL ?? ranges.fullL.high },
        highS: { low: lowS ?? ranges.highS.low, high: ranges.highS.high },
      }),
    },
  ),
  /** Raw readings; what follows from them is worked out, never stored. */
  "bucket-read": z.strictObject({
    /** The kind of cup, in words, of a reading without a cup of the shop's own. */
    cup: label.optional(),
    cupId: id.optional(),
    /** The mean the maker wrote down; with `dipsS` the single dips it is the mean of. */
    cupS: numberOf("cupS").optional(),
    dipsS: listOf("dips", numberOf("dipsS")).optional(),
    slurryC: numberOf("slurryC").optional(),
    /** Density read from an instrument; a weighed volume is kept as the two weighings beside it. */
    densityGCm3: numberOf("densityGCm3").optional(),
    weighedG: numberOf("weighedG").optional(),
    weighedMl: numberOf("weighedMl").optional(),
    pH: numberOf("pH").optional(),
    liquorGCm3: numberOf("liquorGCm3").optional(),
    /** Solids left by the oven, as a mass fraction 0–1. */
    ovenSolids: numberOf("ovenSolids").optional(),
    plateG: numberOf("plateG").optional(),
    plateCm2: numberOf("plateCm2").optional(),
    /** Binder kept warm: hours until it gelled, or hours it had stayed liquid when last looked at. */
    gelledAfterH: numberOf("gelledAfterH").optional(),
    liquidForH: numberOf("liquidForH").optional(),
    bacteriaPerMl: numberOf("bacteriaPerMl").optional(),
    smell: z.enum(["none", "foul"]).optional(),
    skin: flag,
    lumps: flag,
    foam: flag,
    /** True when taken after a correction; the chart takes readings as found. */
    asLeft: flag,
    name: label.optional(),
    note,
    photos,
  }),
  /** A new batch: what was in the bucket before is gone. */
  "bucket-mixed": withRules(z.strictObject({ ...makings, litre: numberOf("litre").optional(), note }), {
    also: something,
  }),
  /** Something added to the batch in it. */
  "bucket-topped": withRules(
    z.strictObject({
      ...makings,
      why: z.enum(["evaporation", "correction", "fresh"]),
      /** How the bucket stood since the last top-up. */
      lid: z.enum(["on", "off"]).optional(),
      /** What the next reading should say if the sum was right. */
      expected: z
        .strictObject({
          densityGCm3: numberOf("densityGCm3").optional(),
          cupS: numberOf("cupS").optional(),
        })
        .optional(),
      note,
    }),
    { also: something },
  ),
  "bucket-lost": z.strictObject({ litre: numberOf("litre"), how: z.enum(["lost", "thrown-away"]), note }),
  "bucket-counted": z.strictObject({ litre: numberOf("litre"), note }),
  /** The look at the bucket before a visit to it. */
  "bucket-passed": z.strictObject({
    verdict: z.enum(["fit", "watch", "do-not-dip", "not-checked"]),
    name: label.optional(),
    reason: words.optional(),
  }),
};
