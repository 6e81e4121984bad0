import type { Alloy } from "./alloy.ts";
import { preheatSource, shellPreheat } from "./shellPreheat.ts";
import type { Published } from "./published.ts";

export type Preheat = Published<{ readonly lowC: number; readonly highC: number }>;

/** Usual shell heat at the pour for an alloy and a wall of metal, mm; null for metals with no known practice. */
export function preheatOf({ alloy, wallMm }: { alloy: Alloy; wallMm: number }): Preheat | null {
  const value = shellPreheat({
    metal: metalOf(alloy),
    thinnestMm: wallMm,
    solidusC: alloy.solidusC.value,
  });
  return value === null ? null : { value, source: preheatSource };
}

function metalOf({ id, family }: Alloy): Parameters<typeof shellPreheat>[0]["metal"] {
  if (family !== "other") return family;
  return id === "copper" ? "bronze" : id === "sterling" ? "silver" : "other";
}
