import { radiationWM2K4, zeroCK } from "../../src/physics/heat/heatSolver.ts";
import { requirePositive, requireWithin } from "../../src/physics/stats/range.ts";
import { risingRoot } from "../../src/physics/stats/root.ts";

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
  requirePositive("conductivityWMK", conductivityWMK, { high: 5000, unit: "W/(m·K)" });
  requirePositive("densityKgM3", densityKgM3, { high: 30_000, unit: "kg/m³ (not g/cm³)" });
  requirePositive("heatJKgK", heatJKgK, { high: 20_000, unit: "J/(kg·K) (not kJ)" });
  return Math.sqrt(conductivityWMK * densityKgM3 * heatJKgK);
}

/** Temperature at once between two thick bodies that touch, °C: their temperatures weighed by effusivity. */
export function contactC(
  one: { readonly atC: number; readonly effusivity: number },
  other: { readonly atC: number; readonly effusivity: number },
): number {
  for (const { atC } of [one, other]) requireWithin("atC", atC, { low: -273, high: 10_000, unit: "°C" });
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
  requireWithin("airC", airC, { low: -272, high: 4000, unit: "°C" });
  requireWithin("fromC", fromC, { low: -272, high: 4000, unit: "°C" });
  requireWithin("emissivity", emissivity, { low: 0.001, high: 1, unit: "" });
  requireStorage(storageJM2K);
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
  requireWithin("startC", startC, { low: -272, high: 4000, unit: "°C" });
  requireWithin("seconds", seconds, { low: 0, high: 1e8, unit: "s" });
  requireWithin("emissivity", emissivity, { low: 0, high: 1, unit: "" });
  requireWithin("filmWM2K", filmWM2K, { low: 1e-3, high: 1e5, unit: "W/(m²·K)" });
  requireStorage(storageJM2K);
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
  requireWithin("startC", startC, { low: -273, high: 4000, unit: "°C" });
  requireWithin("airC", airC, { low: -273, high: 4000, unit: "°C" });
  requireWithin("seconds", seconds, { low: 0, high: 1e8, unit: "s" });
  requireWithin("filmWM2K", filmWM2K, { low: 0, high: 1e5, unit: "W/(m²·K)" });
  requireStorage(storageJM2K);
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

function requireStorage(storageJM2K: number): void {
  requireWithin("storageJM2K", storageJM2K, { low: 1e-3, high: 1e12, unit: "J/(m²·K)" });
}
