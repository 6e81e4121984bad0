import { indexedCoat } from "../physics/surfaceEvidence.ts";
import { steadyApartS, steadyMass } from "../physics/steadyMass.ts";
import { waterByMass } from "../physics/targetMass.ts";
import type { CoatSpan } from "./coatSpan.ts";
import { chainOf, waterOf } from "./coatWeights.ts";
import { airAt } from "./hanging.ts";
import type { DrynessSeen } from "./piece.ts";
import { ranges, within } from "./ranges.ts";

/**
 * What an observation says plainly, beside what it does to the belief in the water left. `wetShare`: at least
 * this share of the critical water is still in it.
 *
 * Plainly dry is a weight that stands still or has come down to the dry mass. A hand that found it dry is heard
 * ("felt"), but a hand feels the outer face alone. "losing": what a steady weight said before no longer holds.
 */
export type DryEvidence =
  | { readonly says: "dry"; readonly by: "steady" | "target" | "felt"; readonly seen: DrynessSeen }
  | { readonly says: "wet"; readonly seen: DrynessSeen; readonly wetShare: number }
  | { readonly says: "losing"; readonly seen: DrynessSeen };

/** What is left in a coat that feels damp, or that lost weight after all, as a share of the critical water; judgement. */
export const dampShare = 0.5;

/** Reads the observations of one span of a coat, oldest first; those that say nothing plainly are left out. */
export function readEvidence(span: CoatSpan): readonly DryEvidence[] {
  return span.seen.flatMap((one) => {
    const said = evidenceOf(one, span);
    return said === null ? [] : [said];
  });
}

function evidenceOf(seen: DrynessSeen, span: CoatSpan): DryEvidence | null {
  switch (seen.method) {
    case "touch":
    case "colour":
      if (seen.verdict !== "dry")
        return { says: "wet", seen, wetShare: seen.verdict === "wet" ? 1 : dampShare };
      // A dry colour is the outer face's alone; a hand feels at least how cold it is.
      return seen.method === "touch" ? { says: "dry", by: "felt", seen } : null;
    case "surface":
    case "resistance":
    case "bag":
      // Each is one source among others, weighed together with the sum; alone it overrides nothing.
      return null;
    case "weight":
      return fromWeight(seen, span);
  }
}

/** By the dry mass where three weighings give it, else by the weighing before. */
function fromWeight(seen: DrynessSeen, { seen: all, weights, stays, wet }: CoatSpan): DryEvidence | null {
  if (seen.method !== "weight" || (seen.moment ?? "drying") !== "drying") return null;
  const chain = chainOf(all, weights, seen.at);
  const { three, drying, balanceG } = chain;
  if (!drying.some(({ id }) => id === seen.id)) return null;
  const water =
    three && waterByMass({ ...three, waterFraction: weights.waterFraction, balanceG, massG: seen.massG });
  const { readyShare } = indexedCoat(wet, 0);
  if (water && water.strays === null && water.waterShare <= readyShare)
    return { says: "dry", by: "target", seen };
  const rh = airAt(stays, seen.at)?.reading.rh ?? 0;
  const waterG = waterOf(chain, weights);
  const before = drying.findLast(({ at }) => at <= seen.at - steadyApartS(waterG) * 1000);
  if (before === undefined || !within(ranges.rh, rh)) return null;
  const said = steadyMass({
    first: { afterS: before.at / 1000, massG: before.massG },
    second: { afterS: seen.at / 1000, massG: seen.massG },
    waterG,
    rh,
    balanceG,
  });
  if (said.kind === "steady") return { says: "dry", by: "steady", seen };
  return said.kind === "losing" ? { says: "losing", seen } : null;
}
