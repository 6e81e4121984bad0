import { millisecondsInWeek as weekMs } from "date-fns/constants";
import type { LedgerMove } from "../../physics/slurry/stockLedger.ts";

type DatedMove = LedgerMove & { readonly at: number };

export type WeeklyUse = {
  readonly meanKg: number;
  /** Standard deviation from week to week; null below three weeks. */
  readonly sigmaKg: number | null;
  readonly weeks: number;
};

const mostWeeks = 12;

/**
 * Use a week: all that went out in the last twelve weeks, or since it was first used, over that time. The scatter is
 * that of the whole weeks back from `now`. Null within the first week.
 */
export function weeklyUse(moves: readonly DatedMove[], now: number): WeeklyUse | null {
  const out = moves.filter(({ kind }) => kind !== "received" && kind !== "counted");
  const first = out[0]?.at;
  const elapsed = first === undefined ? 0 : Math.min(mostWeeks, (now - first) / weekMs);
  const weeks = Math.floor(elapsed);
  if (weeks < 1) return null;
  const sums = Array.from({ length: weeks }, () => 0);
  let totalKg = 0;
  for (const { at, kg } of out) {
    const age = (now - at) / weekMs;
    if (age <= elapsed) totalKg += kg;
    // What lies on the border of two weeks belongs to the later one.
    const place = Math.max(0, Math.ceil(age) - 1);
    if (place < weeks) sums[place] = (sums[place] ?? 0) + kg;
  }
  const middle = sums.reduce((sum, kg) => sum + kg, 0) / weeks;
  const scatter = sums.reduce((sum, kg) => sum + (kg - middle) ** 2, 0) / Math.max(1, weeks - 1);
  return { meanKg: totalKg / elapsed, sigmaKg: weeks < 3 ? null : Math.sqrt(scatter), weeks };
}

/** When the oldest of what is there came in, if what came first was used first; null where nothing is there. */
export function oldestOf(moves: readonly DatedMove[], balanceKg: number): number | null {
  if (balanceKg <= 1e-9) return null;
  let left = balanceKg;
  let oldest: number | null = null;
  for (const { kind, kg, at } of moves.toReversed()) {
    // A count tells that it is there, not since when: what no delivery covers is as old as the first count.
    if (kind !== "received" && kind !== "counted") continue;
    oldest = at;
    if (kind === "received") left -= kg;
    if (left <= 1e-9) return oldest;
  }
  return oldest;
}
