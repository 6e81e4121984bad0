import { logBelow } from "../stats/normal.ts";
import { requireFraction, requirePositive, requireWithin } from "../stats/range.ts";

export type EvidenceSource =
  | "target-mass"
  | "approach"
  | "weight-loss"
  | "surface"
  | "cheek"
  | "resistance"
  | "bag"
  | "touch"
  | "colour";

/**
 * How far each kind of evidence is believed, 0–1, as a power on its likelihood: a weight of 0.3 counts like three
 * tenths of an independent observation. Judgement, no source, but for the sensors' own errors, which each
 * likelihood holds besides.
 */
export const evidenceWeights: Readonly<Record<EvidenceSource, number>> = {
  "target-mass": 1,
  approach: 0.5,
  "weight-loss": 1,
  surface: 1,
  cheek: 0.3,
  resistance: 0.5,
  bag: 0.7,
  touch: 0.3,
  colour: 0.3,
};

/**
 * What one observation says of the water left.
 *
 * `afterS` is when it was made, seconds after the coat went on. `logLikelihood` is, up to a constant, the
 * logarithm of the chance of seeing this if `waterShare` of the coat's starting water is left then; the weight
 * is not in it. For a loss between two weighings `sinceS` is the first one's time and `earlierShare` the water
 * left then; elsewhere `sinceS` is null and `earlierShare` is not read.
 */
export type ShareEvidence = {
  readonly source: EvidenceSource;
  readonly weight: number;
  readonly afterS: number;
  readonly sinceS: number | null;
  readonly logLikelihood: (waterShare: number, earlierShare: number) => number;
};

/** A reading of the share itself, with the standard deviation of its error. */
export function aboutShare({ share, sd }: { share: number; sd: number }): ShareEvidence["logLikelihood"] {
  requirePositive("sd", sd, { high: 1e6, unit: "" });
  requireWithin("share", share, { low: -1e6, high: 1e6, unit: "" });
  return (waterShare) => -0.5 * ((waterShare - share) / sd) ** 2;
}

/**
 * A judgement that the share lies in a band: soft edges of standard deviation `sd`, and `mistaken` the chance
 * that the judgement was plainly wrong (keeps a slip from ruling anything out). An absent edge is open.
 */
export function shareWithin({
  above,
  below,
  sd,
  mistaken,
}: {
  above?: number | undefined;
  below?: number | undefined;
  sd: number;
  mistaken: number;
}): ShareEvidence["logLikelihood"] {
  requirePositive("sd", sd, { high: 10, unit: "" });
  requireFraction("mistaken", mistaken);
  requireWithin("above", above ?? 0, { low: -1e6, high: 1e6, unit: "" });
  requireWithin("below", below ?? 0, { low: -1e6, high: 1e6, unit: "" });
  return (waterShare) => {
    const lower = above === undefined ? 0 : logBelow((waterShare - above) / sd);
    const upper = below === undefined ? 0 : logBelow((below - waterShare) / sd);
    return Math.log(mistaken + (1 - mistaken) * Math.exp(lower + upper));
  };
}
