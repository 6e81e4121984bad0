import { requireFigures, requirePositive, requireWithin } from "../stats/range.ts";

export type ModulusCheck = { readonly hasMm: number; readonly needsMm: number; readonly isMet: boolean };
export type VolumeCheck =
  | { readonly kind: "reckoned"; readonly hasMm3: number; readonly needsMm3: number; readonly isMet: boolean }
  /** The riser itself shrinks by more than it can give: no size is enough. */
  | { readonly kind: "never-enough"; readonly isMet: false };

/** What a riser's modulus must be over the casting's, and a neck's (from memory of Wlodawer, Directional Solidification of Steel Castings, 1966). */
export const riserModulusRatio = 1.2;
/** Growth of modulus from link to link on the way from casting to riser ("Heuvers", from memory of Wlodawer). */
export const pathModulusRatio = 1.1;

/** First check: the riser freezes after what it feeds. Ratio 1.2 unless given; 0.7–0.8 of the size does when it is covered. */
export function riserModulusCheck({
  castingModulusMm,
  riserModulusMm,
  ratio = riserModulusRatio,
}: {
  castingModulusMm: number;
  riserModulusMm: number;
  ratio?: number | undefined;
}): ModulusCheck {
  requireModulus({ castingModulusMm, riserModulusMm });
  requireWithin("ratio", ratio, { low: 1, high: 3, unit: "" });
  const needsMm = castingModulusMm * ratio;
  return { hasMm: riserModulusMm, needsMm, isMet: atLeast(riserModulusMm, needsMm) };
}

/**
 * Second check: there is enough to give, η·Vr ≥ β·(Vr + Vc), so Vr ≥ Vc·β/(η − β). η 0.14 for a plain riser of H
 * 1–1.5 D, to 0.20 domed, 0.30–0.40 insulated (from memory of J. Campbell, Castings); β the shrink on freezing.
 */
export function riserVolumeCheck({
  castingVolumeMm3,
  riserVolumeMm3,
  shrinkShare,
  giveShare,
}: {
  castingVolumeMm3: number;
  riserVolumeMm3: number;
  shrinkShare: number;
  giveShare: number;
}): VolumeCheck {
  requirePositive("castingVolumeMm3", castingVolumeMm3, { high: 1e12, unit: "mm³" });
  requirePositive("riserVolumeMm3", riserVolumeMm3, { high: 1e12, unit: "mm³" });
  // Grey iron may swell: then nothing is asked.
  requireWithin("shrinkShare", shrinkShare, { low: -0.1, high: 0.2, unit: "(a fraction, not percent)" });
  requirePositive("giveShare", giveShare, { high: 1, unit: "(a fraction, not percent)" });
  if (giveShare <= shrinkShare) return { kind: "never-enough", isMet: false };
  const needsMm3 = Math.max(0, (castingVolumeMm3 * shrinkShare) / (giveShare - shrinkShare));
  return { kind: "reckoned", hasMm3: riserVolumeMm3, needsMm3, isMet: atLeast(riserVolumeMm3, needsMm3) };
}

/** Diameter of a round riser of a height of `slender` diameters, all faces cooling unless its top is covered, for a modulus, mm. */
export function riserDiameterMm({
  modulusMm,
  slender,
  topCools = true,
}: {
  modulusMm: number;
  slender: number;
  topCools?: boolean | undefined;
}): number {
  requirePositive("modulusMm", modulusMm, { high: 10_000, unit: "mm" });
  requireWithin("slender", slender, { low: 0.2, high: 5, unit: "diameters" });
  // V/A of D: (π/4)·s·D³ over π·s·D² and one or two ends of (π/4)·D².
  return (modulusMm * (slender + (topCools ? 0.5 : 0.25))) / (slender / 4);
}

/** Whether one modulus reaches another but for the last digits of a sum. */
export function atLeast(has: number, needs: number): boolean {
  requireFigures({ has, needs });
  return has >= needs * (1 - 1e-9);
}

function requireModulus(moduli: Readonly<Record<string, number>>): void {
  for (const [name, value] of Object.entries(moduli))
    requirePositive(name, value, { high: 10_000, unit: "mm" });
}
