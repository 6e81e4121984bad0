import type { GridBelief } from "./gridBelief.ts";
import { beliefOf, momentsOf, quantileOf, requireBelief } from "./gridBelief.ts";
import { logBetween, logDensity, tenthQuantile } from "../stats/normal.ts";
import {
  requireEveryFigure,
  requireFraction,
  requirePositive,
  requireWhole,
  requireWithin,
} from "../stats/range.ts";

/**
 * One coat the shop has seen dry, or still wet: the model's hours for it (`predictedS`, walked through its own air
 * with no factor) against what was seen, seconds since the coat went on. `wetAtS`: still wet then; `dryAtS`: dry
 * then; null where not seen. Equal figures are an exact time. "Found dry in the morning" is a `dryAtS` without
 * a `wetAtS`, never a drying time. Weight by kind of evidence, above 0 to 1.
 */
export type DryingPair = {
  readonly predictedS: number;
  readonly wetAtS: number | null;
  readonly dryAtS: number | null;
  readonly weight: number;
};

/**
 * Weight of a pair by the evidence that closed it; judgement, no source. Touch and colour are not among them: they tell
 * when the outer film broke, not when a coat was dry through.
 */
export const pairWeights = { weighing: 1, surface: 1, bag: 0.7, resistance: 0.5 } as const;

/** A factor on drying time as learned: time = factor × the model's. */
export type LearnedFactor = {
  /** Median, kept within 0.33–3. */
  readonly factor: number;
  /** 90 % interval of the factor, not cut. */
  readonly low: number;
  readonly high: number;
  /** Mean and standard deviation of its logarithm. */
  readonly lnMean: number;
  readonly lnSd: number;
  /** Standard deviation of ln t of one coat about the factor. */
  readonly scatter: number;
  /** Times the model's time, after which nine coats in ten are ready. */
  readonly safeMultiplier: number;
  readonly pairs: number;
  /** The pairs ask for a factor beyond 0.33–3: look for a wrong figure instead. */
  readonly limited: boolean;
};

/** Beyond these a factor is a mistake in the figures, not a shop; judgement. */
const leastFactor = 0.33;
const mostFactor = 3;

/** ln bounds of a pair, in standard units once a factor and a scatter are known. */
export type LnPair = { readonly low: number; readonly high: number; readonly weight: number };

/** Bounds of ln(t/t̂) nearer than this are one moment: subtracting the factor would round the space between them away. */
const oneMoment = 1e-9;

/** The pair as bounds of ln(t/t̂), equal for one moment. Refuses a pair that says nothing, dry at 0 s, or wet after dry. */
export function lnPair({ predictedS, wetAtS, dryAtS, weight }: DryingPair): LnPair {
  requirePositive("predictedS", predictedS, { high: 1e10, unit: "s" });
  requireFraction("weight", weight);
  if (wetAtS === null && dryAtS === null)
    throw new RangeError("a pair must have wetAtS or dryAtS, found neither");
  if (wetAtS !== null) requireWithin("wetAtS", wetAtS, { low: 0, high: 1e10, unit: "s" });
  // Nothing is dry at the moment it was dipped.
  if (dryAtS !== null) requirePositive("dryAtS", dryAtS, { high: 1e10, unit: "s" });
  const low = wetAtS === null || wetAtS < 1e-12 ? -Infinity : Math.log(wetAtS / predictedS);
  const high = dryAtS === null ? Infinity : Math.log(dryAtS / predictedS);
  if (!(low <= high)) throw new RangeError(`wetAtS must not be after dryAtS ${dryAtS}, found ${wetAtS}`);
  return { low: high - low < oneMoment ? high : low, high, weight };
}

/** Log likelihood of a factor's logarithm from one pair. */
export function logPairLikelihood({ low, high, weight }: LnPair, b: number, scatter: number): number {
  requirePositive("scatter", scatter, { high: 1e3, unit: "" });
  requireFraction("weight", weight);
  return weight === 0
    ? 0
    : weight *
        (low === high
          ? logDensity((low - b) / scatter)
          : logBetween((low - b) / scatter, (high - b) / scatter));
}

/** Prior of a factor's logarithm. */
export type LnPrior = { readonly mean: number; readonly variance: number };

