import { z } from "zod";
import type { EntryBodies, EntryType } from "../logbook/entry.ts";

// Limits are wide on purpose: they keep nonsense out of the log, the rules judge what is sensible.
const id = z.string().min(1).max(64);
const short = z.string().min(1).max(200);
const words = z.string().max(4000);
const tempC = z.number().min(-60).max(2500);
const share = z.number().min(0).max(1);
const seconds = z.number().min(0).max(86_400);
const count = z.int().min(1).max(200);
const step = z.int().min(0).max(199);
const photos = z.array(id).max(50).optional();
const note = words.optional();
const kind = z.enum(["prime", "intermediate", "backup", "seal"]);

const part = z.discriminatedUnion("kind", [
  z.strictObject({
    kind: z.literal("flat"),
    widthMm: z.number().min(0).max(20_000),
    lengthMm: z.number().min(0).max(20_000),
  }),
  z.strictObject({ kind: z.literal("round"), diameterMm: z.number().min(0).max(20_000) }),
]);

const planFields = {
  material: z.enum(["wax", "pla", "pvb", "resin", "foam", "other"]),
  alloyId: id,
  metalKg: z.number().min(0).max(100_000),
  metalLitre: z.number().min(0).max(100_000),
  headM: z.number().min(0).max(50),
  part,
  areaM2: z.number().min(0).max(1000),
  recipeId: id,
  geometry: z.enum(["open", "corner", "recess", "blind"]),
  note: words,
};
const plan = z.strictObject({ name: short, ...z.object(planFields).partial().shape });
const cleared = <T extends z.ZodType>(field: T) => field.nullable().optional();
const changes = z.strictObject({
  name: short.nullable().exactOptional(),
  material: cleared(planFields.material),
  alloyId: cleared(planFields.alloyId),
  metalKg: cleared(planFields.metalKg),
  metalLitre: cleared(planFields.metalLitre),
  headM: cleared(planFields.headM),
  part: cleared(part),
  areaM2: cleared(planFields.areaM2),
  recipeId: cleared(planFields.recipeId),
  geometry: cleared(planFields.geometry),
  note: cleared(words),
});

/** What each type of entry may carry; anything more, less or beyond its limits is not an entry of ours. */
export const bodySchemas = {
  "piece-started": z.strictObject({ plan, roomId: id }),
  "piece-changed": z.strictObject({ changes }),
  "piece-moved": z.strictObject({ roomId: id }),
  "coat-dipped": z.strictObject({
    number: count,
    step: step.nullable(),
    kind,
    stuccoId: id.nullable(),
    bucketId: id.nullable(),
    roomId: id,
    prewet: z.boolean(),
    drainS: seconds.optional(),
    dipId: id.optional(),
    acceptedDamp: z.strictObject({ coatId: id, leftShare: share.nullable() }).optional(),
    note,
    photos,
  }),
  "coat-redipped": z.strictObject({ coatId: id, note }),
  "coat-skipped": z.strictObject({ step, reason: words }),
  "dryness-seen": z.discriminatedUnion("method", [
    z.strictObject({ method: z.literal("touch"), verdict: z.enum(["dry", "damp", "wet"]), coatId: id }),
    z.strictObject({ method: z.literal("weight"), massG: z.number().min(0).max(1e8), coatId: id }),
    z.strictObject({ method: z.literal("surface"), surfaceC: tempC, coatId: id }),
  ]),
  "wall-measured": z.strictObject({ wallMm: z.number().min(0).max(1000), where: words.optional() }),
  "crack-found": z.strictObject({
    kind: z.enum(["hairline", "open", "chip", "lift"]),
    stage: z.enum(["coating", "burnout", "firing", "other"]),
    where: words,
    photos,
  }),
  "crack-patched": z.strictObject({ crackId: id, how: words }),
  "wire-wrapped": z.strictObject({ note: words }),
  "review-signed": z.strictObject({
    name: z.string().max(200),
    verdict: z.enum(["hold", "watch", "clear"]),
    passed: z.array(z.strictObject({ rule: id, reason: words })).max(100),
    safety: z.number().min(0).max(1e6).nullable(),
  }),
  "burnout-started": z.strictObject({ note }),
  "burnout-read": z.strictObject({ kilnC: tempC, note }),
  "burnout-ended": z.strictObject({ result: z.enum(["clean", "residue", "stopped"]), note }),
  "shell-fired": z.strictObject({ peakC: tempC, holdMin: z.number().min(0).max(100_000) }),
  "shell-preheated": z.strictObject({ shellC: tempC, note }),
  "metal-poured": z.strictObject({
    metalC: tempC.nullable(),
    shellC: tempC.nullable(),
    massKg: z.number().min(0).max(100_000).nullable(),
    outOfKilnMin: z.number().min(0).max(100_000).nullable(),
    note,
  }),
  "shell-knocked-out": z.strictObject({ note }),
  "piece-finished": z.strictObject({ note: words }),
  "outcome-told": z.strictObject({
    result: z.enum(["sound", "flawed", "lost"]),
    defects: z.array(z.string().max(200)).max(100),
    note,
    photos,
  }),
  "piece-scrapped": z.strictObject({ reason: words }),
  "piece-archived": z.strictObject({ archived: z.boolean() }),
  "note-written": z.strictObject({ text: words, photos }),
  "room-set": z.strictObject({
    name: short,
    altitudeM: z.number().min(-1000).max(10_000),
    retired: z.boolean().optional(),
  }),
  "air-read": z.strictObject({
    airC: tempC,
    rh: share,
    air: z.enum(["still", "draught", "room-fan", "rack-fan", "strong", "tunnel"]),
    note,
  }),
  "bucket-set": z.strictObject({
    name: short,
    use: z.enum(["prime", "backup", "single", "seal"]),
    slurry: z.string().max(200),
    retired: z.boolean().optional(),
  }),
  "bucket-read": z.strictObject({
    cup: z.string().max(200).optional(),
    cupS: seconds.optional(),
    slurryC: tempC.optional(),
    densityGCm3: z.number().min(0).max(20).optional(),
    pH: z.number().min(0).max(14).optional(),
    note,
  }),
  "recipe-set": z.strictObject({
    name: short,
    coats: z.array(z.strictObject({ kind, stuccoId: id.nullable(), targetDryness: share })).max(200),
    morMPa: z.number().min(0).max(1000),
    safetyFactor: z.number().min(0).max(1000),
    floorMm: z.number().min(0).max(1000),
    note,
    copiedFrom: id.optional(),
    retired: z.boolean().optional(),
  }),
  "shop-figures-set": z.strictObject({
    dryingFactor: z.number().min(0).max(1000).nullable().optional(),
    morMPa: z.number().min(0).max(1000).nullable().optional(),
  }),
  "entry-struck": z.strictObject({ struckId: id, reason: words, replacedBy: id.optional() }),
} satisfies { readonly [T in EntryType]: z.ZodType<EntryBodies[T]> };
