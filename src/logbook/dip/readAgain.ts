import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import type { BucketStanding } from "../bucket/bucketStanding.ts";
import type { CoatTaken } from "../bucket/dippedOut.ts";
import { readAgainAfter } from "../../trade/dipSteps.ts";

export type ReadAgain = { readonly because: "used" | "open"; readonly value: number };

/**
 * Whether a bucket wants reading again within a visit: a tenth of it went out, or it stood open for an hour since it
 * was last read. Null where not, and for a bucket nobody told anything of.
 */
export function readAgain(
  { isUntold, last, volume, aim, ledger }: BucketStanding,
  visit: {
    readonly startedAt: number;
    readonly now: number;
    readonly dips: readonly Pick<CoatTaken, "at" | "slurryKg">[];
  },
): ReadAgain | null {
  if (isUntold) return null;
  const since = Math.max(visit.startedAt, last?.at ?? 0);
  const openMin = (visit.now - since) / minuteMs;
  const densityGCm3 = last?.density?.densityGCm3 ?? ledger?.densityGCm3 ?? aim.densityGCm3?.value ?? null;
  const usedKg = visit.dips.filter(({ at }) => at >= since).reduce((sum, { slurryKg }) => sum + slurryKg, 0);
  const usedShare =
    densityGCm3 === null || volume === null || volume.volumeL <= 0
      ? 0
      : usedKg / densityGCm3 / volume.volumeL;
  if (usedShare >= readAgainAfter.usedShare.value) return { because: "used", value: usedShare };
  return openMin >= readAgainAfter.openMin.value ? { because: "open", value: openMin } : null;
}

export const readAgainWords = ({ because }: ReadAgain): string =>
  because === "used"
    ? "Read the bucket again: a tenth of it has gone out."
    : "Read the bucket again: it has stood open for an hour.";
