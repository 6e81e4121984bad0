import { teachingPairs, withoutOwn, type LearnedDrying } from "../../src/logbook/drying/learnedDrying.ts";
import { trustedLearning } from "../../src/physics/evidence/trustedLearning.ts";

type TaughtPair = Parameters<typeof withoutOwn>[0][number];

/** What a shop learns from its pairs, but for those a person left out. */
export function learnFrom(
  pairs: readonly TaughtPair[],
  { pairsLeftOut }: { readonly pairsLeftOut: readonly { readonly coatId: string }[] },
): LearnedDrying {
  const teaching = teachingPairs(pairs, pairsLeftOut);
  const without = new Map(teaching.map((pair) => [pair.coatId, withoutOwn(teaching, pair)]));
  return { ...trustedLearning(teaching), without };
}
