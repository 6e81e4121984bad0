import { requirePositive, requireWithin } from "../stats/range.ts";
import { lnSdOf } from "./wallVerdict.ts";

/**
 * Lift on a core that stands in liquid metal, N, >= 0: (metal density − core density)·g·volume (Archimedes). A core as
 * heavy as the metal has none. Volume 0–4000 L, densities 100–25 000 kg/m³.
 */
export function coreLiftN({
  litre,
  metalKgM3,
  coreKgM3,
}: {
  litre: number;
  metalKgM3: number;
  coreKgM3: number;
}): number {
  requireWithin("litre", litre, { low: 0, high: 4000, unit: "L" });
  requireWithin("metalKgM3", metalKgM3, { low: 100, high: 25_000, unit: "kg/m³ (not g/cm³)" });
  requireWithin("coreKgM3", coreKgM3, { low: 100, high: 25_000, unit: "kg/m³ (not g/cm³)" });
  return Math.max(0, metalKgM3 - coreKgM3) * 9.81 * (litre / 1000);
}

/** Heat, °C, and share of its yield that structural steel keeps: EN 1993-1-2, table 3.1 (from memory). */
const hotYield: readonly (readonly [c: number, share: number])[] = [
  [400, 1],
  [500, 0.78],
  [600, 0.47],
  [700, 0.23],
  [800, 0.11],
  [900, 0.06],
  [1000, 0.04],
  [1100, 0.02],
  [1200, 0],
];
/** Yield of mild steel when cold, MPa (S235, EN 10025). */
const coldYieldMPa = 235;

/** Yield of a mild steel pin at a heat of −50 to 3000 °C, MPa: whole up to 400 °C, none from 1200 °C. */
export function pinYieldMPa(atC: number): number {
  requireWithin("atC", atC, { low: -50, high: 3000, unit: "°C" });
  for (const [i, [to, share]] of hotYield.entries()) {
    if (atC > to) continue;
    const [from, before] = hotYield[i - 1] ?? [to - 1, share];
    return coldYieldMPa * (before + ((share - before) * (Math.max(from, atC) - from)) / (to - from));
  }
  return 0;
}

/**
 * What pins hold of a core, N: each the lesser of its shear (section × yield/√3, EN 1993-1-1 6.2.6) and of what the core
 * bears under it (diameter × depth in the core × strength). Pins 0–1000 of 0.1–100 mm, `seatMm` up to 500.
 */
export function pinHoldN({
  pins,
  pinMm,
  seatMm,
  yieldMPa,
  coreMPa,
}: {
  pins: number;
  pinMm: number;
  seatMm: number;
  yieldMPa: number;
  coreMPa: number;
}): number {
  requireWithin("pins", pins, { low: 0, high: 1000, unit: "" });
  requirePositive("pinMm", pinMm, { high: 100, unit: "mm" });
  requirePositive("seatMm", seatMm, { high: 500, unit: "mm" });
  requireWithin("yieldMPa", yieldMPa, { low: 0, high: 3000, unit: "MPa" });
  requireWithin("coreMPa", coreMPa, { low: 0, high: 100, unit: "MPa" });
  const shearN = (Math.PI / 4) * pinMm ** 2 * (yieldMPa / Math.sqrt(3));
  return pins * Math.min(shearN, pinMm * seatMm * coreMPa);
}

/**
 * What the neck of a core that is one with the shell at its mouth holds, N: the lesser of pull (section × half the
 * bending strength) and of bending with the lift at half its depth (σ = 32·M/(π·d³)). Mouth and depth up to 5000 mm.
 */
export function neckHoldN({
  mouthMm,
  depthMm,
  coreMPa,
}: {
  mouthMm: number;
  depthMm: number;
  coreMPa: number;
}): number {
  requirePositive("mouthMm", mouthMm, { high: 5000, unit: "mm" });
  requirePositive("depthMm", depthMm, { high: 5000, unit: "mm" });
  requireWithin("coreMPa", coreMPa, { low: 0, high: 100, unit: "MPa" });
  const pullN = (Math.PI / 4) * mouthMm ** 2 * (coreMPa / 2);
  const bendN = (Math.PI * mouthMm ** 3 * coreMPa) / 32 / (depthMm / 2);
  return Math.min(pullN, bendN);
}

/**
 * What must hold a core against its lift, N, for a reliability index of `least` (0–20), where what holds it is known to ×
 * or ÷ `spread` (1–100) in the middle 90 %: lift × e^(least × standard deviation). The same method as a wall's.
 */
export function coreNeedsN({
  liftN,
  spread,
  least,
}: {
  liftN: number;
  spread: number;
  least: number;
}): number {
  requireWithin("liftN", liftN, { low: 0, high: 1e9, unit: "N" });
  requireWithin("least", least, { low: 0, high: 20, unit: "" });
  return liftN * Math.exp(least * lnSdOf(spread));
}

/** Diffusion of water vapour in air near 25 °C, m²/s (Massman, Atmos. Environ. 32 (1998) 1111, from memory). */
const vapourM2S = 2.5e-5;

/**
 * Resistance of the still air in a core to the water of its inside, s/m, through its one mouth: depth/(2·D) times wetted
 * area over mouth, the inside as a cylinder of its volume and depth. An upper end: real air mixes. Volume above 0 to
 * 4000 L.
 */
export function mouthResistanceSM({
  litre,
  mouthMm,
  depthMm,
}: {
  litre: number;
  mouthMm: number;
  depthMm: number;
}): number {
  requirePositive("litre", litre, { high: 4000, unit: "L" });
  requirePositive("mouthMm", mouthMm, { high: 5000, unit: "mm" });
  requirePositive("depthMm", depthMm, { high: 5000, unit: "mm" });
  const depthM = depthMm / 1000;
  const radiusM = Math.sqrt(litre / 1000 / (Math.PI * depthM));
  const wettedM2 = 2 * Math.PI * radiusM * depthM + Math.PI * radiusM ** 2;
  const mouthM2 = (Math.PI / 4) * (mouthMm / 1000) ** 2;
  return ((depthM / (2 * vapourM2S)) * wettedM2) / mouthM2;
}
