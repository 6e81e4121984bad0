import type { Published } from "./published.ts";

const practice = "common practice, no source";

/** Crucible with its metal above which two people lift it in a shank, kg. */
export const shankAboveKg: Published = { value: 12, basis: "practice", source: practice };
/** Crucible with its metal above which it hangs on a hoist, kg. */
export const hoistAboveKg: Published = { value: 45, basis: "practice", source: practice };
/** Shell with its metal above which one person doesn't lift it, kg. */
export const shellTwoAboveKg: Published = { value: 20, basis: "practice", source: practice };
/** What a clay-graphite crucible weighs for each litre to its brim, kg. */
export const crucibleKgPerL: Published = {
  value: 1.6,
  basis: "judgement",
  source: "judgement; crucibles of 1 to 3 L weigh 1.6 to 5 kg, from memory; weigh your own",
};

export type CrucibleLift = "tongs" | "shank" | "hoist";

/** What a crucible with its metal is lifted with, by the kilograms of both. */
export function crucibleLift(kg: number): CrucibleLift {
  return kg > hoistAboveKg.value ? "hoist" : kg > shankAboveKg.value ? "shank" : "tongs";
}

/** Crucible and metal together, kg; `brimL` is the crucible's volume to its brim. */
export const crucibleWithMetalKg = ({
  metalKg,
  brimL,
}: {
  readonly metalKg: number;
  readonly brimL: number;
}): number => metalKg + brimL * crucibleKgPerL.value;

/** True where a shell with its metal, kg, is too heavy for one person. */
export const needsTwo = (kg: number): boolean => kg > shellTwoAboveKg.value;
