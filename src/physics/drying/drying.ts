import { saturationDeficitGM3 } from "../air/air.ts";
import type { WetLayer } from "./coat.ts";
import { readyWaterKgM2, requireCoat } from "./coat.ts";
import { frostC, tooDampRh } from "./dryStep.ts";
import type { MovingAir } from "../air/film.ts";
import { resistances } from "../air/film.ts";
import { doseBetween } from "./front.ts";

/**
 * Hours until a coat is ready in constant air, >= 0, or null where it never will be: rh above 0.80, or a wet
 * surface below 1 °C, where the sol freezes.
 *
 * Series resistances with a receding front (see `front.ts`); within 2 % of a full
 * numerical solution in shop air. The
 * figures that go in leave the absolute time uncertain by a factor of about 1.45: show a range.
 */
export function dryingHours(from: WetLayer & MovingAir & { readonly pocketSM: number }): number | null {
  requireCoat(from);
  const parts = resistances(from);
  const deficitKgM3 = saturationDeficitGM3(from) / 1000;
  if (from.rh > tooDampRh || deficitKgM3 <= 0 || parts.wetSurfaceC < frostC) return null;
  const dose = doseBetween({ fromKgM2: from.waterKgM2, toKgM2: readyWaterKgM2(from) }, from, parts);
  return dose / deficitKgM3 / 3600;
}
