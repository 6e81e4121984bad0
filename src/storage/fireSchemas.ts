import { z } from "zod";
import type { MeltBodies, PourBodies, RunBodies } from "../logbook/entries/fireBodies.ts";
import {
  energy,
  flag,
  id,
  ids,
  minutes,
  note,
  packed,
  packedSeconds,
  sameLength,
  short,
  tempC,
  uneven,
  upTo,
  words,
} from "./schemaParts.ts";

const reason = words.optional();
const segment = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("ramp"), toC: tempC, rateKPerH: upTo(1e5), reason }),
  z.strictObject({ kind: z.literal("hold"), atC: tempC, minutes, reason }),
  z.strictObject({
    kind: z.literal("instruction"),
    code: id,
    minutes: minutes.optional(),
    text: words.optional(),
  }),
]);
const segments = z.array(segment).max(200);
const family = z.enum(["fused-silica", "aluminosilicate", "zircon", "quartz"]);
const basis = z.strictObject({
  route: z.enum(["flash", "staged"]),
  pattern: z
    .strictObject({
      material: z.enum(["wax", "pla", "pvb", "resin", "foam", "pu-foam", "other"]),
      massKg: upTo(1e5),
    })
    .nullable(),
  waxLeaves: z.enum(["floor", "tray", "no"]).optional(),
  isFilm: z.boolean().optional(),
  wallMm: upTo(1e4),
  family,
  shellKg: upTo(1e5),
  damp: z.enum(["dry", "damp", "patched-wet"]),
  firedBefore: z.boolean(),
  seenAbove1100: z.boolean(),
  blindMm: upTo(1e5),
  kiln: z.strictObject({
    powerKW: upTo(1e5),
    maxC: tempC,
    volumeL: upTo(1e7),
    maxRateKPerH: upTo(1e5).optional(),
  }),
  after: z.enum(["inspect", "pour"]),
  preheatC: tempC.nullable(),
  fireC: tempC.nullable(),
});
const pourTold = z.strictObject({
  family,
  people: z.int().min(1).max(1000),
  carryMin: minutes,
  metalKg: upTo(1e5).nullable(),
  thinnestMm: z.array(upTo(1e5).nullable()).max(200),
});
const latestMs = Date.UTC(2200, 0, 1);
const goBound = z.strictObject({
  pourAt: z.int().min(0).max(latestMs),
  pieceIds: ids,
  shellC: tempC,
  metalC: tempC,
  alloyId: id.nullable(),
  meltId: id.nullable(),
  holds: z.array(z.strictObject({ pieceId: id, rule: id, variant: id, entries: ids })).max(1000),
  open: z.array(z.strictObject({ item: id, why: ids })).max(200),
  ticks: ids,
});

type Bodies = RunBodies & MeltBodies & PourBodies;

export const fireSchemas = {
  "run-planned": z.strictObject({
    kilnId: id.nullable(),
    purpose: z.enum(["burnout", "firing", "preheat"]),
    pieceIds: ids,
    startC: tempC,
    segments,
    basis: basis.optional(),
    note,
  }),
  "run-changed": z.strictObject({ segments, note }),
  "run-started": z.strictObject({ kilnC: tempC.nullable() }),
  "run-read": z.strictObject({ kilnC: tempC }),
  "run-logged": z
    .strictObject({ source: short, afterS: packedSeconds, kilnC: packed({ low: -60, high: 2500 }) })
    .refine(({ afterS, kilnC }) => sameLength(afterS, kilnC), uneven),
  "run-step-done": z.strictObject({ segment: z.int().min(0).max(199), note }),
  "run-ended": z.strictObject({ result: z.enum(["done", "stopped"]), ...energy, note }),
  "melt-planned": z.strictObject({
    furnaceId: id.nullable(),
    alloyId: id,
    pieceIds: ids,
    items: z.array(z.strictObject({ name: short, massKg: upTo(1e5), alloyId: id.nullable() })).max(200),
    pourC: tempC,
    mayHold: z
      .array(z.strictObject({ element: id, low: upTo(1), high: upTo(1) }))
      .max(50)
      .optional(),
    note,
  }),
  "melt-started": z.strictObject({ hotFurnace: z.boolean(), weighedKg: upTo(1e5).optional() }),
  "melt-read": z.strictObject({ metalC: tempC }),
  "melt-ended": z.strictObject({
    pouredKg: upTo(1e5),
    piggedKg: upTo(1e5),
    dropped: flag,
    ...energy,
    note,
  }),
  "pour-planned": z.strictObject({
    pourAt: z.int().min(0).max(latestMs),
    pieceIds: ids,
    runId: id.optional(),
    meltId: id.optional(),
    bed: z.enum(["air", "cold-sand", "hot-sand"]),
    sandC: tempC.optional(),
    shellC: tempC,
    metalC: tempC,
    steps: z
      .array(
        z.strictObject({
          id,
          track: z.enum(["shell", "sand", "tools", "metal", "people"]),
          minutes,
          keepsMin: minutes.nullable(),
        }),
      )
      .max(200),
    told: pourTold.optional(),
    note,
  }),
  "pour-step-marked": z.strictObject({ step: id, state: z.enum(["started", "done"]) }),
  "pour-item-checked": z.strictObject({ item: id, ok: z.boolean(), note }),
  "pour-decided": z.strictObject({
    go: z.boolean(),
    name: z.string().max(200),
    passed: z.array(z.strictObject({ item: id, reason: words })).max(200),
    bound: goBound.optional(),
  }),
  "pour-ended": z.strictObject({ dropped: flag, note }),
} satisfies { readonly [T in keyof Bodies]: z.ZodType<Bodies[T]> };
