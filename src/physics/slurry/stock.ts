import { requireFraction, requirePositive, requireWithin } from "../stats/range.ts";

/** A coat on a piece by what stays on it, kg wet per m² of outer face, and the wall it adds, mm. */
export type CoatPickup = {
  readonly slurryKgM2: number;
  readonly stuccoKgM2: number;
  readonly buildMm: number;
};

/** Outer face of a convex piece once `wallMm` is on it: A·(1 + t/r)², r = √(A/4π), a sphere's radius (derived). */
export function grownAreaM2({ areaM2, wallMm }: { areaM2: number; wallMm: number }): number {
  requirePositive("areaM2", areaM2, { high: 1000, unit: "m²" });
  requireWithin("wallMm", wallMm, { low: 0, high: 500, unit: "mm" });
  const radiusM = Math.sqrt(areaM2 / (4 * Math.PI));
  return areaM2 * (1 + wallMm / 1000 / radiusM) ** 2;
}

/**
 * Slurry that leaves the bucket on one dip, kg. `pickupKgM2` was found at `pickupGCm3`; the film's thickness is what
 * stays, so it scales with density (derived).
 */
export function dragOutKg({
  areaM2,
  pickupKgM2,
  pickupGCm3,
  densityGCm3,
}: {
  areaM2: number;
  pickupKgM2: number;
  pickupGCm3: number;
  densityGCm3: number;
}): number {
  requireWithin("areaM2", areaM2, { low: 0, high: 1000, unit: "m²" });
  requireWithin("pickupKgM2", pickupKgM2, { low: 0, high: 50, unit: "kg/m²" });
  requirePositive("pickupGCm3", pickupGCm3, { high: 20, unit: "g/cm³" });
  requirePositive("densityGCm3", densityGCm3, { high: 20, unit: "g/cm³" });
  return (areaM2 * pickupKgM2 * densityGCm3) / pickupGCm3;
}

/** Pickup of a drained plate, kg/m²: grams gained over the area of both faces, cm² (plate test, common practice). */
export function platePickupKgM2({ gainedG, areaCm2 }: { gainedG: number; areaCm2: number }): number {
  requireWithin("gainedG", gainedG, { low: 0, high: 10_000, unit: "g" });
  requirePositive("areaCm2", areaCm2, { high: 100_000, unit: "cm²" });
  return (10 * gainedG) / areaCm2;
}

export type PieceMaterial = {
  readonly slurryKg: number;
  readonly stuccoKg: number;
  readonly slurryWithLossKg: number;
  readonly stuccoWithLossKg: number;
};

/**
 * Slurry and stucco a piece takes over all its coats, kg, on the piece and with the shares lost (drips, falling sand).
 * `grows`: each coat covers the wall of those beneath; without it every coat is reckoned on the bare area.
 */
export function pieceMaterial({
  areaM2,
  coats,
  slurryLoss,
  stuccoLoss,
  grows,
}: {
  areaM2: number;
  coats: readonly CoatPickup[];
  slurryLoss: number;
  stuccoLoss: number;
  grows: boolean;
}): PieceMaterial {
  requireFraction("slurryLoss", slurryLoss);
  requireFraction("stuccoLoss", stuccoLoss);
  let wallMm = 0;
  let slurryKg = 0;
  let stuccoKg = 0;
  requirePositive("areaM2", areaM2, { high: 1000, unit: "m²" });
  for (const coat of coats) {
    requireWithin("slurryKgM2", coat.slurryKgM2, { low: 0, high: 50, unit: "kg/m²" });
    requireWithin("stuccoKgM2", coat.stuccoKgM2, { low: 0, high: 50, unit: "kg/m²" });
    requireWithin("buildMm", coat.buildMm, { low: 0, high: 50, unit: "mm" });
    const faceM2 = grownAreaM2({ areaM2, wallMm: grows ? wallMm : 0 });
    slurryKg += faceM2 * coat.slurryKgM2;
    stuccoKg += faceM2 * coat.stuccoKgM2;
    wallMm += coat.buildMm;
  }
  return {
    slurryKg,
    stuccoKg,
    slurryWithLossKg: slurryKg * (1 + slurryLoss),
    stuccoWithLossKg: stuccoKg * (1 + stuccoLoss),
  };
}

export type PieceCost = { readonly slurry: number; readonly stucco: number; readonly total: number };

/** What a piece's shell costs, in whatever currency the prices are in, per kg. `flourShare` is the flour's mass fraction of the slurry, the rest is sol. */
export function pieceCost({
  material,
  flourShare,
  prices,
}: {
  material: Pick<PieceMaterial, "slurryWithLossKg" | "stuccoWithLossKg">;
  flourShare: number;
  prices: { readonly flour: number; readonly sol: number; readonly stucco: number };
}): PieceCost {
  requireFraction("flourShare", flourShare);
  for (const [name, price] of Object.entries(prices))
    requireWithin(name, price, { low: 0, high: 1e9, unit: "a kg" });
  requireWithin("slurryWithLossKg", material.slurryWithLossKg, { low: 0, high: 1e7, unit: "kg" });
  requireWithin("stuccoWithLossKg", material.stuccoWithLossKg, { low: 0, high: 1e7, unit: "kg" });
  const perKg = flourShare * prices.flour + (1 - flourShare) * prices.sol;
  const slurry = material.slurryWithLossKg * perKg;
  const stucco = material.stuccoWithLossKg * prices.stucco;
  return { slurry, stucco, total: slurry + stucco };
}

/**
 * Whole pieces the bucket still has slurry for: what lies above the level that drowns the tallest, over what one
 * takes, both L. Null where a piece takes nothing.
 */
export function piecesLeft({
  volumeL,
  leastVolumeL,
  perPieceL,
}: {
  volumeL: number;
  leastVolumeL: number;
  perPieceL: number;
}): number | null {
  requireWithin("volumeL", volumeL, { low: 0, high: 100_000, unit: "L" });
  requireWithin("leastVolumeL", leastVolumeL, { low: 0, high: 100_000, unit: "L" });
  requireWithin("perPieceL", perPieceL, { low: 0, high: 100_000, unit: "L" });
  if (perPieceL < 1e-9) return null;
  return Math.max(0, Math.floor((volumeL - leastVolumeL) / perPieceL + 1e-9));
}

/**
 * Share of the first make still in the bucket after some weeks of use and refilling, 0–1: (1 − u/V)ⁿ (derived: each
 * week's use is drawn from a stirred bucket).
 */
export function firstMakeLeft({ weeklyShare, weeks }: { weeklyShare: number; weeks: number }): number {
  requireFraction("weeklyShare", weeklyShare);
  requireWithin("weeks", weeks, { low: 0, high: 10_000, unit: "weeks" });
  return (1 - weeklyShare) ** weeks;
}

export type MassCheck = {
  readonly differenceKg: number;
  readonly share: number;
  /** Beyond 5 % something was not written down: ask (starting value). */
  readonly ask: boolean;
};

/** Weighed against reckoned mass of a bucket, kg; the share is of the reckoned mass. */
export function massCheck({ reckonedKg, weighedKg }: { reckonedKg: number; weighedKg: number }): MassCheck {
  requirePositive("reckonedKg", reckonedKg, { high: 1e6, unit: "kg" });
  requireWithin("weighedKg", weighedKg, { low: 0, high: 1e6, unit: "kg" });
  const differenceKg = weighedKg - reckonedKg;
  const share = differenceKg / reckonedKg;
  return { differenceKg, share, ask: Math.abs(share) > 0.05 + 1e-9 };
}
