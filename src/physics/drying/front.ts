import type { WetLayer } from "./coat.ts";
import type { Resistances } from "../air/film.ts";
import { requireResistances } from "../air/film.ts";
import { requirePositive, requireWithin } from "../stats/range.ts";

/*
 * Two stages with closed forms, derived from dW/dt = −Δρ/(A + G + B·δ).
 * Wet face (W >= Wc): δ = 0. Below Wc a dry front stands at δ = H·y with y = 1 − W/Wc.
 * The "dose" is ∫Δρ dt, kg·s/m³; at constant resistances it depends on the water alone, so a changing
 * history is walked without any time-step error. Water that settles again is drawn back into the pores:
 * the state is W alone, and the front comes back out as W grows.
 */

/** Dose that takes the coat from one water content to a lower one, kg·s/m³; 0 where it is not lower. */
export function doseBetween(
  { fromKgM2, toKgM2 }: { fromKgM2: number; toKgM2: number },
  { criticalKgM2, depthM }: Pick<WetLayer, "criticalKgM2" | "depthM">,
  parts: Resistances,
): number {
  requireWater({ fromKgM2, toKgM2 });
  requireLayer({ criticalKgM2, depthM });
  requireResistances(parts);
  if (toKgM2 >= fromKgM2) return 0;
  const { surfaceSM, pocketSM, layerSM2 } = parts;
  const outerSM = surfaceSM + pocketSM;
  const wet = Math.max(0, fromKgM2 - Math.max(toKgM2, criticalKgM2)) * outerSM;
  const begin = Math.max(0, 1 - fromKgM2 / criticalKgM2);
  const end = Math.max(0, 1 - toKgM2 / criticalKgM2);
  const mean = outerSM + (layerSM2 * depthM * (begin + end)) / 2;
  return wet + criticalKgM2 * (end - begin) * mean;
}

/** Water left after a dose, kg/m², never under `floorKgM2` (nor above what it was). */
export function waterAfterDose(
  { waterKgM2, dose, floorKgM2 }: { waterKgM2: number; dose: number; floorKgM2: number },
  { criticalKgM2, depthM }: Pick<WetLayer, "criticalKgM2" | "depthM">,
  parts: Resistances,
): number {
  requireWater({ waterKgM2, floorKgM2 });
  requireLayer({ criticalKgM2, depthM });
  requireWithin("dose", dose, { low: 0, high: 1e24, unit: "kg·s/m³" });
  requireResistances(parts);
  if (waterKgM2 <= floorKgM2 || dose <= 0) return waterKgM2;
  const { surfaceSM, pocketSM, layerSM2 } = parts;
  const outerSM = surfaceSM + pocketSM;
  const wetDose = Math.max(0, waterKgM2 - criticalKgM2) * outerSM;
  if (dose <= wetDose) return Math.max(floorKgM2, waterKgM2 - dose / outerSM);
  const begin = Math.max(0, 1 - waterKgM2 / criticalKgM2);
  const layerSM = layerSM2 * depthM;
  const root = outerSM + layerSM * begin;
  const push = (2 * (dose - wetDose)) / criticalKgM2;
  // The quadratic's root, in the form that also holds for a layer of no depth.
  const step = push / (root + Math.sqrt(root * root + layerSM * push));
  // The way through the share can round up; a coat must not grow wetter by a last digit.
  return Math.max(floorKgM2, Math.min(waterKgM2, criticalKgM2 * (1 - begin - step)));
}

/** In the hot loop of every coat: one look, and words only where it fails. */
function requireWater(water: Readonly<Record<string, number>>): void {
  for (const name in water) {
    const kgM2 = water[name] ?? NaN;
    if (!(kgM2 >= 0 && kgM2 <= 1e15)) requireWithin(name, kgM2, { low: 0, high: 1e15, unit: "kg/m²" });
  }
}

function requireLayer({ criticalKgM2, depthM }: Pick<WetLayer, "criticalKgM2" | "depthM">): void {
  if (criticalKgM2 >= 1e-12 && criticalKgM2 <= 20 && depthM >= 0 && depthM <= 0.3) return;
  requirePositive("criticalKgM2", criticalKgM2, { high: 20, unit: "kg/m²" });
  requireWithin("depthM", depthM, { low: 0, high: 0.3, unit: "m (not mm)" });
}
