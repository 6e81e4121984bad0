import type { Approach, DryInterval, TimedWeight } from "./approachFit.ts";
import { aitken, fitExponential, leastSpanS, spanS } from "./approachFit.ts";
import { requireEveryFigure, requirePositive, requireWithin } from "../stats/range.ts";
import type { ShareEvidence } from "./shareEvidence.ts";
import { evidenceWeights, shareWithin } from "./shareEvidence.ts";

export type ApproachVerdict =
  | {
      readonly kind: "between";
      /** The dry mass lies between these, g: the lowest estimate, and the last weighing. */
      readonly lowG: number;
      readonly highG: number;
      readonly method: "three-points" | "scan";
      readonly best: Approach;
      readonly interval: NonNullable<DryInterval>;
      /** Dry mass without the last and without the first weighing, g; null with only three. */
      readonly earlierG: number | null;
      readonly laterG: number | null;
      /** Weighings that came after half the water had gone. */
      readonly used: number;
    }
  | { readonly kind: "refused"; readonly code: "too-few"; readonly weighings: number; readonly least: number }
  | {
      readonly kind: "refused";
      readonly code: "too-early";
      readonly goneShare: number;
      readonly leastShare: number;
      readonly used: number;
      readonly least: number;
    }
  | { readonly kind: "refused"; readonly code: "gaining"; readonly amplitudeG: number }
  | {
      readonly kind: "refused";
      readonly code: "not-slowing";
      readonly firstLossG: number;
      readonly secondLossG: number;
    }
  | {
      readonly kind: "refused";
      readonly code: "too-slow";
      readonly tauS: number;
      readonly durationS: number;
    }
  | {
      readonly kind: "refused";
      readonly code: "too-vague";
      /** null where the balance bounds it nowhere. */
      readonly intervalG: number | null;
      readonly mostG: number;
    };

const leastWeighings = 3;

/** Share of the water that must have gone before a weighing may be used; judgement. */
const goneShareWanted = 0.5;

/** Widest interval taken, as a share of the amplitude; judgement. */
const widestShare = 0.15;

/**
 * What a run of weighings says of the dry mass, with every guard against its bias, or a refusal with its numbers.
 *
 * A coat drying behind a receding front does not approach its dry mass exponentially. Early on the exponential
 * ends too high and calls a wet coat dry, so only weighings after half the water (`waterG`, from the mass
 * `startG` at which the coat went on) are used. Later it ends too low; the last weighing is too high as long as
 * anything dries: the dry mass lies between the two (derived here, seen in the tests on the model's own curves).
 * Refused besides: a rise, a loss that does not slow, a time constant longer than the weighings cover, an
 * interval over 15 % of the amplitude. Three equally spaced weighings go through Aitken's formula, others
 * through the scan.
 */
export function judgeApproach({
  weighings,
  balanceG,
  startG,
  waterG,
}: {
  readonly weighings: readonly TimedWeight[];
  readonly balanceG: number;
  readonly startG: number;
  readonly waterG: number;
}): ApproachVerdict {
  requirePositive("startG", startG, { high: 1e6, unit: "g" });
  requirePositive("waterG", waterG, { high: 1e5, unit: "g" });
  requirePositive("balanceG", balanceG, { high: 1e4, unit: "g" });
  const ordered = weighings.toSorted((a, b) => a.afterS - b.afterS || a.massG - b.massG);
  for (const { afterS, massG } of ordered) {
    requireWithin("afterS", afterS, { low: 0, high: 1e10, unit: "s" });
    requirePositive("massG", massG, { high: 1e6, unit: "g" });
  }
  const last = ordered.at(-1);
  if (last === undefined || ordered.length < leastWeighings)
    return { kind: "refused", code: "too-few", weighings: ordered.length, least: leastWeighings };
  const late = ordered.filter(({ massG }) => startG - massG >= goneShareWanted * waterG);
  const [a, b, c] = late;
  if (a === undefined || b === undefined || c === undefined || spanS(late) < leastSpanS)
    return {
      kind: "refused",
      code: "too-early",
      goneShare: (startG - last.massG) / waterG,
      leastShare: goneShareWanted,
      used: late.length,
      least: leastWeighings,
    };
  const isThree = late.length === 3 && Math.abs(c.afterS - b.afterS - (b.afterS - a.afterS)) < 1;
  const { best: scanned, interval } = fitExponential({ weighings: late, balanceG });
  if (last.massG > a.massG || scanned.amplitudeG < 0)
    return { kind: "refused", code: "gaining", amplitudeG: scanned.amplitudeG };
  const three = isThree ? aitken([a, b, c]) : null;
  if (isThree && three === null) {
    const losses = { firstLossG: a.massG - b.massG, secondLossG: b.massG - c.massG };
    return { kind: "refused", code: "not-slowing", ...losses };
  }
  const best = three ?? scanned;
  const durationS = last.afterS - a.afterS;
  if (best.tauS > durationS) return { kind: "refused", code: "too-slow", tauS: best.tauS, durationS };
  const mostG = widestShare * best.amplitudeG;
  const intervalG = interval && interval.highG - interval.lowG;
  if (interval === null || intervalG === null || intervalG > mostG)
    return { kind: "refused", code: "too-vague", intervalG, mostG };
  const without = (part: readonly TimedWeight[]): number | null =>
    part.length < leastWeighings || spanS(part) < leastSpanS
      ? null
      : fitExponential({ weighings: part, balanceG }).best.dryG;
  const earlierG = without(late.slice(0, -1));
  const laterG = without(late.slice(1));
  const lowG = Math.min(interval.lowG, best.dryG, earlierG ?? best.dryG, laterG ?? best.dryG);
  return {
    kind: "between",
    lowG: Math.min(lowG, last.massG),
    highG: last.massG,
    method: three ? "three-points" : "scan",
    best: { dryG: best.dryG, amplitudeG: best.amplitudeG, tauS: best.tauS, misfitG2: best.misfitG2 },
    interval,
    earlierG,
    laterG,
    used: late.length,
  };
}

/** An approach as evidence: no more water left than between its lowest estimate and the last weighing. */
export function approachEvidence(
  verdict: ApproachVerdict,
  { afterS, balanceG, waterG }: { afterS: number; balanceG: number; waterG: number },
): ShareEvidence | null {
  if (verdict.kind === "refused") return null;
  requireWithin("afterS", afterS, { low: 0, high: 1e10, unit: "s" });
  requirePositive("balanceG", balanceG, { high: 1e4, unit: "g" });
  requirePositive("waterG", waterG, { high: 1e5, unit: "g" });
  requireEveryFigure("verdict", verdict);
  requireWithin("highG", verdict.highG, { low: verdict.lowG, high: 1e6, unit: "g" });
  const below = (verdict.highG - verdict.lowG) / waterG;
  return {
    source: "approach",
    weight: evidenceWeights.approach,
    afterS,
    sinceS: null,
    logLikelihood: shareWithin({
      below,
      sd: Math.max(0.01, (Math.SQRT2 * balanceG) / waterG),
      mistaken: 0.05,
    }),
  };
}
