import type { Alloy } from "./metals/alloy.ts";
import { preheatSource, shellPreheat } from "./shellPreheat.ts";
import type { Published } from "./published.ts";

export type Preheat = Published<{ readonly lowC: number; readonly highC: number }>;

/** Usual shell heat at the pour for an alloy and a wall of metal, mm; null for metals with no known practice. */
export function preheatOf({ alloy, wallMm }: { alloy: Alloy; wallMm: number }): Preheat | null {
  const value = shellPreheat({
    metal: alloy.preheat,
    thinnestMm: wallMm,
    solidusC: alloy.solidusC.value,
  });
  return value === null ? null : { value, basis: "practice", source: preheatSource };
}
