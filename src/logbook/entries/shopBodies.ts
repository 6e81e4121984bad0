import { z } from "zod";
import {
  airClass,
  coatKind,
  currency,
  filled,
  flag,
  id,
  label,
  listOf,
  note,
  numberOf,
  short,
  withRules,
  words,
  type Body,
} from "./bodyParts.ts";
import { bucketLimitSpans } from "./bucketLimitRules.ts";
import type { FieldKey } from "./fields.ts";
import { block, packed, packedSeconds } from "./packedParts.ts";
import { ranges } from "./ranges.ts";

export const roomBodies = {
  "room-set": z.strictObject({ name: filled(short), altitudeM: numberOf("altitudeM"), retired: flag }),
  "air-read": z.strictObject({
    airC: numberOf("airC"),
    rh: numberOf("rh"),
    air: airClass,
    /** As measured beside it; the room's altitude stands in where it is left out. */
    pressurePa: numberOf("pressurePa").optional(),
    sensor: label.optional(),
    note,
  }),
  /**
   * Readings of a logger, packed, spanning no more than a day: whole seconds after the entry's own time, rising,
   * with the values of each. `air` null takes the air movement last logged before each reading.
   */
  "air-logged": block(
    z.strictObject({
      source: filled(short),
      air: airClass.nullable(),
      afterS: packedSeconds,
      airC: packed("airC"),
      rh: packed("rh"),
      pressurePa: packed("pressurePa").optional(),
    }),
    ["airC", "rh", "pressurePa"],
  ),
};

export const recipeBodies = {
  /** The shape of `RecipeBody` in the trade's tables, where the starting recipes stand. */
  "recipe-set": z.strictObject({
    name: filled(short),
    coats: listOf(
      "coats",
      z.strictObject({
        kind: coatKind,
        stuccoId: id.nullable(),
        targetDryness: numberOf("targetDryness"),
        leastDryH: numberOf("leastDryH").optional(),
      }),
    ),
    morMPa: numberOf("morMPa"),
    safetyFactor: numberOf("safetyFactor"),
    floorMm: numberOf("floorMm"),
    /** Polymer in its binder. */
    polymer: flag,
    note,
    copiedFrom: id.optional(),
    retired: flag,
  }),
};

const figureOf = (key: FieldKey) => numberOf(key).nullable().optional();
/** The shop's own figure for each kind of coat; a kind left out stays. */
const perKind = (key: FieldKey) =>
  z
    .strictObject({
      prime: figureOf(key),
      intermediate: figureOf(key),
      backup: figureOf(key),
      seal: figureOf(key),
    })
    .optional();
/** What the shop's buckets are judged by, and hours of mixing; one left out stays, null brings the starting value back. */
const bucketLimits = withRules(
  z.strictObject({
    fitLowC: figureOf("fitLowC"),
    fitHighC: figureOf("fitHighC"),
    stopLowC: figureOf("stopLowC"),
    stopHighC: figureOf("stopHighC"),
    ownOffK: figureOf("ownOffK"),
    lightFitGCm3: figureOf("lightFitGCm3"),
    lightStopGCm3: figureOf("lightStopGCm3"),
    heavyFitGCm3: figureOf("heavyFitGCm3"),
    heavyStopGCm3: figureOf("heavyStopGCm3"),
    fitLowPH: figureOf("fitLowPH"),
    fitHighPH: figureOf("fitHighPH"),
    stopPH: figureOf("stopPH"),
    meterPH: figureOf("meterPH"),
    weekDropPH: figureOf("weekDropPH"),
    fitSilica: figureOf("fitSilica"),
    lowestSilica: figureOf("lowestSilica"),
    highestSilica: figureOf("highestSilica"),
    fitGelH: figureOf("fitGelH"),
    stopGelH: figureOf("stopGelH"),
    fitPlateShare: figureOf("fitPlateShare"),
    stopPlateShare: figureOf("stopPlateShare"),
    fitBacteria: figureOf("fitBacteria"),
    stopBacteria: figureOf("stopBacteria"),
    oldDays: figureOf("oldDays"),
    tooOldDays: figureOf("tooOldDays"),
    weeklyShare: figureOf("weeklyShare"),
    primeMadeH: figureOf("primeMadeH"),
    backupMadeH: figureOf("backupMadeH"),
    flourAddedH: figureOf("flourAddedH"),
    waterAddedH: figureOf("waterAddedH"),
  }),
  { limits: bucketLimitSpans },
);
const price = { pricePerKWh: numberOf("pricePerKWh").optional(), currency };

const materialKind = z.enum(["flour", "sol", "stucco", "water", "metal", "other"]);
export type MaterialKind = Body<typeof materialKind>;

