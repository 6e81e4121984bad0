import type { FactorCurves } from "./factorCurves.ts";
import { sharesAt } from "./factorCurves.ts";
import type { GridBelief } from "./gridBelief.ts";
import { requireBelief } from "./gridBelief.ts";
import { requirePositive, requireWithin } from "../stats/range.ts";

export type NextWeighing =
  | {
      readonly kind: "weigh";
      /** Seconds since the coat went on. */
      readonly afterS: number;
      /** Expected gain of knowledge, nats; 0.7 halves the width of the band. */
      readonly gainNats: number;
      /** Spread of the water left that is expected then, before and after weighing, as a share. */
      readonly sdBefore: number;
      readonly sdAfter: number;
    }
  | {
      readonly kind: "refused";
      readonly code: "nothing-to-learn";
      readonly gainNats: number;
      readonly leastNats: number;
    };

/** Under this a weighing is not worth a walk: it would narrow the band by a tenth; judgement. */
const leastNats = 0.1;

/** Waiting longer must earn something: the first time that narrows by this much of the most; judgement. */
const enough = 0.95;

/**
 * When to weigh next to learn most of the water left.
 *
 * At each time of the curves from `nowS` on: sdBefore is the spread of the water left that the belief still allows
 * then, σ = √(balance² + (fraction·dryness)²) what the weighing itself would miss, and sdAfter what it would
 * leave (product of two bell curves). Chosen is the first time within 5 % of the greatest narrowing, sdBefore −
 * sdAfter: too early all factors still agree on the water, too late all are dry. Narrowing of the water is
 * asked for, not of the factor, for the first minutes tell the rate of the wet face well but little of the front
 * below it. `gainNats` is the expected information, ½ ln(1 + sdBefore²/σ²) (Lindley, Ann. Math. Stat. 27 (1956)
 * 986). `balanceShare`: standard deviation of the balance over the coat's water. `fractionSd`: relative error of
 * the coat's water (0.07 from a water fraction of 0.28 ± 0.02).
 */
export function nextWeighing({
  curves,
  belief,
  nowS,
  balanceShare,
  fractionSd = 0.07,
}: {
  readonly curves: FactorCurves;
  readonly belief: GridBelief;
  readonly nowS: number;
  readonly balanceShare: number;
  readonly fractionSd?: number | undefined;
}): NextWeighing {
  requirePositive("balanceShare", balanceShare, { high: 10, unit: "(of the water)" });
  requireWithin("fractionSd", fractionSd, { low: 0, high: 1, unit: "" });
  requireBelief(belief);
  requireWithin("belief's points", belief.at.length, {
    low: curves.lnFactors.length,
    high: curves.lnFactors.length,
    unit: "(the curves' own)",
  });
  requireWithin("nowS", nowS, { low: 0, high: 1e10, unit: "s" });
  for (const afterS of curves.timesS) requireWithin("timesS", afterS, { low: 0, high: 1e10, unit: "s" });
  const chances = curves.timesS
    .filter((afterS) => afterS >= nowS)
    .map((afterS) => {
      const { mean, variance } = spreadOf(belief, sharesAt(curves, afterS));
      const error2 = balanceShare ** 2 + (fractionSd * (1 - mean)) ** 2;
      const gainNats = 0.5 * Math.log1p(variance / error2);
      const sdAfter = Math.sqrt((variance * error2) / (variance + error2));
      return { afterS, gainNats, sdBefore: Math.sqrt(variance), sdAfter };
    });
  const narrowing = ({ sdBefore, sdAfter }: { sdBefore: number; sdAfter: number }): number =>
    sdBefore - sdAfter;
  const most = Math.max(0, ...chances.map(narrowing));
  const chosen = chances.find((chance) => narrowing(chance) >= enough * most);
  if (chosen === undefined || chosen.gainNats < leastNats)
    return { kind: "refused", code: "nothing-to-learn", gainNats: chosen?.gainNats ?? 0, leastNats };
  return { kind: "weigh", ...chosen };
}

function spreadOf(
  { mass }: GridBelief,
  shares: readonly number[],
): { readonly mean: number; readonly variance: number } {
  const mean = mass.reduce((sum, part, i) => sum + part * (shares[i] ?? 0), 0);
  const variance = mass.reduce((sum, part, i) => sum + part * ((shares[i] ?? 0) - mean) ** 2, 0);
  return { mean, variance };
}
