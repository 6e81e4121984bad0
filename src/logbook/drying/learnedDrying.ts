import type { LearnedFactor } from "../../physics/evidence/calibration.ts";
import type { GroupedPair, ShopLearning } from "../../physics/evidence/shopLearning.ts";
import { factorOf } from "../../physics/evidence/shopLearning.ts";
import { trustedLearning } from "../../physics/evidence/trustedLearning.ts";

/** The factor for one coat with its own pair left out, and how many pairs of the shop that rests on. */
export type WithoutOwn = { readonly factor: LearnedFactor; readonly shopPairs: number };

/** What a shop has learned of its drying; for each coat that taught it, what it would know without that coat. */
export type LearnedDrying = ShopLearning & { readonly without: ReadonlyMap<string, WithoutOwn> };

type TaughtPair = GroupedPair & { readonly coatId: string };

/** The pairs that teach: all but those a person left out. */
export function teachingPairs<T extends TaughtPair>(
  pairs: readonly T[],
  pairsLeftOut: readonly { readonly coatId: string }[],
): readonly T[] {
  const out = new Set(pairsLeftOut.map(({ coatId }) => coatId));
  return pairs.filter(({ coatId }) => !out.has(coatId));
}

/** What the other coats say of this one: its own evidence never comes back to it by way of the shop. */
export function withoutOwn(
  teaching: readonly TaughtPair[],
  { coatId, group }: Pick<TaughtPair, "coatId" | "group">,
): WithoutOwn {
  const others = trustedLearning(teaching.filter((pair) => pair.coatId !== coatId));
  return { factor: factorOf(others, group), shopPairs: others.shop.pairs };
}
