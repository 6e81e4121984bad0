import { approachEvidence, judgeApproach } from "../../physics/evidence/approachVerdict.ts";
import { lossEvidence } from "../../physics/evidence/steadyMass.ts";
import { targetMass, targetMassEvidence, waterByMass } from "../../physics/slurry/targetMass.ts";
import type { Said, Unsaid } from "./coatSaid.ts";
import type { CoatSpan, CoatWeights, UsedObservation, UnusedObservation } from "./coatSpan.ts";
import type { DrynessSeen } from "../piece/piece.ts";
import { ranges, within } from "../entries/ranges.ts";

export type Weight = DrynessSeen & { readonly method: "weight" };

/** The chain of weighings of one coat. */
export type WeightChain = {
  readonly three: { readonly dryG: number; readonly drainedG: number; readonly stuccoedG: number } | null;
  readonly stuccoed: Weight | null;
  readonly drying: readonly Weight[];
  /** Standard deviation of one reading, g: the scale's step where it was entered, else by the digits of the weights. */
  readonly balanceG: number;
};

/** As far as the sums of weighing go, g. */
export const weighed = { low: ranges.massG.low, high: 1e6 };
const watered = { low: 0.01, high: 1e5 };

export const isWeight = (seen: DrynessSeen): seen is Weight =>
  seen.method === "weight" && within(weighed, seen.massG);

/** Weighings of the span up to a time, each in its place; a coat weighed anew in a moment counts by the last. */
export function chainOf(seen: readonly DrynessSeen[], weights: CoatWeights, until = Infinity): WeightChain {
  const all = seen.filter(isWeight).filter(({ at }) => at <= until);
  const drained = all.findLast(({ moment }) => moment === "drained") ?? null;
  const told = all.findLast(({ moment }) => moment === "stuccoed") ?? null;
  const stuccoed = weights.hasStucco ? told : (told ?? drained);
  const { dryG } = weights;
  const three =
    dryG !== null && drained !== null && stuccoed !== null
      ? { dryG, drainedG: drained.massG, stuccoedG: stuccoed.massG }
      : null;
  const drying = all.filter(
    ({ moment, at }) => (moment ?? "drying") === "drying" && at >= (stuccoed?.at ?? 0),
  );
  return { three, stuccoed, drying, balanceG: balanceOf(all, dryG) };
}

/** The finest balance that is believed, as a step and as a share of what it bears; estimates. */
const finestG = 0.1;
export const finestShare = 2e-5;

/** The step a balance was read in: a standard deviation of one step covers rounding and its unrest. Estimate. */
function balanceOf(weights: readonly Weight[], dryG: number | null): number {
  const massesG = [...weights.map(({ massG }) => massG), dryG ?? 0];
  // A trailing nought says more than the number does, so an entered step stands before the digits.
  const steps = weights.flatMap(({ scaleG }) => (within(ranges.scaleG, scaleG) ? [scaleG] : []));
  const stepG = steps.length > 0 ? Math.max(...steps) : stepOfDigits(massesG);
  return Math.max(stepG, finestShare * Math.max(...massesG, 0));
}

function stepOfDigits(massesG: readonly number[]): number {
  const told = massesG.filter((massG) => massG > 0);
  // Fives can fall by chance: once in 125 over three weighings of a balance that tells single grams.
  const steps = told.length >= 3 ? [5, 1, finestG] : [1, finestG];
  return steps.find((one) => told.every((massG) => isMultiple(massG, one))) ?? finestG;
}

const isMultiple = (value: number, step: number): boolean =>
  Math.abs(value / step - Math.round(value / step)) < 1e-6;

/** Water of the coat, g: by three weighings where they hold, else by area; null where neither is known. */
export function waterOf(chain: WeightChain, { waterFraction, byAreaG }: CoatWeights): number | null {
  const { three, balanceG } = chain;
  const target = three && targetMass({ ...three, waterFraction, balanceG });
  if (target?.kind === "target") return target.waterG;
  return within(watered, byAreaG) ? byAreaG : null;
}

