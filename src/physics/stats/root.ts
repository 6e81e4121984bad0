import { requireFigures } from "./range.ts";

/**
 * Where a rising function crosses zero, by halving the bracket.
 *
 * 48 halvings leave less than 1e-12 of the bracket. The caller answers for f(low) <= 0 <= f(high);
 * where that does not hold the nearer end comes back, which is what a saturated limit wants.
 */
export function risingRoot(f: (x: number) => number, { low, high }: { low: number; high: number }): number {
  requireFigures({ low, high });
  let below = low;
  let above = high;
  for (let i = 0; i < 48; i++) {
    const middle = (below + above) / 2;
    if (f(middle) < 0) below = middle;
    else above = middle;
  }
  return (below + above) / 2;
}
