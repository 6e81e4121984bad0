import { requirePositive, requireWithin } from "../stats/range.ts";

/** Density of the amorphous silica of a sol, g/cm³ (from memory of Iler, The Chemistry of Silica). */
export const silicaGCm3 = 2.2;

/** Density of a silica sol, g/cm³, from its mass fraction of silica 0–0.6; the volumes of silica and water add up (derived). */
export function solDensityGCm3({
  silica,
  waterGCm3 = 1,
}: {
  silica: number;
  waterGCm3?: number | undefined;
}): number {
  requireWithin("silica", silica, { low: 0, high: 0.6, unit: "(a fraction, not percent)" });
  requireWater(waterGCm3);
  return 1 / (silica / silicaGCm3 + (1 - silica) / waterGCm3);
}

export type LiquorSilica =
  | { readonly ok: true; readonly silica: number }
  | {
      readonly ok: false;
      readonly code: "liquor-not-a-sol";
      readonly liquorGCm3: number;
      readonly lowGCm3: number;
      readonly highGCm3: number;
    };

/**
 * Mass fraction of silica in the clear liquor, from its density, g/cm³.
 *
 * Refuses a liquor lighter than water or heavier than 60 % silica. A label's "1.20" gives 30.6 %: salts and
 * rounding; the difference from a fresh sample of one's own lot is worth more than the number.
 */
export function liquorSilica({
  liquorGCm3,
  waterGCm3 = 1,
}: {
  liquorGCm3: number;
  waterGCm3?: number | undefined;
}): LiquorSilica {
  requireDensity("liquorGCm3", liquorGCm3);
  requireWater(waterGCm3);
  const highGCm3 = solDensityGCm3({ silica: 0.6, waterGCm3 });
  if (liquorGCm3 < waterGCm3 || liquorGCm3 > highGCm3)
    return { ok: false, code: "liquor-not-a-sol", liquorGCm3, lowGCm3: waterGCm3, highGCm3 };
  return { ok: true, silica: (1 / waterGCm3 - 1 / liquorGCm3) / (1 / waterGCm3 - 1 / silicaGCm3) };
}

/** Throws a RangeError unless the density is one of g/cm³ (kg/m³ is caught). */
export function requireDensity(name: string, value: number): void {
  requireWithin(name, value, { low: 0.5, high: 20, unit: "g/cm³ (not kg/m³)" });
}

export function requireWater(waterGCm3: number): void {
  requireWithin("waterGCm3", waterGCm3, { low: 0.95, high: 1.01, unit: "g/cm³" });
}

export function requireVolume(volumeL: number): void {
  requirePositive("volumeL", volumeL, { high: 100_000, unit: "L" });
}
