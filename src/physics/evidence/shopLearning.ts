import type { DryingPair, LearnedFactor, LnPair } from "./calibration.ts";
import { focusedBelief, learnedFrom, lnPair, logPairLikelihood } from "./calibration.ts";
import type { GridBelief } from "./gridBelief.ts";
import { beliefOf, momentsOf } from "./gridBelief.ts";
import { logBetween, logDensity } from "../stats/normal.ts";
import { requireEveryFigure } from "../stats/range.ts";
import { coatVariance, priorVariance } from "../stats/spread.ts";

/** Groups are the caller's, such as coat family × class of air. */
export type GroupedPair = DryingPair & { readonly group: string };

export type ShopLearning = {
  readonly shop: LearnedFactor;
  /** Factor of each group that has pairs; ask `factorOf` for any. */
  readonly groups: ReadonlyMap<string, LearnedFactor>;
  /** Standard deviation of ln t of one coat: 0.25, or pooled from eight pairs on. */
  readonly scatter: number;
};

/** Variance of a group's deviation from its shop, of ln t; estimate. */
const groupVariance = 0.04;

/** From this many pairs the scatter is the shop's own; the starting value then counts as so many pairs. */
const poolFrom = 8;

type Group = { readonly name: string; readonly pairs: readonly LnPair[] };

/**
 * What a shop has learned from its pairs, on two levels at once: its own factor, and each group's deviation.
 *
 * ln factor of group g = b + d_g, b ~ N(0, 0.40²), d_g ~ N(0, 0.20²). Shop and groups are fitted as one
 * belief, so no pair counts twice. From eight pairs on the scatter about the factor is pooled, (0.0625·8 + Σ of
 * squared misfits)/(8 + Σ weights), censored ones with their expected square (expectation–maximisation, Dempster,
 * Laird & Rubin 1977). Pairs to be left out are not passed in. The order of pairs does not matter.
 */
export function learnShop(pairs: readonly GroupedPair[]): ShopLearning {
  const byGroup = new Map<string, LnPair[]>();
  for (const pair of pairs) {
    const list = byGroup.get(pair.group) ?? [];
    list.push(lnPair(pair));
    byGroup.set(pair.group, list);
  }
  const groups = [...byGroup].map(([name, list]) => ({ name, pairs: list }));
  let scatter = Math.sqrt(coatVariance);
  let fitted = fit(groups, scatter);
  if (pairs.length >= poolFrom)
    for (let i = 0; i < 30; i++) {
      const pooled = pooledScatter(groups, fitted.groups, scatter);
      const settled = Math.abs(pooled - scatter) < 5e-3 * scatter;
      scatter = pooled;
      fitted = fit(groups, scatter);
      if (settled) break;
    }
  const shop = learnedFrom(fitted.shop, { scatter, pairs: pairs.length });
  const learned = groups.map(({ name, pairs: own }, i) => {
    const belief = fitted.groups[i] ?? fitted.shop;
    return [name, learnedFrom(belief, { scatter, pairs: own.length })] as const;
  });
  return { shop, groups: new Map(learned), scatter };
}

/**
 * The factor for a coat of a group: its own where it has pairs, else the shop's with the spread between groups on
 * top (not before the shop has learned anything: the starting spread is that of any coat).
 */
export function factorOf({ shop, groups, scatter }: ShopLearning, group: string): LearnedFactor {
  requireEveryFigure("shop", shop);
  const own = groups.get(group);
  if (own !== undefined || shop.pairs === 0) return own ?? shop;
  const lnSd = Math.hypot(shop.lnSd, Math.sqrt(groupVariance));
  const at = Array.from({ length: 49 }, (_, i) => shop.lnMean + (lnSd * (i - 24)) / 4);
  const belief = beliefOf(
    at,
    at.map((b) => logDensity((b - shop.lnMean) / lnSd)),
  );
  return { ...learnedFrom(belief, { scatter, pairs: 0 }), lnSd };
}

/** The factor's belief of the shop, and of each group in order. */
function fit(
  groups: readonly Group[],
  scatter: number,
): { readonly shop: GridBelief; readonly groups: readonly GridBelief[] } {
  const prior = { mean: 0, variance: priorVariance };
  const wide = { mean: 0, variance: priorVariance + groupVariance };
  const own = groups.map(({ pairs }) => {
    const logLikelihood = (b: number): number =>
      pairs.reduce((sum, pair) => sum + logPairLikelihood(pair, b, scatter), 0);
    // The grid goes where prior and pairs allow; the heights are the pairs' alone.
    const { at } = focusedBelief((b) => logLikelihood(b) + logPrior(b, wide), wide);
    return beliefOf(at, at.map(logLikelihood));
  });
  const shopHeight = (b: number): number =>
    own.reduce((sum, said) => sum + logMessage(said, b), logPrior(b, prior));
  const shop = focusedBelief(shopHeight, prior);
  const beliefs = own.map((said) => {
    const others = beliefOf(
      shop.at,
      shop.at.map((b, i) => Math.log(shop.mass[i] ?? 0) - logMessage(said, b)),
    );
    return beliefOf(
      said.at,
      said.at.map((b, i) => Math.log(said.mass[i] ?? 0) + logMessage(others, b)),
    );
  });
  return { shop, groups: beliefs };
}

const logPrior = (b: number, { mean, variance }: { mean: number; variance: number }): number =>
  (-0.5 * (b - mean) ** 2) / variance;

/** What a belief one level away says of b here: smeared by the spread between shop and group. */
function logMessage({ at, mass }: GridBelief, b: number): number {
  let sum = 0;
  for (const [i, x] of at.entries()) sum += (mass[i] ?? 0) * Math.exp((-0.5 * (x - b) ** 2) / groupVariance);
  // Far outside nothing is left of the sum; a floor keeps the slope without a minus infinity.
  return Math.log(sum + 1e-300);
}

/** Three points that stand for a bell curve: Gauss–Hermite. */
const stands: readonly (readonly [offset: number, weight: number])[] = [
  [-Math.sqrt(3), 1 / 6],
  [0, 2 / 3],
  [Math.sqrt(3), 1 / 6],
];

function pooledScatter(groups: readonly Group[], beliefs: readonly GridBelief[], scatter: number): number {
  let squares = poolFrom * coatVariance;
  let count = poolFrom;
  for (const [i, { pairs }] of groups.entries()) {
    const belief = beliefs[i];
    if (belief === undefined) continue;
    const { mean, sd } = momentsOf(belief);
    for (const pair of pairs) {
      count += pair.weight;
      for (const [offset, share] of stands)
        squares += pair.weight * share * expectedSquare(pair, mean + offset * sd, scatter);
    }
  }
  return Math.sqrt(squares / count);
}

/** Mean square of a pair's misfit, given the bounds it lies in: moments of the truncated normal. */
function expectedSquare({ low, high }: LnPair, b: number, scatter: number): number {
  const from = (low - b) / scatter;
  const to = (high - b) / scatter;
  if (to - from < 1e-2) return ((from + to) / 2) ** 2 * scatter ** 2;
  const logShare = logBetween(from, to);
  const at = (z: number): number => (Number.isFinite(z) ? z * Math.exp(logDensity(z) - logShare) : 0);
  return Math.max(0, 1 + at(from) - at(to)) * scatter ** 2;
}
