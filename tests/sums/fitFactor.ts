import {
  focusedBelief,
  learnedFrom,
  lnPair,
  logPairLikelihood,
  type DryingPair,
  type LearnedFactor,
  type LnPrior,
} from "../../src/physics/evidence/calibration.ts";
import { requirePositive } from "../../src/physics/stats/range.ts";
import { coatVariance, priorVariance } from "../../src/physics/stats/spread.ts";

/**
 * One factor from pairs: lognormal prior (mean 1, ln variance 0.16), each pair's interval-censored likelihood.
 *
 * The posterior of ln factor is log-concave: it is summed on 49 points spread over just the stretch that matters,
 * which follows it as it narrows. A fixed grid of −2…2 by 0.01 takes five times the sums and goes blind once its
 * step is no longer fine.
 */
export function fitFactor(
  pairs: readonly DryingPair[],
  {
    prior = { mean: 0, variance: priorVariance },
    scatter = Math.sqrt(coatVariance),
  }: { prior?: LnPrior | undefined; scatter?: number | undefined } = {},
): LearnedFactor {
  requirePositive("scatter", scatter, { high: 5, unit: "" });
  const bounds = pairs.map(lnPair);
  const logHeight = (b: number): number =>
    bounds.reduce(
      (sum, pair) => sum + logPairLikelihood(pair, b, scatter),
      (-0.5 * (b - prior.mean) ** 2) / prior.variance,
    );
  return learnedFrom(focusedBelief(logHeight, prior), { scatter, pairs: pairs.length });
}
