import { requireFraction, requirePositive, requireWithin } from "../stats/range.ts";

/**
 * A wet coat as the drying sum sees it.
 *
 * waterKgM2: water it starts with, kg per m² of outer face; criticalKgM2: water below which the face is no
 * longer wet and the front goes inwards; depthM: depth the front must reach; dryFraction: share of the
 * critical water that must be gone for the coat to count as ready, 0–1.
 */
export type WetLayer = {
  readonly waterKgM2: number;
  readonly criticalKgM2: number;
  readonly depthM: number;
  readonly dryFraction: number;
};

/** How deep fresh slurry soaks into dry coats beneath, mm: about three layers; estimate, 1.5–4. */
export const soakingDepthMm = 2.5;

/** Refuses a coat in grams or millimetres, or with nothing to dry. */
export function requireCoat({ waterKgM2, criticalKgM2, depthM, dryFraction }: WetLayer): void {
  requireWithin("waterKgM2", waterKgM2, { low: 0, high: 20, unit: "kg/m² (not g/m²)" });
  requirePositive("criticalKgM2", criticalKgM2, { high: 20, unit: "kg/m² (not g/m²)" });
  requireWithin("depthM", depthM, { low: 0, high: 0.3, unit: "m (not mm)" });
  requireFraction("dryFraction", dryFraction);
}

/** Water at which the coat counts as ready, kg/m². */
export function readyWaterKgM2({ criticalKgM2, dryFraction }: WetLayer): number {
  requireWithin("criticalKgM2", criticalKgM2, { low: 0, high: 20, unit: "kg/m² (not g/m²)" });
  requireFraction("dryFraction", dryFraction);
  return criticalKgM2 * (1 - dryFraction);
}

/** Depth to be dried, m: the new coat and what its water soaks into beneath it. Both in mm, >= 0. */
export function coatDepthM({ coatMm, beneathMm }: { coatMm: number; beneathMm: number }): number {
  requireWithin("coatMm", coatMm, { low: 0, high: 100, unit: "mm" });
  requireWithin("beneathMm", beneathMm, { low: 0, high: 300, unit: "mm" });
  return (coatMm + Math.min(beneathMm, soakingDepthMm)) / 1000;
}

/**
 * Water of a coat put on before the last one was dry, kg/m²: what was left and what is new, the critical
 * water keeping its share of the sum (0–1, above 0). An assumption; no measurement of it was found.
 */
export function carryOver({
  leftKgM2,
  newKgM2,
  criticalShare,
}: {
  leftKgM2: number;
  newKgM2: number;
  criticalShare: number;
}): { readonly waterKgM2: number; readonly criticalKgM2: number } {
  requireWithin("leftKgM2", leftKgM2, { low: 0, high: 10, unit: "kg/m² (not g/m²)" });
  requirePositive("newKgM2", newKgM2, { high: 10, unit: "kg/m² (not g/m²)" });
  requirePositive("criticalShare", criticalShare, { high: 1, unit: "(a fraction)" });
  const waterKgM2 = leftKgM2 + newKgM2;
  return { waterKgM2, criticalKgM2: waterKgM2 * criticalShare };
}
