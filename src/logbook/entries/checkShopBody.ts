import type { Check } from "./bodyFaults.ts";
import { first, number, packedFault, text } from "./bodyFaults.ts";
import { ranges } from "./ranges.ts";
import type { RecipeBodies, RoomBodies, ShopBodies } from "./shopBodies.ts";

type Checks = { readonly [T in keyof (RoomBodies & RecipeBodies & ShopBodies)]: Check<T> };

/** Rooms, recipes and what the shop calls its own. */
export const shopChecks: Checks = {
  "room-set": ({ name, altitudeM }) =>
    first(text("name", name), number("altitudeM", altitudeM, ranges.altitudeM)),
  "air-read": ({ airC, rh, pressurePa }) =>
    first(
      number("airC", airC, ranges.airC),
      number("rh", rh, ranges.rh),
      number("pressurePa", pressurePa, ranges.pressurePa),
    ),
  "air-logged": ({ source, afterS, airC, rh, pressurePa }) =>
    first(
      text("source", source),
      packedFault({
        afterS,
        values: [
          { field: "airC", list: airC, range: ranges.airC },
          { field: "rh", list: rh, range: ranges.rh },
          { field: "pressurePa", list: pressurePa, range: ranges.pressurePa },
        ],
      }),
    ),
  "recipe-set": ({ name, coats, morMPa, safetyFactor, floorMm }) =>
    first(
      text("name", name),
      number("coats", coats.length, ranges.recipeCoats),
      ...coats.map(({ targetDryness }) => number("targetDryness", targetDryness, ranges.targetDryness)),
      ...coats.map(({ leastDryH }) => number("leastDryH", leastDryH, ranges.leastDryH)),
      number("morMPa", morMPa, ranges.morMPa),
      number("safetyFactor", safetyFactor, ranges.safetyFactor),
      number("floorMm", floorMm, ranges.floorMm),
    ),
  "shop-figures-set": ({ dryingFactor, morMPa, slurryKgM2 = {}, stuccoKgM2 = {}, buildMm = {}, ...least }) =>
    first(
      number("dryingFactor", dryingFactor, ranges.dryingFactor),
      number("morMPa", morMPa, ranges.morMPa),
      ...Object.values(slurryKgM2).map((own) => number("slurryKgM2", own, ranges.coatKgM2)),
      ...Object.values(stuccoKgM2).map((own) => number("stuccoKgM2", own, ranges.coatKgM2)),
      ...Object.values(buildMm).map((own) => number("buildMm", own, ranges.buildMm)),
      ...Object.values(least.leastDryH ?? {}).map((own) => number("leastDryH", own, ranges.leastDryH)),
      ...Object.values(least.finalDryH ?? {}).map((own) => number("finalDryH", own, ranges.finalDryH)),
    ),
  "drying-pair-judged": ({ leftOut, reason }) => (leftOut ? text("reason", reason) : null),
  "cup-set": ({ cupId, name, cup }) => first(text("cupId", cupId), text("name", name), text("cup", cup)),
  "material-set": ({ name, materialId, pricePerKg, weeksToCome, packKg, keepsMonths }) =>
    first(
      text("name", name),
      text("materialId", materialId),
      number("pricePerKg", pricePerKg, ranges.price),
      number("weeksToCome", weeksToCome, ranges.weeks),
      number("packKg", packKg, ranges.stockKg),
      number("keepsMonths", keepsMonths, ranges.months),
    ),
  "stock-moved": ({ materialId, massKg }) =>
    first(text("materialId", materialId), number("stockKg", massKg, ranges.stockKg)),
  "kiln-set": ({ kilnId, name, powerKW, volumeL, maxC, maxRampKPerH, pricePerKWh }) =>
    first(
      text("kilnId", kilnId),
      text("name", name),
      number("powerKW", powerKW, ranges.powerKW),
      number("volumeL", volumeL, ranges.kilnL),
      number("maxC", maxC, ranges.kilnMaxC),
      number("maxRampKPerH", maxRampKPerH, ranges.rateKPerH),
      number("pricePerKWh", pricePerKWh, ranges.price),
    ),
  "furnace-set": ({ furnaceId, name, powerKW, efficiency, crucibleL, pricePerKWh }) =>
    first(
      text("furnaceId", furnaceId),
      text("name", name),
      number("powerKW", powerKW, ranges.powerKW),
      number("efficiency", efficiency, ranges.efficiency),
      number("crucibleL", crucibleL, ranges.crucibleL),
      number("pricePerKWh", pricePerKWh, ranges.price),
    ),
  "alloy-set": ({ alloyId, name, ...alloy }) =>
    first(
      text("alloyId", alloyId),
      text("name", name),
      number("densityKgM3", alloy.densityKgM3, ranges.densityKgM3),
      number("liquidDensityKgM3", alloy.liquidDensityKgM3, ranges.densityKgM3),
      number("solidusC", alloy.solidusC, ranges.meltsC),
      number("liquidusC", alloy.liquidusC, {
        low: alloy.solidusC ?? ranges.meltsC.low,
        high: ranges.meltsC.high,
      }),
      number("pourLowC", alloy.pourLowC, ranges.metalC),
      number("pourHighC", alloy.pourHighC, {
        low: alloy.pourLowC ?? ranges.metalC.low,
        high: ranges.metalC.high,
      }),
      number("shrink", alloy.shrink, ranges.shrink),
      number("latentJKg", alloy.latentJKg, ranges.latentJKg),
      number("solidJKgK", alloy.solidJKgK, ranges.metalJKgK),
      number("liquidJKgK", alloy.liquidJKgK, ranges.metalJKgK),
    ),
  "shrink-measured": ({ alloyId, patternMm, castingMm }) =>
    first(
      text("alloyId", alloyId),
      number("patternMm", patternMm, ranges.gaugeMm),
      // A casting is smaller than its pattern but never by a tenth; held fast it may measure a hair more.
      number("castingMm", castingMm, { low: 0.9 * patternMm, high: 1.02 * patternMm }),
    ),
};