/** What one weighing says of the water left: against the target mass, else against the weighing before. */
export function weightSays(
  seen: Weight,
  { seen: all, weights, from }: CoatSpan,
): readonly (UsedObservation | UnusedObservation)[] {
  if ((seen.moment ?? "drying") !== "drying" || !isWeight(seen)) return [];
  const chain = chainOf(all, weights, seen.at);
  const afterS = (seen.at - from) / 1000;
  const heard = (said: Said, evidence: UsedObservation["evidence"] | null): readonly UsedObservation[] =>
    evidence === null ? [] : [{ seen, said, evidence }];
  const unheard = (why: Unsaid): readonly UnusedObservation[] => [{ seen, why }];
  const { three, balanceG } = chain;
  if (three !== null) {
    const of = { ...three, waterFraction: weights.waterFraction, balanceG };
    const target = targetMass(of);
    const water = waterByMass({ ...of, massG: seen.massG });
    if (target.kind === "refused" || water === null)
      return target.kind === "refused"
        ? [...unheard(target), ...lossSays(seen, chain, { all, weights, from })]
        : [];
    const { waterShare, sdShare, targetG, sdG, waterG, strays } = water;
    if (strays !== null) return unheard({ code: strays, waterShare });
    const leastGainG = Math.max(3 * Math.SQRT2 * balanceG, mostGained * waterG);
    const gainG = gainedAfter(seen, { all, weights });
    if (gainG > leastGainG) return unheard({ code: "lighter-than-later", gainG });
    const earlier = chain.drying.findLast(
      (one) =>
        one.at < seen.at &&
        gainedAfter(one, { all, weights }) <= leastGainG &&
        waterByMass({ ...of, massG: one.massG })?.strays === null,
    );
    const before = earlier && { massG: earlier.massG, afterS: (earlier.at - from) / 1000 };
    return heard(
      { by: "target-mass", waterShare, sdShare, targetG, sdG, waterG },
      targetMassEvidence({ ...of, massG: seen.massG, afterS, before }),
    );
  }
  return lossSays(seen, chain, { all, weights, from });
}

/** How much heavier than this one a later weighing of the coat was, g: water does not come back, so one of them is wrong. */
function gainedAfter(
  seen: Weight,
  { all, weights }: Pick<CoatSpan, "weights"> & { all: CoatSpan["seen"] },
): number {
  const later = chainOf(all, weights).drying.filter(({ at }) => at > seen.at);
  return Math.max(0, ...later.map(({ massG }) => massG - seen.massG));
}

/** A loss beyond this many times the coat's water, and a gain beyond this share of it, is no drying; judgement. */
const mostLost = 1.5;
const mostGained = 0.1;

/** Why a difference of two weighings can't be water alone, as where a digit slipped; null where it can. */
function strangeLoss(
  lossG: number,
  { waterG, balanceG }: { waterG: number; balanceG: number },
): Unsaid | null {
  const unrestG = 3 * Math.SQRT2 * balanceG;
  if (lossG > mostLost * waterG + unrestG) return { code: "more-than-its-water", lossG, waterG };
  const limitG = Math.max(unrestG, mostGained * waterG);
  return lossG < -limitG ? { kind: "refused", code: "gaining", lossG, limitG } : null;
}

function lossSays(
  seen: Weight,
  chain: WeightChain,
  { all, weights, from }: Pick<CoatSpan, "weights" | "from"> & { readonly all: CoatSpan["seen"] },
): readonly (UsedObservation | UnusedObservation)[] {
  const { drying, stuccoed, balanceG } = chain;
  const waterG = weights.byAreaG;
  const before = drying.findLast(({ at }) => at < seen.at) ?? stuccoed;
  if (before === null) return [{ seen, why: { code: "nothing-before" } }];
  if (!within(watered, waterG)) return [{ seen, why: { code: "no-water" } }];
  if (balanceG > waterG / 2)
    return [{ seen, why: { kind: "refused", code: "balance-too-coarse", balanceG, mostG: waterG / 2 } }];
  const weighing = (one: Weight) => ({ afterS: (one.at - from) / 1000, massG: one.massG });
  const [first, second] = [weighing(before), weighing(seen)];
  const strange = strangeLoss(first.massG - second.massG, { waterG, balanceG });
  if (strange !== null) return [{ seen, why: strange }];
  const loss: UsedObservation = {
    seen,
    said: {
      by: "weight-loss",
      lossG: first.massG - second.massG,
      apartS: second.afterS - first.afterS,
      waterG,
    },
    evidence: lossEvidence({ first, second, waterG, balanceG }),
  };
  // The run speaks once, with its last weighing: each earlier one is in it already.
  const isLast = !all.some(
    (one) => one.at > seen.at && isWeight(one) && (one.moment ?? "drying") === "drying",
  );
  if (stuccoed === null || drying.length < 3 || !isLast) return [loss];
  const verdict = judgeApproach({
    weighings: drying.map(weighing),
    balanceG,
    startG: stuccoed.massG,
    waterG,
  });
  const approach = approachEvidence(verdict, { afterS: second.afterS, balanceG, waterG });
  if (verdict.kind === "refused" || approach === null)
    return verdict.kind === "refused" ? [loss, { seen, why: verdict }] : [loss];
  const { lowG, highG, best, used } = verdict;
  return [loss, { seen, said: { by: "approach", lowG, highG, tauS: best.tauS, used }, evidence: approach }];
}
