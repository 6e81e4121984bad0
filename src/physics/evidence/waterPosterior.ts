import type { FactorCurves } from "./factorCurves.ts";
import { sharesAt } from "./factorCurves.ts";
import type { GridBelief } from "./gridBelief.ts";
import { beliefOf, momentsOf, quantileOf, readAlong, shareBelow } from "./gridBelief.ts";
import { requireFraction, requireWithin } from "../stats/range.ts";
import type { EvidenceSource, ShareEvidence } from "./shareEvidence.ts";
import type { ReadySpread } from "../stats/spread.ts";

/** Water left now as a share of the starting water, and what it says of ready. */
export type WaterBand = {
  readonly low: number;
  readonly median: number;
  readonly high: number;
  /** Probability that the coat is ready now, 0–1. */
  readonly dryChance: number;
};

/** What one observation did: the band of everything else against the band with it, in the order given. */
export type Pull = {
  readonly source: EvidenceSource;
  readonly afterS: number;
  readonly without: WaterBand;
  /** How far this observation lies from all the rest, in standard deviations of their difference. */
  readonly apart: number;
};

/** An observation that does not go with the rest: over 2 sd apart, or it made the band wider. */
export type Conflict = {
  readonly source: EvidenceSource;
  readonly afterS: number;
  readonly why: "apart" | "widens";
  readonly apart: number;
  /** Width of the 80 % band without it and with it. */
  readonly widthWithout: number;
  readonly widthWith: number;
};

export type WaterPosterior = WaterBand & {
  /** The model alone. */
  readonly model: WaterBand;
  readonly pulls: readonly Pull[];
  /** Empty where all agree. */
  readonly conflicts: readonly Conflict[];
  /** This coat's own factor on time, for drying it further: in place of the prior's spread. */
  readonly spread: ReadySpread;
  /** The same by the model alone, on the same grid. */
  readonly modelSpread: ReadySpread;
};

const apartLimit = 2;

/** Narrower than this no change of width is worth a word. */
const widthMatters = 0.005;

/**
 * What is known of the water left at `nowS`: the model's lognormal factor and every observation, as one belief.
 *
 * Each observation's likelihood is read off the model's curve at its own time, for each factor of the grid, so an
 * old one still speaks of now through the air since. Their product has no order. The share at now rises with the
 * factor, so its quantiles are the factor's. More evidence narrows the band; where it does not, or lies over 2
 * standard deviations from the rest, that is told as a conflict. Refuses curves that lack a time of the evidence.
 */
export function waterPosterior({
  curves,
  evidence,
  nowS,
  readyShare,
}: {
  readonly curves: FactorCurves;
  readonly evidence: readonly ShareEvidence[];
  readonly nowS: number;
  readonly readyShare: number;
}): WaterPosterior {
  requireFraction("readyShare", readyShare);
  for (const log of curves.logPrior) requireWithin("logPrior", log, { low: -1e15, high: 1e15, unit: "" });
  const shares = sharesAt(curves, nowS);
  const said = evidence.map((one) => likelihoodOf(curves, one));
  const band = (belief: GridBelief): WaterBand => bandOf(belief, { shares, readyShare });
  const belief = factorBelief(curves, said);
  const whole = band(belief);
  const parts = evidence.map(({ source, afterS }, i) => {
    const rest = factorBelief(curves, said.toSpliced(i, 1));
    const without = band(rest);
    return { source, afterS, without, apart: apartness(rest, beliefOf(curves.lnFactors, said[i] ?? [])) };
  });
  const widthWith = whole.high - whole.low;
  const conflicts = parts.flatMap(({ source, afterS, without, apart }): readonly Conflict[] => {
    const widthWithout = without.high - without.low;
    const widens = widthWith > widthWithout + widthMatters;
    if (apart <= apartLimit && !widens) return [];
    return [{ source, afterS, why: apart > apartLimit ? "apart" : "widens", apart, widthWithout, widthWith }];
  });
  const alone = factorBelief(curves, []);
  return {
    ...whole,
    model: band(alone),
    pulls: parts,
    conflicts,
    spread: spreadOf(belief),
    modelSpread: spreadOf(alone),
  };
}

function spreadOf(belief: GridBelief): ReadySpread {
  const at = (share: number): number => Math.exp(quantileOf(belief, share));
  return { early: at(0.1), likely: at(0.5), late: at(0.9), sigmaLn: momentsOf(belief).sd };
}

/** Belief over the factor's logarithm after some likelihoods. */
function factorBelief(curves: FactorCurves, said: readonly (readonly number[])[]): GridBelief {
  const logs = curves.logPrior.map((prior, f) => said.reduce((sum, one) => sum + (one[f] ?? 0), prior));
  return beliefOf(curves.lnFactors, logs);
}

/** The belief over the factor that all the evidence leaves: for choosing what to measure next. */
export function beliefAfter(curves: FactorCurves, evidence: readonly ShareEvidence[]): GridBelief {
  return factorBelief(
    curves,
    evidence.map((one) => likelihoodOf(curves, one)),
  );
}

function likelihoodOf(curves: FactorCurves, one: ShareEvidence): readonly number[] {
  const now = sharesAt(curves, one.afterS);
  const earlier = one.sinceS === null ? now : sharesAt(curves, one.sinceS);
  return now.map((share, f) => one.weight * one.logLikelihood(share, earlier[f] ?? share));
}

function bandOf(
  belief: GridBelief,
  { shares, readyShare }: { shares: readonly number[]; readyShare: number },
): WaterBand {
  const at = (p: number): number => readAlong(belief.at, shares, quantileOf(belief, p));
  return { low: at(0.1), median: at(0.5), high: at(0.9), dryChance: dryChanceOf(belief, shares, readyShare) };
}

/** Shares rise with the factor: dry is everything up to where they cross the mark. */
function dryChanceOf(belief: GridBelief, shares: readonly number[], readyShare: number): number {
  // A mark met to the last digit is met: the walk stops a coat exactly there in damp air.
  const mark = readyShare * (1 + 1e-9) + 1e-12;
  const first = shares.findIndex((share) => share > mark);
  if (first === -1) return 1;
  if (first === 0) return 0;
  const below = shares[first - 1] ?? 0;
  const above = shares[first] ?? 1;
  const low = belief.at[first - 1] ?? 0;
  const high = belief.at[first] ?? low;
  return shareBelow(belief, low + ((high - low) * Math.max(0, mark - below)) / (above - below));
}

/** Distance of two beliefs' means over the root of their summed variances. */
function apartness(a: GridBelief, b: GridBelief): number {
  const one = momentsOf(a);
  const other = momentsOf(b);
  return Math.abs(one.mean - other.mean) / Math.max(1e-9, Math.hypot(one.sd, other.sd));
}
