import { fallForSpeedM } from "./flow.ts";
import { requirePositive, requireWithin } from "../stats/range.ts";

const gravityMS2 = 9.81;

export type GateAt =
  | { readonly gate: "top" }
  | { readonly gate: "bottom"; readonly cavityHeightM: number }
  | { readonly gate: "parting"; readonly cavityHeightM: number; readonly aboveGateM: number };

/**
 * Mean head while a mould fills, m: h from above, h − c/2 from below, h − p²/2c between, with h from the metal in the
 * cup down to the gate, c the cavity's height, p what of it lies above the gate. From memory of P. N. Rao, gating.
 * Null where the cavity rises above the metal in the cup: it never fills.
 */
export function effectiveHeadM({ sprueHeightM, at }: { sprueHeightM: number; at: GateAt }): number | null {
  requirePositive("sprueHeightM", sprueHeightM, { high: 20, unit: "m (not mm)" });
  if (at.gate === "top") return sprueHeightM;
  requirePositive("cavityHeightM", at.cavityHeightM, { high: 20, unit: "m (not mm)" });
  const aboveM = at.gate === "bottom" ? at.cavityHeightM : at.aboveGateM;
  requireWithin("aboveGateM", aboveM, { low: 0, high: at.cavityHeightM, unit: "m (not above the cavity)" });
  return aboveM > sprueHeightM ? null : sprueHeightM - aboveM ** 2 / (2 * at.cavityHeightM);
}

/**
 * Section of a sprue at its top over that at its foot, so that it draws no air: √(h2/h1), h1 the metal's depth over
 * the sprue's top, h2 the whole drop. Bernoulli and continuity; Kalpakjian & Schmid, ch. 10 (from memory).
 */
export function sprueTaper({ topDepthM, dropM }: { topDepthM: number; dropM: number }): number {
  requirePositive("topDepthM", topDepthM, { high: 20, unit: "m (not mm)" });
  requireWithin("dropM", dropM, { low: topDepthM, high: 20, unit: "m (the whole drop, from the surface)" });
  return Math.sqrt(dropM / topDepthM);
}

/** Reynolds number of a full round, ρ·v·D/μ. Real sprues give 1e4–5e4: always turbulent inside. */
export function reynolds({
  liquidKgM3,
  speedMS,
  diameterMm,
  viscosityPaS,
}: {
  liquidKgM3: number;
  speedMS: number;
  diameterMm: number;
  viscosityPaS: number;
}): number {
  requireWithin("liquidKgM3", liquidKgM3, { low: 500, high: 25_000, unit: "kg/m³ (not g/cm³)" });
  requireWithin("speedMS", speedMS, { low: 0, high: 50, unit: "m/s" });
  requirePositive("diameterMm", diameterMm, { high: 1000, unit: "mm" });
  requireWithin("viscosityPaS", viscosityPaS, { low: 1e-4, high: 1, unit: "Pa·s (not mPa·s)" });
  return (liquidKgM3 * speedMS * diameterMm) / 1000 / viscosityPaS;
}

/**
 * Speed above which a stream's surface folds in on itself, m/s: 2·(γg/ρ)^¼. From memory of J. Campbell, Complete
 * Casting Handbook; Runyoro, Boutorabi & Campbell, Trans. AFS 100 (1992) 225–234 found about 0.5 for film-forming melts.
 */
export function criticalSpeedMS({
  tensionNM,
  liquidKgM3,
}: {
  tensionNM: number;
  liquidKgM3: number;
}): number {
  requireSurface({ tensionNM, liquidKgM3 });
  return 2 * ((tensionNM * gravityMS2) / liquidKgM3) ** 0.25;
}

/**
 * Steepest angle of a leaning mould, degrees from level, at which metal running down its wall stays below a speed:
 * asin(h/L), h the fall that gives it. Derived here, without friction. 90 where the whole length is short enough.
 */
export function tiltLimitDeg({ lengthM, speedMS }: { lengthM: number; speedMS: number }): number {
  requirePositive("lengthM", lengthM, { high: 20, unit: "m (not mm)" });
  return (Math.asin(Math.min(1, fallForSpeedM(speedMS) / lengthM)) * 180) / Math.PI;
}

/** Speed of metal that has run down a length at an angle, m/s, without friction: √(2gL·sin φ). */
export function tiltSpeedMS({ lengthM, tiltDeg }: { lengthM: number; tiltDeg: number }): number {
  requirePositive("lengthM", lengthM, { high: 20, unit: "m (not mm)" });
  requireWithin("tiltDeg", tiltDeg, { low: 0, high: 90, unit: "° from level" });
  return Math.sqrt(2 * gravityMS2 * lengthM * Math.sin((tiltDeg * Math.PI) / 180));
}

/** Least section of all vents together, mm²: half the choke (common practice, no source), one at every high pocket. */
export function ventAreaMm2(chokeMm2: number): number {
  requirePositive("chokeMm2", chokeMm2, { high: 1e7, unit: "mm²" });
  return chokeMm2 / 2;
}

/**
 * Head that pushes metal into a slot it doesn't wet, mm: 2γ|cos θ|/(ρgs), θ 180° unless given (Laplace). An oxide
 * skin on aluminium about doubles it. Warn where the head is below twice this (common practice, no source).
 */
export function capillaryHeadMm({
  tensionNM,
  liquidKgM3,
  slotMm,
  contactDeg = 180,
  hasSkin = false,
}: {
  tensionNM: number;
  liquidKgM3: number;
  slotMm: number;
  contactDeg?: number | undefined;
  hasSkin?: boolean | undefined;
}): number {
  requireSurface({ tensionNM, liquidKgM3 });
  requirePositive("slotMm", slotMm, { high: 1000, unit: "mm" });
  requireWithin("contactDeg", contactDeg, { low: 90, high: 180, unit: "° (metal that wets isn't reckoned)" });
  const pull = 2 * tensionNM * Math.abs(Math.cos((contactDeg * Math.PI) / 180)) * (hasSkin ? 2 : 1);
  return (pull / (liquidKgM3 * gravityMS2 * slotMm * 1e-3)) * 1000;
}

function requireSurface({ tensionNM, liquidKgM3 }: { tensionNM: number; liquidKgM3: number }): void {
  requireWithin("tensionNM", tensionNM, { low: 0.05, high: 3, unit: "N/m (not mN/m)" });
  requireWithin("liquidKgM3", liquidKgM3, { low: 500, high: 25_000, unit: "kg/m³ (not g/cm³)" });
}
