import { requireWithin } from "../stats/range.ts";
import { coatsToAdd, strengthOverLoad, wallLoads, type WallPress } from "./wall.ts";

export type WallWord = "carries" | "marginal" | "thin" | "fails";

/**
 * How well each figure is known: a factor of 1 and more. The middle nine in ten of all cases lie between the likely
 * figure divided by it and times it; 1 is exact.
 */
export type WallSpreads = { readonly strength: number; readonly wall: number; readonly head: number };

/** The index from which on a wall gets each word, each lower than the one before; below the last one it fails. */
export type WallLimits = { readonly carries: number; readonly marginal: number; readonly thin: number };

export type WallLoad = WallPress & {
  /** Likely bending strength, MPa. */
  readonly morMPa: number;
  readonly spreads: WallSpreads;
};

export type WallVerdict = {
  readonly word: WallWord;
  /** The wall that is there to a tenth of a millimetre, and its middle nine in ten, mm. */
  readonly likelyMm: number;
  readonly lowMm: number;
  readonly highMm: number;
  /** Reliability index of that wall; Infinity where nothing presses. */
  readonly index: number;
  /** Likely strength over likely load; Infinity where nothing presses. */
  readonly ratio: number;
  /** What the head and the least wall ask for together, mm: the one figure to show and to count coats by. */
  readonly neededMm: number;
  readonly coatsToAdd: number;
};

/** As far as the sums of the wall go, mm. */
export const thickestMm = 500;

/** A wall of 0–500 mm as it is shown and judged: to a tenth of a millimetre. */
export function toTenth(mm: number): number {
  requireWithin("mm", mm, { low: 0, high: thickestMm, unit: "mm" });
  return Math.round(mm * 10) / 10;
}

/** Whether a wall to a tenth misses what is asked, both 0–500 mm; the same to the last digit does not. */
export function isBelow(likelyMm: number, askedMm: number): boolean {
  requireWithin("likelyMm", likelyMm, { low: 0, high: thickestMm, unit: "mm" });
  requireWithin("askedMm", askedMm, { low: 0, high: thickestMm, unit: "mm" });
  return likelyMm < askedMm - hair;
}

/** 95 of 100 of a normal spread lie below its mean and so many standard deviations. */
const ninetyFiveQuantile = 1.645;

/** Standard deviation of the logarithm of a figure known to × or ÷ `spread` (1–100) in the middle 90 %. */
export function lnSdOf(spread: number): number {
  requireWithin("spread", spread, { low: 1, high: 100, unit: "" });
  return Math.log(spread) / ninetyFiveQuantile;
}

/**
 * Reliability index of a wall by the first-order method: Hasofer and Lind's distance of the likely case from the case
 * in which it breaks, in standard deviations. Method: ISO 2394 and EN 1990 annex C; neither gives the limit.
 *
 * Strength, wall and head are log-normal, and load over strength is a product of their powers, so the limit state is
 * linear in the logarithms and the index exact: mean over standard deviation. A part that can bear in two ways has the
 * better of the two. Infinity where there is no pressure.
 * Wall 0.001–500 mm. Spreads of nothing at all (all 1) give ± Infinity, and 0 where load and strength are alike.
 */
export function wallIndex({ wallMm, ...load }: WallLoad & { wallMm: number }): number {
  const { spreads, morMPa } = load;
  if (strengthOverLoad({ ...load, wallMm }) === Infinity) return Infinity;
  const known = Math.hypot(lnSdOf(spreads.strength), lnSdOf(spreads.head));
  const indices = wallLoads({ ...load, wallMm }).map(({ loadMPa, power }) => {
    const mean = Math.log(morMPa / loadMPa);
    return mean === 0 ? 0 : mean / Math.hypot(known, power * lnSdOf(spreads.wall));
  });
  return Math.max(...indices);
}

/**
 * The least wall, mm, that reaches an index of `least` (0–20) under this load; 500 where no wall of that much does.
 * `exactMm` is for putting parts in order, `mm` is rounded up to half a millimetre: nothing finer is claimed.
 */
export function headNeeds(
  load: WallLoad,
  { least }: { least: number },
): { readonly exactMm: number; readonly mm: number } {
  requireWithin("least", least, { low: 0, high: 20, unit: "" });
  let [short, enough] = [thinnestMm, thickestMm];
  if (wallIndex({ ...load, wallMm: short }) >= least) return { exactMm: 0, mm: 0 };
  // The index rises with the wall, so halving the span in the logarithm finds it.
  for (let step = 0; step < 50; step += 1) {
    const wallMm = Math.sqrt(short * enough);
    if (wallIndex({ ...load, wallMm }) >= least) enough = wallMm;
    else short = wallMm;
  }
  return { exactMm: enough, mm: Math.min(thickestMm, Math.ceil(enough * 2 - hair) / 2) };
}

const thinnestMm = 0.001;
const hair = 1e-6;

/**
 * The verdict of a wall against its head: the one place that gives the word, the wall needed and the coats to add.
 *
 * It carries where it is as thick as the wall needed, both as shown. More wall, less head, more strength or less spread
 * never make the word worse, for every limit lies at 0 or above. `floorMm` is what handling and burnout ask (0–500),
 * `coatMm` what one more coat gives; a wall of 0 is no wall and fails.
 */
export function wallVerdict({
  wallMm,
  limits,
  floorMm,
  coatMm,
  ...load
}: WallLoad & {
  readonly wallMm: number;
  readonly limits: WallLimits;
  readonly floorMm: number;
  readonly coatMm: number;
}): WallVerdict {
  requireWithin("wallMm", wallMm, { low: 0, high: thickestMm, unit: "mm" });
  requireWithin("floorMm", floorMm, { low: 0, high: thickestMm, unit: "mm" });
  requireWithin("limits.thin", limits.thin, { low: 0, high: limits.marginal, unit: "" });
  requireWithin("limits.marginal", limits.marginal, { low: 0, high: limits.carries, unit: "" });
  const likelyMm = toTenth(wallMm);
  const judgedMm = Math.max(thinnestMm, likelyMm);
  const { mm: headMm } = headNeeds(load, { least: limits.carries });
  const isEnough = carries(load, { likelyMm, limits });
  const index = wallIndex({ ...load, wallMm: judgedMm });
  const neededMm = Math.max(headMm, floorMm);
  return {
    word: isEnough ? "carries" : wordBelow(index, limits),
    likelyMm,
    lowMm: likelyMm / load.spreads.wall,
    highMm: likelyMm * load.spreads.wall,
    index,
    ratio: strengthOverLoad({ ...load, wallMm: judgedMm }),
    neededMm,
    coatsToAdd: coatsToAdd({ requiredMm: neededMm, haveMm: likelyMm, coatMm }),
  };
}

/** Whether a wall to a tenth of a millimetre is the wall needed: as far as half a millimetre goes, its index is enough. */
export function carries(
  load: WallLoad,
  { likelyMm, limits }: { readonly likelyMm: number; readonly limits: WallLimits },
): boolean {
  requireWithin("likelyMm", likelyMm, { low: 0, high: thickestMm, unit: "mm" });
  requireWithin("limits.carries", limits.carries, { low: 0, high: 20, unit: "" });
  const halfMm = Math.floor(likelyMm * 2 + hair) / 2;
  return wallIndex({ ...load, wallMm: Math.max(thinnestMm, halfMm) }) >= limits.carries;
}

function wordBelow(index: number, { marginal, thin }: WallLimits): WallWord {
  if (index >= marginal) return "marginal";
  return index >= thin ? "thin" : "fails";
}
