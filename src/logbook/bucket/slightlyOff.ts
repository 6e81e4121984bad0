import type { HealthReason } from "../../physics/slurry/bucketJudge.ts";
import { practice } from "../../trade/practice.ts";

/** True for a slurry a little warmer or colder than it should be, and nothing else: its viscosity tells the rest. */
export function isSlightlyOff({ code, found, low, high }: HealthReason): boolean {
  if (found === null || low === null || high === null) return false;
  const { value: nearK } = practice.slurryOffK;
  if (code === "temperature-off") return found > low - nearK && found < high + nearK;
  return code === "temperature-not-its-own" && Math.abs(found - (low + high) / 2) <= 2 * nearK;
}
