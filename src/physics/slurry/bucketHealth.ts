import type { BucketFacts, BucketLimits } from "./bucketFacts.ts";
import type { HealthLevel, HealthReason } from "./bucketJudge.ts";
import { judge } from "./bucketJudge.ts";
import { requireEveryFigure } from "../stats/range.ts";

/** not-checked: no seconds today, so nobody knows; it yields only to a known reason not to dip. */
export type BucketHealth = {
  readonly level: "fit" | "watch" | "do-not-dip" | "not-checked";
  /** Worst first. */
  readonly reasons: readonly HealthReason[];
};

const gravity: readonly HealthLevel[] = ["do-not-dip", "not-checked", "watch"];

/** The verdict and why. Limits are the shop's to change; the starting ones stand in the trade tables. Pure: facts in, verdict out. */
export function bucketHealth(facts: BucketFacts, limits: BucketLimits): BucketHealth {
  const reasons = judge(facts, limits).toSorted(
    (a, b) => gravity.indexOf(a.level) - gravity.indexOf(b.level),
  );
  return { level: reasons[0]?.level ?? "fit", reasons };
}

export type BucketCheck =
  "temperature" | "seconds" | "density" | "pH" | "liquor" | "gel" | "plate" | "bacteria" | "look";

/** Checks whose last time lies further back than their interval, or that were never made. `polymer`: bacteria are looked for only where the binder feeds them. */
export function checksDue({
  daysSince,
  everyDays,
  polymer,
}: {
  daysSince: Readonly<Partial<Record<BucketCheck, number | null>>>;
  everyDays: Readonly<Record<BucketCheck, number>>;
  polymer: boolean;
}): readonly BucketCheck[] {
  requireEveryFigure("daysSince", daysSince);
  requireEveryFigure("everyDays", everyDays);
  return (Object.keys(everyDays) as BucketCheck[]).filter((check) => {
    if (check === "bacteria" && !polymer) return false;
    const since = daysSince[check] ?? null;
    return since === null || since >= everyDays[check];
  });
}
