import type { Conduction } from "./heatSolver.ts";
import { requirePositive, requireWhole, requireWithin } from "../stats/range.ts";
import { risingRoot } from "../stats/root.ts";

const mostCells = 2000;
/** A day in steps of 6 s takes 14 400. */
const mostMarchSteps = 200_000;

/** Cells of one thickness. */
export function evenCellsMm({
  thicknessMm,
  cells,
}: {
  thicknessMm: number;
  cells: number;
}): readonly number[] {
  requirePositive("thicknessMm", thicknessMm, { high: 1e5, unit: "mm" });
  requireWhole("cells", cells, { low: 1, high: mostCells });
  return Array.from({ length: cells }, () => thicknessMm / cells);
}

/** Cells that grow outwards in one ratio from the first, which is thinned if all would be too many. */
export function growingCellsMm({
  thicknessMm,
  firstMm,
  cells,
}: {
  thicknessMm: number;
  firstMm: number;
  cells: number;
}): readonly number[] {
  requirePositive("thicknessMm", thicknessMm, { high: 1e5, unit: "mm" });
  requireWithin("firstMm", firstMm, { low: 1e-6, high: 1e5, unit: "mm" });
  requireWhole("cells", cells, { low: 1, high: mostCells });
  const sumOf = (ratio: number): number => {
    let sum = 0;
    // Term by term: the closed sum loses its digits near a ratio of 1.
    for (let i = 0; i < cells; i++) sum = sum * ratio + 1;
    return sum;
  };
  const want = thicknessMm / firstMm;
  if (want <= cells) return evenCellsMm({ thicknessMm, cells });
  const ratio = risingRoot((r) => sumOf(r) - want, { low: 1, high: 3 });
  const first = thicknessMm / sumOf(ratio);
  return Array.from({ length: cells }, (_, i) => first * ratio ** i);
}

/** Steps by backward Euler until jumps at the start have died down. */
const dampedSteps = 6;

/**
 * Takes a wall forward through the marks (s, rising), telling each. Steps grow from `firstS` by `growth` to
 * `longestS`, and are cut to meet a mark. Stops early when `onMark` says so. Refuses marks that take over 200 000 steps.
 */
export function march({
  conduction,
  marksS,
  firstS,
  growth = 1.12,
  longestS,
  implicit = 0.5,
  onMark,
}: {
  conduction: Conduction;
  marksS: Iterable<number>;
  firstS: number;
  growth?: number | undefined;
  longestS: number;
  /** Share of each step taken at its end: 0.5 is second order, 1 bears kinks. */
  implicit?: number | undefined;
  onMark: (atS: number) => "go-on" | "stop";
}): void {
  requirePositive("firstS", firstS, { high: 1e6, unit: "s" });
  requireWithin("growth", growth, { low: 1, high: 10, unit: "" });
  requirePositive("longestS", longestS, { high: 1e9, unit: "s" });
  requireWithin("implicit", implicit, { low: 0.5, high: 1, unit: "" });
  let atS = 0;
  let stepS = firstS;
  let steps = 0;
  for (const markS of marksS) {
    requireWithin("markS", markS, { low: atS, high: 1e9, unit: "s, rising" });
    while (atS < markS) {
      const leftS = markS - atS;
      // Even steps to the mark: no sliver is left before it.
      const takenS = leftS / Math.max(1, Math.ceil(leftS / stepS - 1e-9));
      conduction.advance(takenS, steps < dampedSteps ? 1 : implicit);
      steps += 1;
      requireWithin("steps to the mark", steps, { low: 0, high: mostMarchSteps, unit: "" });
      atS = leftS - takenS < takenS * 1e-6 ? markS : atS + takenS;
      stepS = Math.min(longestS, stepS * growth);
    }
    if (onMark(markS) === "stop") return;
  }
}
