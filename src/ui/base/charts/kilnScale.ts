import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import type { Stretch } from "../../../physics/heat/firingSegments.ts";
import type { KilnReading } from "../../../physics/heat/runPosition.ts";
import type { Format } from "../format/units.ts";

export type Point = { readonly minute: number; readonly kilnC: number };

/** The corners of a planned curve. */
export const corners = (curve: readonly Stretch[]): readonly Point[] =>
  curve.flatMap(({ startMin, endMin, fromC, toC }) => [
    { minute: startMin, kilnC: fromC },
    { minute: endMin, kilnC: toC },
  ]);

/** What is left of a curve from a minute of the plan on, drawn `lateMin` later. */
export function shifted(
  curve: readonly Stretch[],
  { fromMin, lateMin }: { readonly fromMin: number; readonly lateMin: number },
): readonly Point[] {
  const rest = curve.filter(({ endMin }) => endMin > fromMin);
  return rest.flatMap(({ startMin, endMin, fromC, toC }) => {
    const start = Math.max(startMin, fromMin);
    const share = endMin === startMin ? 0 : (start - startMin) / (endMin - startMin);
    return [
      { minute: start + lateMin, kilnC: fromC + share * (toC - fromC) },
      { minute: endMin + lateMin, kilnC: toC },
    ];
  });
}

const mostPoints = 600;

/** Readings as points of the chart; of a logger's thousands only as many as can be told apart, first and last kept. */
export function readPoints(readings: readonly KilnReading[], startedAt: number): readonly Point[] {
  const every = Math.max(1, Math.ceil(readings.length / mostPoints));
  return readings
    .filter((_, place) => place % every === 0 || place === readings.length - 1)
    .map(({ at, kilnC }) => ({ minute: (at - startedAt) / minuteMs, kilnC }));
}

/** Round temperatures of the reader's own unit, canonical °C. */
export function tempTicks(highC: number, format: Format): readonly number[] {
  const high = format.toShown("temp", highC);
  const step = [50, 100, 200, 250, 500, 1000].find((one) => high / one <= 6) ?? 1000;
  const ticks: number[] = [];
  for (let shown = 0; shown <= high; shown += step) ticks.push(format.fromShown("temp", shown));
  return ticks;
}

/** Round hours of a plan, in minutes. */
export function hourTicks(endMin: number, most: number): readonly number[] {
  const stepH = [0.25, 0.5, 1, 2, 3, 4, 6, 12, 24, 48].find((hours) => endMin / 60 / hours <= most) ?? 96;
  const ticks: number[] = [];
  for (let minute = 0; minute <= endMin; minute += stepH * 60) ticks.push(minute);
  return ticks;
}
