import fc from "fast-check";
import { aNumber, anId, maybe, orNull, someNumbers, someSeconds, someText } from "./anyValues.ts";
import type { BucketBodies } from "../../src/logbook/entries/bucketBodies.ts";
import type { RecipeBodies, RoomBodies, ShopBodies } from "../../src/logbook/entries/shopBodies.ts";

type Bodies = RoomBodies & RecipeBodies & BucketBodies & ShopBodies;

const thing = { name: someText, retired: maybe(fc.boolean()) };
const makings = { flourKg: aNumber, solKg: aNumber, waterKg: aNumber, solSilica: maybe(aNumber) };
const perKind = maybe(fc.record({ prime: maybe(orNull(aNumber)), seal: maybe(orNull(aNumber)) }));
const air = fc.constantFrom("still" as const, "tunnel" as const);

/** For tests only: bodies of rooms, recipes, buckets and the shop. */
export const anyShopBodies: { readonly [T in keyof Bodies]: fc.Arbitrary<Bodies[T]> } = {
  "room-set": fc.record({ name: someText, altitudeM: aNumber }),
  "air-read": fc.record({ airC: aNumber, rh: aNumber, air, pressurePa: maybe(aNumber) }),
  "air-logged": fc.record({
    source: someText,
    air: orNull(air),
    afterS: someSeconds,
    airC: someNumbers,
    rh: someNumbers,
    pressurePa: maybe(someNumbers),
  }),
  "recipe-set": fc.record({
    name: someText,
    coats: fc.array(
      fc.record({
        kind: fc.constantFrom("prime" as const, "seal" as const),
        stuccoId: orNull(anId),
        targetDryness: aNumber,
        leastDryH: maybe(aNumber),
      }),
      { maxLength: 3 },
    ),
    morMPa: aNumber,
    safetyFactor: aNumber,
    floorMm: aNumber,
  }),
  "bucket-set": fc.record({
    name: someText,
    use: fc.constantFrom("prime" as const, "seal" as const),
    slurry: someText,
    retired: maybe(fc.boolean()),
    lowS: maybe(aNumber),
    leastDryH: maybe(aNumber),
    cupId: maybe(anId),
  }),
  "bucket-read": fc.record({
    cupS: maybe(aNumber),
    dipsS: maybe(someNumbers),
    densityGCm3: maybe(aNumber),
    asLeft: maybe(fc.boolean()),
  }),
  "bucket-mixed": fc.record({ ...makings, litre: maybe(aNumber) }),
  "bucket-topped": fc.record({
    ...makings,
    why: fc.constantFrom("evaporation" as const, "fresh" as const),
    expected: maybe(fc.record({ cupS: maybe(aNumber) })),
  }),
  "bucket-lost": fc.record({ litre: aNumber, how: fc.constantFrom("lost" as const, "thrown-away" as const) }),
  "bucket-counted": fc.record({ litre: aNumber }),
  "bucket-passed": fc.record({ verdict: fc.constantFrom("fit" as const, "do-not-dip" as const) }),
  "shop-figures-set": fc.record({
    dryingFactor: maybe(orNull(aNumber)),
    morMPa: maybe(orNull(aNumber)),
    slurryKgM2: perKind,
    stuccoKgM2: perKind,
    buildMm: perKind,
    leastDryH: perKind,
    finalDryH: maybe(fc.record({ open: maybe(orNull(aNumber)), blind: maybe(orNull(aNumber)) })),
  }),
  "drying-pair-judged": fc.record({ coatId: anId, leftOut: fc.boolean(), reason: someText }),
  "cup-set": fc.record({ ...thing, cupId: anId, cup: someText }),
  "material-set": fc.record({
    ...thing,
    materialId: anId,
    kind: fc.constantFrom("flour" as const, "metal" as const),
    pricePerKg: maybe(aNumber),
  }),
  "stock-moved": fc.record({
    materialId: anId,
    how: fc.constantFrom("received" as const, "counted" as const),
    massKg: aNumber,
  }),
  "kiln-set": fc.record({
    ...thing,
    kilnId: anId,
    heat: fc.constant("gas" as const),
    powerKW: aNumber,
    volumeL: aNumber,
    maxC: aNumber,
  }),
  "furnace-set": fc.record({
    ...thing,
    furnaceId: anId,
    heat: fc.constant("induction" as const),
    powerKW: aNumber,
    efficiency: maybe(aNumber),
  }),
  "alloy-set": fc.record({
    ...thing,
    alloyId: anId,
    copiedFrom: orNull(anId),
    shrink: maybe(aNumber),
    latentJKg: maybe(aNumber),
    solidJKgK: maybe(aNumber),
    liquidJKgK: maybe(aNumber),
  }),
  "shrink-measured": fc.record({
    alloyId: anId,
    patternMm: aNumber,
    castingMm: aNumber,
    held: fc.constant("free" as const),
  }),
};
