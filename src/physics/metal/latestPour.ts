import type { WallTemperature } from "../heat/heat.ts";
import { requireWithin } from "../stats/range.ts";

/** Minutes after leaving the kiln until the cavity face is at the least temperature; null where the rows end before. */
export type LatestPour = {
  /** By the coldest the face may be: what to plan with. */
  readonly surelyMin: number | null;
  readonly likelyMin: number | null;
  readonly reachedMin: number;
  /** The shell left the kiln too cold: both minutes are 0. */
  readonly neverWarmEnough: boolean;
};

/** Latest minute to pour against the least temperature of the shell at the metal, linear between the rows. */
export function latestPour({
  rows,
  leastShellC,
}: {
  rows: readonly WallTemperature[];
  leastShellC: number;
}): LatestPour {
  requireWithin("leastShellC", leastShellC, { low: -273, high: 4000, unit: "°C" });
  for (const [i, { minute, cavityFaceC, cavityFaceLowC }] of rows.entries()) {
    requireWithin("minute", minute, { low: rows[i - 1]?.minute ?? 0, high: 1e6, unit: "min, rising" });
    requireWithin("cavityFaceC", cavityFaceC, { low: -273, high: 4000, unit: "°C" });
    requireWithin("cavityFaceLowC", cavityFaceLowC, { low: -273, high: 4000, unit: "°C" });
  }
  const crossing = (of: (row: WallTemperature) => number): number | null => {
    let before: WallTemperature | null = null;
    for (const row of rows) {
      if (of(row) >= leastShellC) {
        before = row;
        continue;
      }
      if (before === null) return 0;
      const share = (of(before) - leastShellC) / (of(before) - of(row));
      return before.minute + share * (row.minute - before.minute);
    }
    return null;
  };
  const likelyMin = crossing(({ cavityFaceC }) => cavityFaceC);
  return {
    surelyMin: crossing(({ cavityFaceLowC }) => cavityFaceLowC),
    likelyMin,
    reachedMin: rows.at(-1)?.minute ?? 0,
    neverWarmEnough: likelyMin === 0,
  };
}
