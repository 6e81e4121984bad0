import { requirePositive } from "../../src/physics/stats/range.ts";

/** Modulus that freezes in a time, mm: the same turned round, for a riser that is to outlast a casting. */
export function modulusForTimeMm({ constantSMm2, timeS }: { constantSMm2: number; timeS: number }): number {
  requirePositive("constantSMm2", constantSMm2, { high: 1e6, unit: "s/mm²" });
  requirePositive("timeS", timeS, { high: 1e7, unit: "s" });
  return Math.sqrt(timeS / constantSMm2);
}
