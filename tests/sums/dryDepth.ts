import { resistances, type MovingAir } from "../../src/physics/air/film.ts";
import { requireWithin } from "../../src/physics/stats/range.ts";

/** Depth of the dry layer behind an index, m, >= 0; null from index 1 up, where no depth can be told. */
export function dryDepthFromIndexM({ index, ...air }: MovingAir & { readonly index: number }): number | null {
  requireWithin("index", index, { low: -100, high: 100, unit: "" });
  if (index >= 1) return null;
  const { surfaceSM, layerSM2 } = resistances(air);
  return (surfaceSM / layerSM2) * Math.max(0, index / (1 - index));
}
