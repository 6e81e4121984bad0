/** One side of an 80 % band of the normal distribution, in standard deviations. */
export const tenthQuantile = 1.2816;

/** Logarithm of the standard normal density; −Infinity so far out that nothing is left of it. */
export function logDensity(z: number): number {
  requireNumber("z", z);
  return -0.5 * z * z - 0.9189385332046727;
}

/**
 * Logarithm of the share of a standard normal below z, any z (−Infinity and Infinity too).
 *
 * Chebyshev fit of the complementary error function, Numerical Recipes § 6.2 (from memory): relative error of
 * the share under 1.2e-7 everywhere, so the far tails keep their logarithm.
 */
export function logBelow(z: number): number {
  requireNumber("z", z);
  if (z === -Infinity) return -Infinity;
  if (z > 0) return Math.log1p(-Math.exp(logBelow(-z)));
  const x = -z / Math.SQRT2;
  const t = 1 / (1 + 0.5 * x);
  const fit = [
    0.17087277, -0.82215223, 1.48851587, -1.13520398, 0.27886807, -0.18628806, 0.09678418, 0.37409196,
    1.00002368, -1.26551223,
  ].reduce((sum, c) => sum * t + c, 0);
  return Math.log(0.5 * t) - x * x + fit;
}

/** Logarithm of the share of a standard normal between two values, low < high; either may be infinite, and −Infinity comes back where nothing is left between them. */
export function logBetween(low: number, high: number): number {
  if (!(low < high)) throw new RangeError(`low must be below high ${high}, found ${low}`);
  // Both far to the right is both far to the left, where the logarithm keeps its digits.
  if (low > 0) return logBetween(-high, -low);
  const width = high - low;
  // The difference of two nearly equal shares loses its digits; the density in the middle does not.
  if (width < 1e-3) return logDensity((low + high) / 2) + Math.log(width);
  const upper = logBelow(high);
  if (upper === -Infinity) return upper;
  return upper + Math.log1p(-Math.exp(logBelow(low) - upper));
}

function requireNumber(name: string, value: number): void {
  if (Number.isNaN(value)) throw new RangeError(`${name} must be a number, found ${value}`);
}
