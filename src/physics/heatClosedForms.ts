import { radiationWM2K4, zeroCK } from "./heatSolver.ts";
import { requirePositive, requireWithin } from "./range.ts";
import { risingRoot } from "./root.ts";

/** √(k·ρ·c), W·√s/(m²·K): how strongly a body holds its temperature against what touches it. */
export function effusivity({
  conductivityWMK,
  densityKgM3,
  heatJKgK,
}: {
  conductivityWMK: number;
  densityKgM3: number;
  heatJKgK: number;
}): number {
  return Math.sqrt(conductivityWMK * densityKgM3 * heatJKgK);
}

/** Temperature at once between two thick bodies that touch, °C: their temperatures weighed by effusivity. */
export function contactC(
  one: { readonly atC: number; readonly effusivity: number },
  other: { readonly atC: number; readonly effusivity: number },
): number {
  requirePositive("effusivity", one.effusivity, { high: 1e6, unit: "W·√s/(m²·K)" });
  requirePositive("effusivity", other.effusivity, { high: 1e6, unit: "W·√s/(m²·K)" });
  return (one.effusivity * one.atC + other.effusivity * other.atC) / (one.effusivity + other.effusivity);
}

/**
 * Seconds a wall of one temperature takes to radiate from one temperature to a lower one, air above 0 K.
 * Incropera & DeWitt, Fundamentals of Heat and Mass Transfer, eq. 5.18 (from memory); Bejan & Kraus, Heat
 * Transfer Handbook, eq. 3.283. `storageJM2K` is ρ·c·thickness.
 */
export function radiationS({
  fromC,
  toC,
  airC,
  emissivity,
  storageJM2K,
}: {
  fromC: number;
  toC: number;
  airC: number;
  emissivity: number;
  storageJM2K: number;
}): number {
  if (!(fromC > toC && toC > airC))
    throw new RangeError(`fromC > toC > airC is wanted, found ${fromC}, ${toC}, ${airC}`);
  const air = airC + zeroCK;
  const of = (atC: number): number => {
    const at = atC + zeroCK;
    return Math.log((at + air) / (at - air)) + 2 * Math.atan(at / air);
  };
  return (storageJM2K / (4 * emissivity * radiationWM2K4 * air ** 3)) * (of(toC) - of(fromC));
}

/**
 * Temperature of a wall of one temperature, °C, that radiates and convects to 0 K for a time: Bejan & Kraus,
 * Heat Transfer Handbook, eq. 3.284.
 */
export function radiationAndFilmC({
  startC,
  seconds,
  emissivity,
  filmWM2K,
  storageJM2K,
}: {
  startC: number;
  seconds: number;
  emissivity: number;
  filmWM2K: number;
  storageJM2K: number;
}): number {
  const start = startC + zeroCK;
  const s = (emissivity * radiationWM2K4 * start ** 3) / filmWM2K;
  const x = 1 / ((1 + s) * Math.exp((3 * filmWM2K * seconds) / storageJM2K) - s);
  return start * Math.cbrt(x) - zeroCK;
}

/** Temperature of a wall of one temperature in air with a constant film, °C: T_a + (T_i − T_a)·exp(−h·t/ρcL). */
export function lumpedC({
  startC,
  airC,
  seconds,
  filmWM2K,
  storageJM2K,
}: {
  startC: number;
  airC: number;
  seconds: number;
  filmWM2K: number;
  storageJM2K: number;
}): number {
  return airC + (startC - airC) * Math.exp((-filmWM2K * seconds) / storageJM2K);
}

/**
 * First root and factor of a plane wall, ζ·tan ζ = Bi and C = 4·sin ζ/(2ζ + sin 2ζ). Biot number over the
 * thickness where one face is insulated. Incropera & DeWitt, table 5.1.
 */
export function firstTerm(biot: number): { readonly zeta: number; readonly factor: number } {
  requirePositive("biot", biot, { high: 1e6, unit: "" });
  const zeta = risingRoot((z) => z * Math.tan(z) - biot, { low: 0, high: Math.PI / 2 - 1e-12 });
  return { zeta, factor: (4 * Math.sin(zeta)) / (2 * zeta + Math.sin(2 * zeta)) };
}

/** Temperature excess of the insulated face over the first, as a share of it: C·exp(−ζ²·Fo), for Fo above 0.2. */
export function oneTermShare({ biot, fourier }: { biot: number; fourier: number }): number {
  requireWithin("fourier", fourier, { low: 0.2, high: 1e6, unit: "(one term errs below 0.2)" });
  const { zeta, factor } = firstTerm(biot);
  return factor * Math.exp(-zeta * zeta * fourier);
}