/** The shop's own things and figures; each `…-set` replaces the whole of the thing it names. */
export const shopBodies = {
  "shop-figures-set": z.strictObject({
    /** Own drying factor: real hours divided by the model's. */
    dryingFactor: figureOf("dryingFactor"),
    morMPa: figureOf("morMPa"),
    slurryKgM2: perKind("slurryKgM2"),
    stuccoKgM2: perKind("stuccoKgM2"),
    buildMm: perKind("buildMm"),
    /** Hours a coat dries at the least before the next one goes on. */
    leastDryH: perKind("kindLeastDryH"),
    /** Hours the last coat hangs at the least before fire. */
    finalDryH: z
      .strictObject({
        open: figureOf("finalDryH"),
        deep: figureOf("finalDryH"),
        blind: figureOf("finalDryH"),
      })
      .optional(),
    bucketLimits: bucketLimits.optional(),
  }),
  /** A pair the drying factor is learned from is left out, or taken in again. */
  "drying-pair-judged": withRules(z.strictObject({ coatId: id, leftOut: z.boolean(), reason: words }), {
    also: ({ leftOut, reason }) =>
      leftOut && reason.trim() === "" ? { code: "missing", field: "reason" } : null,
  }),
  /** One cup on the wall: no two give the same seconds. `cup` is its kind in the table of cups. */
  "cup-set": z.strictObject({ cupId: filled(id), name: filled(short), cup: filled(label), retired: flag }),
  "material-set": z.strictObject({
    materialId: filled(id),
    name: filled(short),
    kind: materialKind,
    stuccoId: id.optional(),
    flourId: id.optional(),
    pricePerKg: numberOf("pricePerKg").optional(),
    currency,
    weeksToCome: numberOf("weeksToCome").optional(),
    packKg: numberOf("packKg").optional(),
    keepsMonths: numberOf("keepsMonths").optional(),
    retired: flag,
  }),
  "stock-moved": z.strictObject({
    materialId: filled(id),
    how: z.enum(["received", "made-up", "dipped-out", "lost", "thrown-away", "counted"]),
    /** What moved; for `counted`, what is there. */
    massKg: numberOf("stockKg"),
    bucketId: id.optional(),
    note,
  }),
  "kiln-set": z.strictObject({
    kilnId: filled(id),
    name: filled(short),
    heat: z.enum(["electric", "gas"]),
    powerKW: numberOf("powerKW"),
    volumeL: numberOf("volumeL"),
    maxC: numberOf("maxC"),
    maxRampKPerH: numberOf("maxRampKPerH").optional(),
    ...price,
    retired: flag,
  }),
  "furnace-set": z.strictObject({
    furnaceId: filled(id),
    name: filled(short),
    heat: z.enum(["propane", "natural-gas", "electric", "induction"]),
    powerKW: numberOf("powerKW"),
    /** Share of that power that ends in the metal, 0–1; left out: the starting value for its kind. */
    efficiency: numberOf("efficiency").optional(),
    /** Brim volume of the crucible. */
    crucibleL: numberOf("crucibleL").optional(),
    ...price,
    retired: flag,
  }),
  /** The shop's own copy of an alloy: what is given stands in for the table's. */
  "alloy-set": withRules(
    z.strictObject({
      alloyId: filled(id),
      copiedFrom: id.nullable(),
      name: filled(short),
      densityKgM3: numberOf("densityKgM3").optional(),
      liquidDensityKgM3: numberOf("liquidDensityKgM3").optional(),
      solidusC: numberOf("solidusC").optional(),
      liquidusC: numberOf("liquidusC").optional(),
      pourLowC: numberOf("pourLowC").optional(),
      pourHighC: numberOf("pourHighC").optional(),
      shrink: numberOf("shrink").optional(),
      latentJKg: numberOf("latentJKg").optional(),
      /** Mean from room to liquidus. */
      solidJKgK: numberOf("solidJKgK").optional(),
      liquidJKgK: numberOf("liquidJKgK").optional(),
      note,
      retired: flag,
    }),
    {
      limits: ({ solidusC, pourLowC }) => ({
        liquidusC: { low: solidusC ?? ranges.liquidusC.low, high: ranges.liquidusC.high },
        pourHighC: { low: pourLowC ?? ranges.pourHighC.low, high: ranges.pourHighC.high },
      }),
    },
  ),
  "shrink-measured": withRules(
    z.strictObject({
      alloyId: filled(id),
      patternMm: numberOf("patternMm"),
      castingMm: numberOf("castingMm"),
      held: z.enum(["free", "restrained"]),
      pieceId: id.optional(),
    }),
    // A casting is smaller than its pattern but never by a tenth; held fast it may measure a hair more.
    { limits: ({ patternMm }) => ({ castingMm: { low: 0.9 * patternMm, high: 1.02 * patternMm } }) },
  ),
};
