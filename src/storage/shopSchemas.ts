import { z } from "zod";
import type { RecipeBodies, RoomBodies, ShopBodies } from "../logbook/entries/shopBodies.ts";
import {
  currency,
  flag,
  id,
  kind,
  note,
  packed,
  packedSeconds,
  price,
  sameLength,
  share,
  short,
  tempC,
  uneven,
  upTo,
  words,
} from "./schemaParts.ts";

const air = z.enum(["still", "draught", "room-fan", "rack-fan", "strong", "tunnel"]);
const pressure = { low: 10_000, high: 200_000 };
const figure = upTo(1000).nullable().optional();
const perKind = z.strictObject({ prime: figure, intermediate: figure, backup: figure, seal: figure });
const density = upTo(1e5).optional();
const leastDryH = upTo(10_000).optional();

type Bodies = RoomBodies & RecipeBodies & ShopBodies;

/** Rooms, recipes and what the shop calls its own. */
export const shopSchemas = {
  "room-set": z.strictObject({ name: short, altitudeM: z.number().min(-1000).max(10_000), retired: flag }),
  "air-read": z.strictObject({
    airC: tempC,
    rh: share,
    air,
    pressurePa: z.number().min(pressure.low).max(pressure.high).optional(),
    sensor: z.string().max(200).optional(),
    note,
  }),
  "air-logged": z
    .strictObject({
      source: short,
      air: air.nullable(),
      afterS: packedSeconds,
      airC: packed({ low: -60, high: 2500 }),
      rh: packed({ low: 0, high: 1 }),
      pressurePa: packed(pressure).optional(),
    })
    .refine(({ afterS, airC, rh, pressurePa }) => sameLength(afterS, airC, rh, pressurePa), uneven),
  "recipe-set": z.strictObject({
    name: short,
    coats: z
      .array(z.strictObject({ kind, stuccoId: id.nullable(), targetDryness: share, leastDryH }))
      .max(200),
    morMPa: upTo(1000),
    safetyFactor: upTo(1000),
    floorMm: upTo(1000),
    note,
    copiedFrom: id.optional(),
    retired: flag,
  }),
  "shop-figures-set": z.strictObject({
    dryingFactor: figure,
    morMPa: figure,
    slurryKgM2: perKind.optional(),
    stuccoKgM2: perKind.optional(),
    buildMm: perKind.optional(),
    leastDryH: perKind.optional(),
    finalDryH: z.strictObject({ open: figure, deep: figure, blind: figure }).optional(),
  }),
  "drying-pair-judged": z.strictObject({ coatId: id, leftOut: z.boolean(), reason: words }),
  "cup-set": z.strictObject({ cupId: id, name: short, cup: z.string().max(200), retired: flag }),
  "material-set": z.strictObject({
    materialId: id,
    name: short,
    kind: z.enum(["flour", "sol", "stucco", "water", "metal", "other"]),
    stuccoId: id.optional(),
    flourId: id.optional(),
    pricePerKg: price,
    currency,
    weeksToCome: upTo(10_000).optional(),
    packKg: upTo(1e7).optional(),
    keepsMonths: upTo(10_000).optional(),
    retired: flag,
  }),
  "stock-moved": z.strictObject({
    materialId: id,
    how: z.enum(["received", "made-up", "dipped-out", "lost", "thrown-away", "counted"]),
    massKg: upTo(1e7),
    bucketId: id.optional(),
    note,
  }),
  "kiln-set": z.strictObject({
    kilnId: id,
    name: short,
    heat: z.enum(["electric", "gas"]),
    powerKW: upTo(1e5),
    volumeL: upTo(1e7),
    maxC: tempC,
    maxRampKPerH: upTo(1e5).optional(),
    pricePerKWh: price,
    currency,
    retired: flag,
  }),
  "furnace-set": z.strictObject({
    furnaceId: id,
    name: short,
    heat: z.enum(["propane", "natural-gas", "electric", "induction"]),
    powerKW: upTo(1e5),
    efficiency: share.optional(),
    crucibleL: upTo(1e5).optional(),
    pricePerKWh: price,
    currency,
    retired: flag,
  }),
  "alloy-set": z.strictObject({
    alloyId: id,
    copiedFrom: id.nullable(),
    name: short,
    densityKgM3: density,
    liquidDensityKgM3: density,
    solidusC: tempC.optional(),
    liquidusC: tempC.optional(),
    pourLowC: tempC.optional(),
    pourHighC: tempC.optional(),
    shrink: share.optional(),
    latentJKg: upTo(1e7).optional(),
    solidJKgK: upTo(1e5).optional(),
    liquidJKgK: upTo(1e5).optional(),
    note,
    retired: flag,
  }),
  "shrink-measured": z.strictObject({
    alloyId: id,
    patternMm: upTo(1e5),
    castingMm: upTo(1e5),
    held: z.enum(["free", "restrained"]),
    pieceId: id.optional(),
  }),
} satisfies { readonly [T in keyof Bodies]: z.ZodType<Bodies[T]> };
