import { requireFigures, requirePositive, requireWithin } from "../stats/range.ts";

export type TimedWeight = { readonly afterS: number; readonly massG: number };

/** mass = dry + amplitude·e^(−t/τ), t from the first weighing. */
export type Approach = {
  readonly dryG: number;
  readonly amplitudeG: number;
  readonly tauS: number;
  /** Sum of squared misfits, g². */
  readonly misfitG2: number;
};

/** Dry masses within the balance's error at 95 %, g; null where the scan does not bound them. */
export type DryInterval = { readonly lowG: number; readonly highG: number } | null;

/** Time constants tried, s, and the step between them: finer than any interval it gives. */
const firstTauS = 300;
const lastTauS = 36_000;
const tauRatio = 1.002;

/** Weighings nearer together than this are one, s. */
export const leastSpanS = 1;

/** 95 % of a chi-square with one degree of freedom. */
const chiSquare = 3.84;

/**
 * The exponential through three equally spaced weighings (Aitken's delta-squared), or null where the loss does
 * not slow down, so that no exponential passes. Refuses spacings that differ by over a second.
 *
 * `noise` is the error of the dry mass in units of one reading's: 8 is usual, so it wants a good balance.
 */
export function aitken(
  weighings: readonly [TimedWeight, TimedWeight, TimedWeight],
): (Approach & { readonly noise: number }) | null {
  requireWithin("weighings", weighings.length, { low: 3, high: 3, unit: "" });
  const [a, b, c] = weighings;
  for (const { massG } of weighings) requirePositive("massG", massG, { high: 1e6, unit: "g" });
  const [spaceS, nextS] = [b.afterS - a.afterS, c.afterS - b.afterS];
  requireWithin("afterS of the second − first", spaceS, { low: leastSpanS, high: 1e9, unit: "s" });
  requireWithin("afterS of the third − second", nextS, {
    low: spaceS - 1,
    high: spaceS + 1,
    unit: "s (equal spacing)",
  });
  const first = a.massG - b.massG;
  const second = b.massG - c.massG;
  if (!(first > second && second > 0)) return null;
  const bend = first - second;
  // Two losses alike to the last digits have no bend to read.
  if (bend < 1e-9 * first) return null;
  const dryG = (a.massG * c.massG - b.massG ** 2) / (a.massG + c.massG - 2 * b.massG);
  // Partial derivatives of the dry mass by each reading; derived here.
  const byA = (second / bend) ** 2;
  const byB = (-2 * first * second) / bend ** 2;
  const byC = (first / bend) ** 2;
  return {
    dryG,
    amplitudeG: a.massG - dryG,
    tauS: spaceS / Math.log(first / second),
    misfitG2: 0,
    noise: Math.hypot(byA, byB, byC),
  };
}

/**
 * Least-squares exponential through three or more weighings in order of time, with the 95 % profile interval of
 * its dry mass for a balance of standard deviation `balanceG`.
 *
 * Scans the time constant from 5 to 600 min; at each, dry mass and amplitude are a straight-line fit. The
 * interval holds every dry mass that some time constant fits within 3.84 σ² of the best. Nothing is judged
 * here: see `judgeApproach`.
 */
export function fitExponential({
  weighings,
  balanceG,
}: {
  readonly weighings: readonly TimedWeight[];
  readonly balanceG: number;
}): { readonly best: Approach; readonly interval: DryInterval } {
  requireWithin("weighings", weighings.length, { low: 3, high: 1000, unit: "weighings" });
  requirePositive("balanceG", balanceG, { high: 1e4, unit: "g" });
  for (const { massG } of weighings) requirePositive("massG", massG, { high: 1e6, unit: "g" });
  for (const [i, { afterS }] of weighings.entries())
    requireWithin("afterS", afterS, {
      low: weighings[i - 1]?.afterS ?? -1e10,
      high: 1e10,
      unit: "s, in order of time",
    });
  requireWithin("time covered", spanS(weighings), { low: leastSpanS, high: 1e9, unit: "s" });
  const startS = weighings[0]?.afterS ?? 0;
  const baseG = weighings[0]?.massG ?? 0;
  const points = weighings.map(({ afterS, massG }) => ({ t: afterS - startS, y: massG - baseG }));
  const lines: (Approach & { readonly spread: number })[] = [];
  for (let tauS = firstTauS; tauS <= lastTauS; tauS *= tauRatio) lines.push(lineAt(points, { tauS, baseG }));
  const best = lines.reduce((least, line) => (line.misfitG2 < least.misfitG2 ? line : least));
  const allowed = best.misfitG2 + chiSquare * balanceG ** 2;
  const fitting = lines.filter(({ misfitG2 }) => misfitG2 <= allowed);
  const open = fitting.includes(lines[0] ?? best) || fitting.includes(lines.at(-1) ?? best);
  const reach = (line: (typeof lines)[number]): number =>
    Math.sqrt(line.spread * Math.max(0, allowed - line.misfitG2));
  const interval = open
    ? null
    : {
        lowG: Math.min(...fitting.map((line) => line.dryG - reach(line))),
        highG: Math.max(...fitting.map((line) => line.dryG + reach(line))),
      };
  const { dryG, amplitudeG, tauS, misfitG2 } = best;
  return { best: { dryG, amplitudeG, tauS, misfitG2 }, interval };
}

/** Seconds from the first weighing to the last. */
export function spanS(weighings: readonly TimedWeight[]): number {
  const [firstS, lastS] = [weighings[0]?.afterS ?? 0, weighings.at(-1)?.afterS ?? 0];
  requireFigures({ firstS, lastS });
  return lastS - firstS;
}

/** Straight line of mass against e^(−t/τ); `spread` is the variance of its dry mass for a balance of 1 g. */
function lineAt(
  points: readonly { readonly t: number; readonly y: number }[],
  { tauS, baseG }: { tauS: number; baseG: number },
): Approach & { readonly spread: number } {
  let sumX = 0;
  let sumY = 0;
  for (const { t, y } of points) {
    sumX += Math.exp(-t / tauS);
    sumY += y;
  }
  const meanX = sumX / points.length;
  const meanY = sumY / points.length;
  let xx = 0;
  let xy = 0;
  for (const { t, y } of points) {
    const x = Math.exp(-t / tauS) - meanX;
    xx += x * x;
    xy += x * (y - meanY);
  }
  const amplitudeG = xy / xx;
  const level = meanY - amplitudeG * meanX;
  const misfitG2 = points.reduce(
    (sum, { t, y }) => sum + (y - level - amplitudeG * Math.exp(-t / tauS)) ** 2,
    0,
  );
  return { dryG: baseG + level, amplitudeG, tauS, misfitG2, spread: 1 / points.length + meanX ** 2 / xx };
}
