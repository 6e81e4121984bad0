import { millisecondsInHour as hourMs } from "date-fns/constants";
import { lastChangeAt } from "./bucketLedger.ts";
import type { BucketStanding } from "./bucketStanding.ts";
import { isSlightlyOff } from "./slightlyOff.ts";

/** A look holds as long as a visit lasts (judgement). */
const holdsMs = 12 * hourMs;

/**
 * True where somebody should look at the bucket before anything is dipped: unfit, to be watched, or not read today. One
 * that is only a degree off goes through, its viscosity was read; so does one that was looked at since it last changed.
 * A bucket nobody ever entered anything of lets a newcomer through: its key says that it was never checked.
 */
export function wantsLook({ health, isUntold, bucket, last, now }: BucketStanding): boolean {
  if (isUntold || health.level === "fit") return false;
  if (health.reasons.every(isSlightlyOff)) return false;
  const pass = bucket.passes.at(-1);
  if (pass === undefined || now - pass.at >= holdsMs) return true;
  const told = Math.max(last?.at ?? 0, lastChangeAt(bucket) ?? 0);
  return pass.at < told || pass.verdict !== health.level;
}
