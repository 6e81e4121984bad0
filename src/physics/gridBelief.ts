/** A belief over an evenly spaced grid: its points and the share of belief on each (sums to 1). */
export type GridBelief = { readonly at: readonly number[]; readonly mass: readonly number[] };

/** Belief from logarithms of its height, up to a constant. */
export function beliefOf(at: readonly number[], logHeight: readonly number[]): GridBelief {
  const top = logHeight.reduce((most, one) => Math.max(most, one), -Infinity);
  const height = logHeight.map((one) => Math.exp(one - top));
  const sum = height.reduce((total, one) => total + one, 0);
  return { at, mass: height.map((one) => one / sum) };
}

export function momentsOf({ at, mass }: GridBelief): { readonly mean: number; readonly sd: number } {
  const mean = at.reduce((sum, x, i) => sum + x * (mass[i] ?? 0), 0);
  const variance = at.reduce((sum, x, i) => sum + (x - mean) ** 2 * (mass[i] ?? 0), 0);
  return { mean, sd: Math.sqrt(Math.max(0, variance)) };
}

/** Share of belief at or below a value: each point's share is spread evenly over its own stretch of the grid. */
export function shareBelow({ at, mass }: GridBelief, value: number): number {
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
  const step = (at[1] ?? 0) - (at[0] ?? 0);
  const place = Math.min(at.length - 1, Math.max(0, (x - (at[0] ?? 0)) / step));
  const i = Math.min(at.length - 2, Math.floor(place));
  const low = values[i] ?? 0;
  return low + (place - i) * ((values[i + 1] ?? low) - low);
}
