import { addDays } from "date-fns/addDays";
import { startOfDay } from "date-fns/startOfDay";
import type { PackedAir } from "../../../../workers/airCsv/packAir.ts";
import type { PlotPoint } from "../../../base/charts/plotFrame.ts";

/** As in the day's picture: across more than two hours no line is drawn. */
const gapS = 7200;

/**
 * A column of a file as points for a plot of `places` px: where many fall on one, the lowest and highest of them, so
 * that no peak is lost. A hole over two hours that can be seen is left open.
 */
export function thinned({ atS }: PackedAir, column: Float64Array, places: number): readonly PlotPoint[] {
  const from = atS[0] ?? 0;
  const span = Math.max(1, (atS.at(-1) ?? 0) - from);
  const hole = Math.max(gapS, (1.5 * span) / places);
  const points: PlotPoint[] = [];
  let low: number | null = null;
  let high: number | null = null;
  const close = (): void => {
    const ends = [low, high].filter((i) => i !== null).toSorted((a, b) => a - b);
    for (const i of new Set(ends)) points.push({ at: (atS[i] ?? 0) * 1000, value: column[i] ?? 0 });
    low = null;
    high = null;
  };
  const placeOf = (second: number): number => Math.floor(((second - from) / span) * places);
  for (const [i, second] of atS.entries()) {
    const before = atS[i - 1] ?? second;
    if (placeOf(second) !== placeOf(before)) close();
    if (second - before > hole) {
      close();
      points.push(null);
    }
    const value = column[i] ?? 0;
    if (low === null || value < (column[low] ?? 0)) low = i;
    if (high === null || value > (column[high] ?? 0)) high = i;
  }
  close();
  return points;
}

export type FileDay = {
  readonly at: number;
  readonly count: number;
  readonly temp: { readonly low: number; readonly high: number };
  readonly rh: { readonly low: number; readonly high: number };
};

/** Lowest and highest of each day of the device's own clock: the plot's figures as a table. */
export function fileDays({ atS, airC, rh }: PackedAir): readonly FileDay[] {
  const days: FileDay[] = [];
  let until = -Infinity;
  for (const [i, second] of atS.entries()) {
    const temp = airC[i] ?? 0;
    const share = rh[i] ?? 0;
    const open = second * 1000 < until ? days.pop() : undefined;
    if (open === undefined) until = addDays(startOfDay(second * 1000), 1).getTime();
    const wider = (range: { low: number; high: number } | undefined, value: number) => ({
      low: Math.min(range?.low ?? value, value),
      high: Math.max(range?.high ?? value, value),
    });
    days.push({
      at: open?.at ?? second * 1000,
      count: (open?.count ?? 0) + 1,
      temp: wider(open?.temp, temp),
      rh: wider(open?.rh, share),
    });
  }
  return days;
}
