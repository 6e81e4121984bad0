import { cupRepeatability } from "../../trade/cups.ts";

export type CupCheck = {
  /** Working cup against the reference, as a share of their mean: over 0 it reads thick. */
  readonly share: number;
  readonly verdict: "agrees" | "apart" | "suspect";
};

/**
 * A working cup against the shop's reference, both in the same slurry in the same minutes. Two means of one person are
 * suspect beyond 11 % of their mean; within one coefficient of variation there is nothing to see (ASTM D4212 § 13.1.1).
 */
export function cupCheck({
  referenceS,
  workingS,
}: {
  readonly referenceS: number;
  readonly workingS: number;
}): CupCheck {
  const share = (workingS - referenceS) / ((workingS + referenceS) / 2);
  const apart = Math.abs(share);
  if (apart > cupRepeatability.suspect.value) return { share, verdict: "suspect" };
  return { share, verdict: apart > cupRepeatability.within.value ? "apart" : "agrees" };
}
