import { requirePositive, requireWithin } from "../stats/range.ts";

/** One movement of one material, kg. `counted` is what was found on the shelf; all others are amounts moved. */
export type LedgerMove = {
  readonly kind: "received" | "made-up" | "dipped-out" | "lost" | "thrown-away" | "counted";
  readonly kg: number;
};

export type StockBalance = {
  readonly kg: number;
  /** What the counts found over (+) or under (−) the ledger, kg, summed. */
  readonly adjustedKg: number;
  /** The ledger stood below nothing at some time: a delivery is missing from it. */
  readonly wentBelowZero: boolean;
};

/** Balance after all moves, in order of time: received comes in, a count replaces, all else goes out. Refuses a negative amount. */
export function stockBalance(moves: readonly LedgerMove[]): StockBalance {
  let kg = 0;
  let adjustedKg = 0;
  let wentBelowZero = false;
  for (const move of moves) {
    requireWithin(move.kind, move.kg, { low: 0, high: 1e6, unit: "kg" });
    switch (move.kind) {
      case "received":
        kg += move.kg;
        break;
      case "counted":
        adjustedKg += move.kg - kg;
        kg = move.kg;
        break;
      case "made-up":
      case "dipped-out":
      case "lost":
      case "thrown-away":
        kg -= move.kg;
        break;
    }
    if (kg < -1e-9) wentBelowZero = true;
  }
  return { kg, adjustedKg, wentBelowZero };
}

/**
 * Stock at which to order, kg: u·L + z·σ·√L, with use a week and its scatter, kg, and the delivery time in weeks.
 * Any inventory text (from memory of Silver, Pyke & Thomas). z 1.65 runs out in one delivery of twenty.
 */
export function reorderPointKg({
  weeklyKg,
  weeklySigmaKg,
  leadWeeks,
  z = 1.65,
}: {
  weeklyKg: number;
  weeklySigmaKg: number;
  leadWeeks: number;
  z?: number | undefined;
}): number {
  requireWithin("weeklyKg", weeklyKg, { low: 0, high: 1e6, unit: "kg" });
  requireWithin("weeklySigmaKg", weeklySigmaKg, { low: 0, high: 1e6, unit: "kg" });
  requireWithin("leadWeeks", leadWeeks, { low: 0, high: 520, unit: "weeks" });
  requireWithin("z", z, { low: 0, high: 6, unit: "" });
  return weeklyKg * leadWeeks + z * weeklySigmaKg * Math.sqrt(leadWeeks);
}

/**
 * Order that costs least, kg: √(2·D·K/h), D kg a year, K the cost of placing an order, h of keeping a kg a year
 * (Harris 1913, in any inventory text). Never more than is used up in the shelf life, where one is given, months.
 */
export function orderKg({
  yearlyKg,
  perOrder,
  keepingPerKgYear,
  shelfMonths,
}: {
  yearlyKg: number;
  perOrder: number;
  keepingPerKgYear: number;
  shelfMonths?: number | undefined;
}): { readonly kg: number; readonly cappedByShelfLife: boolean } {
  requireWithin("yearlyKg", yearlyKg, { low: 0, high: 1e7, unit: "kg" });
  requireWithin("perOrder", perOrder, { low: 0, high: 1e9, unit: "" });
  requirePositive("keepingPerKgYear", keepingPerKgYear, { high: 1e9, unit: "a kg" });
  const cheapest = Math.sqrt((2 * yearlyKg * perOrder) / keepingPerKgYear);
  if (shelfMonths === undefined) return { kg: cheapest, cappedByShelfLife: false };
  requirePositive("shelfMonths", shelfMonths, { high: 1200, unit: "months" });
  const usedUp = (yearlyKg * shelfMonths) / 12;
  return { kg: Math.min(cheapest, usedUp), cappedByShelfLife: usedUp < cheapest };
}