/** The shown figures of a belief over a factor's logarithm. */
export function learnedFrom(
  belief: GridBelief,
  { scatter, pairs }: { scatter: number; pairs: number },
): LearnedFactor {
  requireBelief(belief);
  requirePositive("scatter", scatter, { high: 100, unit: "" });
  requireWhole("pairs", pairs, { low: 0, high: 1e9 });
  const { mean, sd } = momentsOf(belief);
  requireWithin("ln factor", mean, { low: -300, high: 300, unit: "" });
  requireWithin("sd of ln factor", sd, { low: 0, high: 100, unit: "" });
  const factor = Math.min(mostFactor, Math.max(leastFactor, Math.exp(mean)));
  return {
    factor,
    low: Math.exp(quantileOf(belief, 0.05)),
    high: Math.exp(quantileOf(belief, 0.95)),
    lnMean: mean,
    lnSd: sd,
    scatter,
    safeMultiplier: factor * Math.exp(tenthQuantile * Math.hypot(sd, scatter)),
    pairs,
    limited: Math.exp(mean) !== factor,
  };
}

/**
 * A learned factor kept between two bounds of its logarithm. What was cut off counts as spread, up to `mostSd` or what
 * the fit had, and the interval reaches from where the fit had it to where it is held.
 */
export function heldWithin(
  one: LearnedFactor,
  { low, high, mostSd }: { readonly low: number; readonly high: number; readonly mostSd: number },
): LearnedFactor {
  requireEveryFigure("one", one);
  for (const [name, value] of Object.entries({ low, high, "one.lnMean": one.lnMean }))
    requireWithin(name, value, { low: -20, high: 20, unit: "(of ln t)" });
  for (const [name, value] of Object.entries({ mostSd, "one.lnSd": one.lnSd, "one.scatter": one.scatter }))
    requireWithin(name, value, { low: 0, high: 20, unit: "(of ln t)" });
  requireWithin("high − low", high - low, { low: 0, high: 40, unit: "(of ln t)" });
  for (const [name, value] of Object.entries({ factor: one.factor, low: one.low, high: one.high }))
    requireWithin(`one.${name}`, value, { low: 0, high: 1e6, unit: "" });
  const lnMean = Math.min(high, Math.max(low, one.lnMean));
  if (lnMean === one.lnMean) return one;
  const lnSd = Math.max(one.lnSd, Math.min(mostSd, Math.hypot(one.lnSd, one.lnMean - lnMean)));
  const factor = Math.min(mostFactor, Math.max(leastFactor, Math.exp(lnMean)));
  const reach = Math.exp(twentiethQuantile * lnSd);
  return {
    ...one,
    factor,
    low: Math.min(one.low, factor / reach),
    high: Math.max(one.high, factor * reach),
    lnMean,
    lnSd,
    safeMultiplier: factor * Math.exp(tenthQuantile * Math.hypot(lnSd, one.scatter)),
  };
}

/** Nineteen in twenty of a bell curve lie below so many standard deviations. */
const twentiethQuantile = 1.6449;

const focusPoints = 49;

/** Below this under the top, of the logarithm, a height does not count. */
const fade = 25;

/** A log-concave height as a belief on just the stretch where it counts. */
export function focusedBelief(logHeight: (b: number) => number, { mean, variance }: LnPrior): GridBelief {
  requirePrior({ mean, variance });
  const topAt = topOf(logHeight, { mean, reach: 2 * Math.sqrt(variance) });
  const top = logHeight(topAt);
  const edge = (direction: -1 | 1): number => {
    let reach = Math.sqrt(variance) / 16;
    while (logHeight(topAt + direction * reach) > top - fade) reach *= 1.6;
    return topAt + direction * reach;
  };
  const low = edge(-1);
  const step = (edge(1) - low) / (focusPoints - 1);
  const at = Array.from({ length: focusPoints }, (_, i) => low + i * step);
  return beliefOf(at, at.map(logHeight));
}

function requirePrior({ mean, variance }: LnPrior): void {
  requireWithin("prior.mean", mean, { low: -100, high: 100, unit: "" });
  requirePositive("prior.variance", variance, { high: 10, unit: "" });
}

/** Top of a log-concave curve: steps that grow while it rises and turn back, halved, when it falls. */
function topOf(f: (b: number) => number, { mean, reach }: { mean: number; reach: number }): number {
  let at = mean;
  let height = f(at);
  let step = reach / 4;
  for (let i = 0; i < 60 && Math.abs(step) > 0.01 * reach; i++) {
    const next = f(at + step);
    if (next > height) {
      at += step;
      height = next;
      step *= 1.5;
    } else step *= -0.4;
  }
  return at;
}
