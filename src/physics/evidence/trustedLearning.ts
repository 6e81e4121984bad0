import { requireEveryFigure } from "../stats/range.ts";
import type { LearnedFactor, LnPair } from "./calibration.ts";
import { heldWithin, lnPair } from "./calibration.ts";
import type { GroupedPair, ShopLearning } from "./shopLearning.ts";
import { learnShop } from "./shopLearning.ts";
import { coatVariance, priorVariance } from "../stats/spread.ts";

/** Until three coats agree, what is learned moves a time by no more than × ÷ this; judgement. */
export const mostUntilAgreed = 1.25;

/** So many coats must agree; judgement. */
const agreeing = 3;

/** How far from the middle of three the outer two may lie, of ln t: one coat's own scatter; judgement. */
const agreeWithin = Math.sqrt(coatVariance);

/** Bounds further apart than this, of ln t, give a coat no time of its own to agree on; judgement. */
const narrowest = 4 * agreeWithin;

/**
 * What a shop has learned, held back until three coats agree. Each pair must be of another coat.
 *
 * `learnShop` is the fit; this is a layer upon it. A factor stays within × ÷ 1.25 until three coats agree: the shop's
 * about 1, a group's about 1 while the shop is held, and about the shop's once only the group is. A held factor keeps
 * the fit's interval, drawn out to where it is held, and is never told as surer than the fit has it.
 */
export function trustedLearning(pairs: readonly GroupedPair[]): ShopLearning {
  const fitted = learnShop(pairs);
  const lnPairs = pairs.map(lnPair);
  if (!doAgree(lnPairs)) {
    const hold = (one: LearnedFactor): LearnedFactor => held(one, 0);
    const groups = [...fitted.groups].map(([name, one]) => [name, hold(one)] as const);
    return { ...fitted, shop: hold(fitted.shop), groups: new Map(groups) };
  }
  const groups = [...fitted.groups].map(([name, one]) => {
    const own = lnPairs.filter((_, i) => pairs[i]?.group === name);
    return [name, doAgree(own) ? one : held(one, fitted.shop.lnMean)] as const;
  });
  return { ...fitted, groups: new Map(groups) };
}

/**
 * Whether three coats agree on their time: each was seen wet and dry close enough together to have one, and of the
 * three neither outer one lies further from the middle one than a coat scatters. Or, as waiting longer does no harm:
 * three were still wet past 1.25 times the model's time. Judgement.
 */
export function doAgree(pairs: readonly LnPair[]): boolean {
  requireEveryFigure(
    "pairs",
    pairs.map(({ low, high }) => [low, high].filter((end) => Math.abs(end) !== Infinity)),
  );
  const stillWet = pairs.filter(({ low }) => low > Math.log(mostUntilAgreed));
  if (stillWet.length >= agreeing) return true;
  const times = pairs
    .filter(({ low, high }) => high - low <= narrowest)
    .map(({ low, high }) => (low + high) / 2)
    .toSorted((a, b) => a - b);
  return times.some((middle, i) => {
    const [before, after] = [times[i - 1], times[i + 1]];
    if (before === undefined || after === undefined) return false;
    return middle - before <= agreeWithin && after - middle <= agreeWithin;
  });
}

const held = (one: LearnedFactor, about: number): LearnedFactor =>
  heldWithin(one, {
    low: about - Math.log(mostUntilAgreed),
    high: about + Math.log(mostUntilAgreed),
    mostSd: Math.sqrt(priorVariance),
  });
