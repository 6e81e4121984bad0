import type { Weighing } from "./approachFit.ts";
import { tooDampRh } from "./dryStep.ts";
import { requireFraction, requirePositive, requireWithin } from "./range.ts";
import type { ShareEvidence } from "./shareEvidence.ts";
import { aboutShare, evidenceWeights } from "./shareEvidence.ts";

export type SteadyMass =
  | {
      /** "steady": dry at this humidity. "losing": it was not dry at the first of the two. */
      readonly kind: "steady" | "losing";
      readonly lossG: number;
      readonly limitG: number;
      /** Against the coat's water after 30 min, or the whole mass after an hour. */
      readonly rule: "water" | "mass";
      readonly apartS: number;
    }
  | { readonly kind: "refused"; readonly code: "too-soon"; readonly apartS: number; readonly leastS: number }
  | { readonly kind: "refused"; readonly code: "air-too-damp"; readonly rh: number; readonly mostRh: number }
  | {
      readonly kind: "refused";
      readonly code: "balance-too-coarse";
      readonly balanceG: number;
      readonly mostG: number;
    }
  | { readonly kind: "refused"; readonly code: "gaining"; readonly lossG: number; readonly limitG: number };

const apartWaterS = 30 * 60;
const apartMassS = 60 * 60;

/** How far apart two weighings must be to say anything by themselves, s: less where the coat's water (g) is known. */
export function steadyApartS(waterG: number | null): number {
  if (waterG === null) return apartMassS;
  requirePositive("waterG", waterG, { high: 1e5, unit: "g" });
  return apartWaterS;
}

/** Of the coat's water: judgement. Of the mass: the constant-mass rule for aggregates, EN 1097-5 (from memory). */
const waterLimit = 0.02;
const massLimit = 0.001;

/**
 * Whether two weighings are the same: the safest sign of a coat dry at the humidity of its air.
 *
 * With the coat's water known (`waterG`, g): apart by 30 min or more and under 2 % of it. Without (null): an hour
 * or more and under 0.1 % of the mass. Refuses a pair too near in time, air above 80 % (where nothing dries and
 * a steady weight means nothing), a gain, and a balance that cannot tell the limit (√2 of its error above it).
 */
export function steadyMass({
  first,
  second,
  waterG,
  rh,
  balanceG,
}: {
  readonly first: Weighing;
  readonly second: Weighing;
  readonly waterG: number | null;
  readonly rh: number;
  readonly balanceG: number;
}): SteadyMass {
  requirePositive("first.massG", first.massG, { high: 1e6, unit: "g" });
  requirePositive("second.massG", second.massG, { high: 1e6, unit: "g" });
  if (waterG !== null) requirePositive("waterG", waterG, { high: 1e5, unit: "g" });
  requireFraction("rh", rh);
  requirePositive("balanceG", balanceG, { high: 1e4, unit: "g" });
  const apartS = second.afterS - first.afterS;
  requireWithin("second.afterS − first.afterS", apartS, { low: 0, high: 1e10, unit: "s" });
  const leastS = steadyApartS(waterG);
  if (apartS < leastS) return { kind: "refused", code: "too-soon", apartS, leastS };
  if (rh > tooDampRh) return { kind: "refused", code: "air-too-damp", rh, mostRh: tooDampRh };
  const limitG = waterG === null ? massLimit * first.massG : waterLimit * waterG;
  const lossG = first.massG - second.massG;
  const mostG = limitG / Math.SQRT2;
  // A loss far over the limit speaks even from a coarse balance.
  if (balanceG > mostG && Math.abs(lossG) < limitG + 2 * Math.SQRT2 * balanceG)
    return { kind: "refused", code: "balance-too-coarse", balanceG, mostG };
  if (lossG < -limitG) return { kind: "refused", code: "gaining", lossG, limitG };
  const rule = waterG === null ? "mass" : "water";
  return { kind: lossG < limitG ? "steady" : "losing", lossG, limitG, rule, apartS };
}

/**
 * The loss between two weighings as evidence: only a coat that has as much to lose can have lost it, and one
 * that lost nothing over hours of drying air had nothing left. The model judges it with the air in between, so
 * damp air and long pauses need no rule of their own.
 *
 * `waterSd` is the relative error of the coat's water (0.15 where it comes from recipe and area).
 */
export function lossEvidence({
  first,
  second,
  waterG,
  balanceG,
  waterSd = 0.15,
}: {
  readonly first: Weighing;
  readonly second: Weighing;
  readonly waterG: number;
  readonly balanceG: number;
  readonly waterSd?: number | undefined;
}): ShareEvidence {
  requirePositive("waterG", waterG, { high: 1e5, unit: "g" });
  requirePositive("balanceG", balanceG, { high: 1e4, unit: "g" });
  for (const [name, { massG, afterS }] of Object.entries({ first, second })) {
    requirePositive(`${name}.massG`, massG, { high: 1e6, unit: "g" });
    requireWithin(`${name}.afterS`, afterS, { low: 0, high: 1e10, unit: "s" });
  }
  requireWithin("waterSd", waterSd, { low: 0, high: 10, unit: "(of the water)" });
  const share = (first.massG - second.massG) / waterG;
  const about = aboutShare({ share, sd: Math.hypot((Math.SQRT2 * balanceG) / waterG, waterSd * share) });
  return {
    source: "weight-loss",
    weight: evidenceWeights["weight-loss"],
    afterS: second.afterS,
    sinceS: first.afterS,
    logLikelihood: (waterShare, earlierShare) => about(earlierShare - waterShare, 0),
  };
}
