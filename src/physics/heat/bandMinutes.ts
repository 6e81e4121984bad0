import type { Stretch } from "./firingSegments.ts";
import { requireFigures, requireWithin } from "../stats/range.ts";

/**
 * Minutes a curve lies between two temperatures, °C, its ends included; straight lines between the ends of a stretch,
 * so that ways up and down count by their share. Planned or read. Derived. Throws a RangeError on what is no number.
 */
export function bandMinutes(
  curve: readonly Omit<Stretch, "segment">[],
  { lowC, highC }: { readonly lowC: number; readonly highC: number },
): number {
  const open = { low: -Infinity, high: Infinity, unit: "°C" };
  requireWithin("lowC", lowC, open);
  requireWithin("highC", highC, open);
  return curve.reduce((sum, { startMin, endMin, fromC, toC }) => {
    requireFigures({ startMin, endMin, fromC, toC });
    const [low, high] = [Math.min(fromC, toC), Math.max(fromC, toC)];
    if (low === high) return sum + (low >= lowC && low <= highC ? endMin - startMin : 0);
    const inside = Math.max(0, Math.min(high, highC) - Math.max(low, lowC));
    return sum + (endMin - startMin) * (inside / (high - low));
  }, 0);
}
