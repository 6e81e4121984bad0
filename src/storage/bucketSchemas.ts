import { z } from "zod";
import type { BucketBodies } from "../logbook/entries/bucketBodies.ts";
import { flag, id, note, photos, seconds, share, short, tempC, upTo, words } from "./schemaParts.ts";

const kg = upTo(1e6);
const litre = upTo(1e6);
const gCm3 = upTo(20).optional();
const makings = { flourKg: kg, solKg: kg, waterKg: kg, solSilica: share.optional() };

export const bucketSchemas = {
  "bucket-set": z.strictObject({
    name: short,
    use: z.enum(["prime", "backup", "single", "seal"]),
    slurry: z.string().max(200),
    retired: flag,
    flourId: id.optional(),
    flourGCm3: gCm3,
    solGCm3: gCm3,
    solSilica: share.optional(),
    ratio: upTo(1000).optional(),
    fullL: litre.optional(),
    leastL: litre.optional(),
    openM2: upTo(1000).optional(),
    densityGCm3: gCm3,
    cupId: id.optional(),
    lowS: seconds.optional(),
    highS: seconds.optional(),
    slurryC: tempC.optional(),
    leastDryH: upTo(10_000).optional(),
  }),
  "bucket-read": z.strictObject({
    cup: z.string().max(200).optional(),
    cupId: id.optional(),
    cupS: seconds.optional(),
    dipsS: z.array(seconds).max(20).optional(),
    slurryC: tempC.optional(),
    densityGCm3: gCm3,
    weighedG: upTo(1e8).optional(),
    weighedMl: upTo(1e8).optional(),
    pH: upTo(14).optional(),
    liquorGCm3: gCm3,
    ovenSolids: share.optional(),
    plateG: upTo(1e6).optional(),
    plateCm2: upTo(1e6).optional(),
    gelledAfterH: upTo(1e6).optional(),
    liquidForH: upTo(1e6).optional(),
    bacteriaPerMl: upTo(1e15).optional(),
    smell: z.enum(["none", "foul"]).optional(),
    skin: flag,
    lumps: flag,
    foam: flag,
    asLeft: flag,
    name: z.string().max(200).optional(),
    note,
    photos,
  }),
  "bucket-mixed": z.strictObject({ ...makings, litre: litre.optional(), note }),
  "bucket-topped": z.strictObject({
    ...makings,
    why: z.enum(["evaporation", "correction", "fresh"]),
    lid: z.enum(["on", "off"]).optional(),
    expected: z.strictObject({ densityGCm3: gCm3, cupS: seconds.optional() }).optional(),
    note,
  }),
  "bucket-lost": z.strictObject({ litre, how: z.enum(["lost", "thrown-away"]), note }),
  "bucket-counted": z.strictObject({ litre, note }),
  "bucket-passed": z.strictObject({
    verdict: z.enum(["fit", "watch", "do-not-dip", "not-checked"]),
    name: z.string().max(200).optional(),
    reason: words.optional(),
  }),
} satisfies { readonly [T in keyof BucketBodies]: z.ZodType<BucketBodies[T]> };
