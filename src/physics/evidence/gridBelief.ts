import { requireFraction, requirePositive, requireWithin } from "../stats/range.ts";

/** A belief over an evenly spaced grid: its points and the share of belief on each (sums to 1). */
export type GridBelief = { readonly at: readonly number[]; readonly mass: readonly number[] };

/** Refuses a grid without two rising points, evenly spaced, or with as many values as it has not. */
function requireGrid(at: readonly number[], values: number): void {
  const start = at[0] ?? NaN;
  const step = (at[1] ?? NaN) - start;
  if (!(at.length >= 2 && values === at.length && step >= 1e-12 && step <= 1e12)) {
    requireWithin("grid points", at.length, { low: 2, high: 1e6, unit: "" });
    requireWithin("values on the grid", values, { low: at.length, high: at.length, unit: "" });
    requirePositive("grid step", step, { high: 1e12, unit: "" });
  }
  for (let i = 0; i < at.length; i++) {
    const even = start + i * step;
    const slack = 1e-6 * step + 1e-9 * Math.abs(even);
    const x = at[i] ?? NaN;
    if (!(Math.abs(x - even) <= slack))
      requireWithin("grid point", x, { low: even - slack, high: even + slack, unit: "(even steps)" });
  }
}

/** Refuses a belief that is none: see `requireGrid`; every share 0–1. */
export function requireBelief({ at, mass }: GridBelief): void {
  requireGrid(at, mass.length);
  for (const part of mass)
    if (!(part >= 0 && part <= 1)) requireWithin("mass", part, { low: 0, high: 1, unit: "" });
}

/** Belief from logarithms of its height, up to a constant. Refuses heights that rule out every point. */
export function beliefOf(at: readonly number[], logHeight: readonly number[]): GridBelief {
  requireGrid(at, logHeight.length);
  const top = logHeight.reduce((most, one) => Math.max(most, one), -Infinity);
  requireWithin("highest logarithm", top, { low: -1e300, high: 1e300, unit: "" });
  const height = logHeight.map((one) => Math.exp(one - top));
  const sum = height.reduce((total, one) => total + one, 0);
  return { at, mass: height.map((one) => one / sum) };
}

export function momentsOf({ at, mass }: GridBelief): { readonly mean: number; readonly sd: number } {
  requireBelief({ at, mass });
  const mean = at.reduce((sum, x, i) => sum + x * (mass[i] ?? 0), 0);
  const variance = at.reduce((sum, x, i) => sum + (x - mean) ** 2 * (mass[i] ?? 0), 0);
  return { mean, sd: Math.sqrt(Math.max(0, variance)) };
}

/** Share of belief at or below a value: each point's share is spread evenly over its own stretch of the grid. */
export function shareBelow({ at, mass }: GridBelief, value: number): number {
  requireBelief({ at, mass });
  requireWithin("value", value, { low: -1e15, high: 1e15, unit: "" });
  const step = (at[1] ?? 0) - (at[0] ?? 0);
  let sum = 0;
  for (const [i, x] of at.entries()) {
    const part = Math.min(1, Math.max(0, (value - x) / step + 0.5));
    if (part === 0) break;
    sum += part * (mass[i] ?? 0);
  }
  return sum;
}

/** The value with a share `p` (0–1) of belief below it. */
export function quantileOf({ at, mass }: GridBelief, p: number): number {
  requireBelief({ at, mass });
  requireFraction("p", p);
  const step = (at[1] ?? 0) - (at[0] ?? 0);
  let before = 0;
  for (const [i, x] of at.entries()) {
    const here = mass[i] ?? 0;
    if (before + here >= p && here > 0) return x + step * ((p - before) / here - 0.5);
    before += here;
  }
  return (at.at(-1) ?? 0) + step / 2;
}

/** A value that goes with each grid point, read between the points in a straight line. */
export function readAlong(at: readonly number[], values: readonly number[], x: number): number {
  requireGrid(at, values.length);
  requireWithin("x", x, { low: -1e15, high: 1e15, unit: "" });
  for (const value of values) requireWithin("value", value, { low: -1e15, high: 1e15, unit: "" });
  const step = (at[1] ?? 0) - (at[0] ?? 0);
  const place = Math.min(at.length - 1, Math.max(0, (x - (at[0] ?? 0)) / step));
  const i = Math.min(at.length - 2, Math.floor(place));
  const low = values[i] ?? 0;
  return low + (place - i) * ((values[i + 1] ?? low) - low);
}
