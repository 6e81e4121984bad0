import { type Contents, type Element } from "../../physics/metal/scrap.ts";
import type { Alloy } from "./alloy.ts";
import { alloyOf } from "./alloys.ts";

/** Limits of an alloy; null where none are known (pure tin and grey iron). */
export function compositionOf(alloyId: string): Alloy["composition"] {
  return alloyOf(alloyId)?.composition ?? null;
}

/**
 * What metal sold as an alloy may hold, to charge with: each element between its limits, a base metal up to the
 * whole, and what has no name as much as the limits on the sum leave. Null where the alloy isn't known.
 */
export function contentsOf(alloyId: string): Contents | null {
  const composition = compositionOf(alloyId);
  if (composition === null) return null;
  const single = composition.limits.filter(({ of }) => of.length === 1);
  const contents: Partial<Record<Element, { readonly low: number; readonly high: number }>> = {};
  for (const { of, min, max } of single)
    for (const element of of) contents[element] = { low: min ?? 0, high: max ?? 1 };
  for (const { of, min, max } of composition.limits) {
    if (of.length === 1) continue;
    const named = of.filter((element) => contents[element] !== undefined);
    const [base] = of.filter((element) => contents[element] === undefined);
    // "Copper with nickel": copper is what the sum leaves once nickel has taken its own.
    if (base !== undefined && of.length < 4) {
      const others = named.reduce((sum, element) => sum + (contents[element]?.high ?? 0), 0);
      contents[base] = { low: Math.max(0, (min ?? 0) - others), high: max ?? 1 };
    }
    if (of.length > 3) contents.other = { low: 0, high: 1 - (min ?? 1) };
  }
  return contents;
}

/** What a metal of the table may hold, whether its limits are printed or not; null where it isn't in the table. */
export const metalContentsOf = (alloyId: string): Contents | null =>
  contentsOf(alloyId) ?? alloyOf(alloyId)?.unprinted ?? null;
