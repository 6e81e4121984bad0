import type { TimedWeight } from "./approachFit.ts";
import { requireFraction, requirePositive, requireWithin } from "../stats/range.ts";
import type { ShareEvidence } from "./shareEvidence.ts";
import { aboutShare, evidenceWeights } from "./shareEvidence.ts";

export type SteadyMass =
  | {
      /** "steady": dry at this humidity. "losing": it was not dry at the first of the two. */
      readonly kind: "steady" | "losing";
      readonly lossG: number;
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
  | { readonly kind: "refused"; readonly code: "gaining"; readonly lossG: number; readonly limitG: number }
  /** More than the scale's last step, less than what speaks by itself. */
  | { readonly kind: "refused"; readonly code: "unsure"; readonly lossG: number; readonly limitG: number };

/** No two weighings nearer than this are a pair, s; common practice, no source. */
export const steadyLeastS = 30 * 60;

/** In damper air gel keeps its water and a steady weight is no sign of dryness; judgement, as for the final dry. */
export const steadyMostRh = 0.7;

/** What a wet place would have lost must be this many times what the scale tells; judgement. */
export const steadyTimes = 3;

/** Two weighings that differ by more than this many steps of the scale differ: both can be off by one, √2 of it, twice. */
const plainSteps = 2 * Math.SQRT2;

/**
 * Whether two weighings are the same, and whether that says anything: the safest sign of a coat dry at the humidity of
 * its air.
 *
 * `wetLossG` is what the place asked about would have lost between the two if it were still wet. The pair can tell only
 * where that is three times the scale's step `scaleG` or more, the two are half an hour apart or more, and the air
 * between, `rh`, was at or under 70 %. "steady": equal within a step. "losing": further apart than two readings can err,
 * which speaks whatever the pause. All in g.
 */
export function steadyMass({
  first,
  second,
  wetLossG,
  rh,
  scaleG,
}: {
  readonly first: TimedWeight;
  readonly second: TimedWeight;
  readonly wetLossG: number;
  readonly rh: number;
  readonly scaleG: number;
}): SteadyMass {
  requirePositive("first.massG", first.massG, { high: 1e6, unit: "g" });
  requirePositive("second.massG", second.massG, { high: 1e6, unit: "g" });
  requireWithin("wetLossG", wetLossG, { low: 0, high: 1e9, unit: "g" });
  requireFraction("rh", rh);
  requirePositive("scaleG", scaleG, { high: 1e4, unit: "g" });
  const apartS = second.afterS - first.afterS;
  requireWithin("second.afterS − first.afterS", apartS, { low: 0, high: 1e10, unit: "s" });
  const lossG = first.massG - second.massG;
  const limitG = plainSteps * scaleG;
  if (apartS < steadyLeastS) return { kind: "refused", code: "too-soon", apartS, leastS: steadyLeastS };
  if (lossG > limitG) return { kind: "losing", lossG, apartS };
  if (lossG < -limitG) return { kind: "refused", code: "gaining", lossG, limitG };
  if (rh > steadyMostRh) return { kind: "refused", code: "air-too-damp", rh, mostRh: steadyMostRh };
  const mostG = wetLossG / steadyTimes;
  if (steadyTimes * scaleG > wetLossG * (1 + 1e-9))
    return { kind: "refused", code: "balance-too-coarse", balanceG: scaleG, mostG };
  // Grams in tenths don't subtract to the last digit.
  if (Math.abs(lossG) > scaleG * (1 + 1e-6)) return { kind: "refused", code: "unsure", lossG, limitG };
  return { kind: "steady", lossG, apartS };
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
  readonly first: TimedWeight;
  readonly second: TimedWeight;
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
