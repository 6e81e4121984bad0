import type { ShopPair } from "../../../logbook/drying/dryingPairs.ts";

/** One coat on the plot, hours; an end that was not seen is null and its bar stays open there. */
export type PlotPair = {
  readonly coatId: string;
  readonly predictedH: number;
  readonly wetH: number | null;
  readonly dryH: number | null;
  readonly weight: number;
  readonly isOut: boolean;
};

export function plotPairs(pairs: readonly ShopPair[], out: ReadonlySet<string>): readonly PlotPair[] {
  const hours = (seconds: number | null): number | null =>
    seconds === null || seconds <= 0 ? null : seconds / 3600;
  return pairs.map(({ coatId, predictedS, wetAtS, dryAtS, weight }) => ({
    coatId,
    predictedH: predictedS / 3600,
    wetH: hours(wetAtS),
    dryH: hours(dryAtS),
    weight,
    isOut: out.has(coatId),
  }));
}

/** Both axes of the plot run over the same hours, a little past the outermost pair. */
export function plotReach(pairs: readonly PlotPair[]): { readonly lowH: number; readonly highH: number } {
  const all = pairs.flatMap(({ predictedH, wetH, dryH }) =>
    [predictedH, wetH, dryH].filter((hours): hours is number => hours !== null && hours > 0),
  );
  const low = Math.min(1, ...all);
  const high = Math.max(10, ...all);
  return { lowH: Math.max(0.05, low / 1.5), highH: high * 1.5 };
}

const ladder = [0.1, 0.25, 0.5, 1, 2, 5, 10, 24, 48, 120, 240];

/** Hours worth a rule on the scale. */
export const pairTicks = ({ lowH, highH }: { readonly lowH: number; readonly highH: number }) =>
  ladder.filter((hours) => hours >= lowH && hours <= highH);
