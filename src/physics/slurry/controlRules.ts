import { requireFigures, requireWhole, requireWithin } from "../stats/range.ts";

/** 1: beyond 3σ. 2: two of three beyond 2σ. 3: four of five beyond 1σ. 4: eight on one side. 5: six rising or falling. */
export type ChartRule = 1 | 2 | 3 | 4 | 5;

export type ChartSignal = {
  readonly rule: ChartRule;
  /** Index of the value that completes the pattern. */
  readonly index: number;
  /** Index of the first value of the pattern's window. */
  readonly from: number;
  readonly side: "above" | "below" | "rising" | "falling";
};

type Zone = {
  readonly rule: ChartRule;
  readonly sigmas: number;
  readonly least: number;
  readonly of: number;
};

/** Western Electric, Statistical Quality Control Handbook (1956), as in NIST/SEMATECH e-Handbook 6.3.2 (from memory of it). */
const zones: readonly Zone[] = [
  { rule: 1, sigmas: 3, least: 1, of: 1 },
  { rule: 2, sigmas: 2, least: 2, of: 3 },
  { rule: 3, sigmas: 1, least: 4, of: 5 },
  { rule: 4, sigmas: 0, least: 8, of: 8 },
];
const trendLength = 6;

/**
 * Where the rules fire, in order of index, then rule. A pattern is told at the value that completes it, which
 * must itself lie beyond its line. Beyond is strict, to a part in 10⁹.
 *
 * A correction, before a value named in `correctedBefore`, cuts a trend but not the other runs: as-found readings
 * that keep to one side in spite of corrections are a signal.
 */
export function runSignals({
  values,
  centre,
  sigma,
  correctedBefore,
}: {
  values: readonly number[];
  centre: number;
  sigma: number;
  correctedBefore: readonly number[];
}): readonly ChartSignal[] {
  for (const value of [...values, centre]) requireFigures({ value });
  requireWithin("sigma", sigma, { low: 0, high: 1e15, unit: "" });
  requireIndexes("correctedBefore", correctedBefore);
  const slack = 1e-9 * (Math.abs(centre) + sigma);
  const sides = values.map((value) => value - centre);
  return values.flatMap((_, index) => [
    ...zones.flatMap((zone) => zoneSignal({ sides, index, zone, sigma, slack })),
    ...trendSignal({ values, index, correctedBefore, slack }),
  ]);
}

function zoneSignal({
  sides,
  index,
  zone: { rule, sigmas, least, of },
  sigma,
  slack,
}: {
  sides: readonly number[];
  index: number;
  zone: Zone;
  sigma: number;
  slack: number;
}): readonly ChartSignal[] {
  const beyond = sigmas * sigma + slack;
  const here = sides[index] ?? 0;
  if (Math.abs(here) <= beyond) return [];
  const sign = Math.sign(here);
  const from = Math.max(0, index - of + 1);
  const hits = sides.slice(from, index + 1).filter((side) => side * sign > beyond).length;
  return hits < least ? [] : [{ rule, index, from, side: sign > 0 ? "above" : "below" }];
}

function trendSignal({
  values,
  index,
  correctedBefore,
  slack,
}: {
  values: readonly number[];
  index: number;
  correctedBefore: readonly number[];
  slack: number;
}): readonly ChartSignal[] {
  const from = index - trendLength + 1;
  if (from < 0 || correctedBefore.some((i) => i > from && i <= index)) return [];
  const steps = values.slice(from + 1, index + 1).map((value, i) => value - (values[from + i] ?? value));
  if (steps.every((step) => step > slack)) return [{ rule: 5, index, from, side: "rising" }];
  if (steps.every((step) => step < -slack)) return [{ rule: 5, index, from, side: "falling" }];
  return [];
}

/** Refuses places in a list that are none. One past the end, or before the start, is of another chart. */
export function requireIndexes(name: string, indexes: readonly number[]): void {
  for (const index of indexes) requireWhole(name, index, { low: -1e9, high: 1e9 });
}
