import { dewPointC, saturationDeficitGM3, saturationPressurePa, vapourPressurePa } from "../air/air.ts";
import type { DryingInterval } from "./dryStep.ts";
import { requireMoment, requireWithin } from "../stats/range.ts";
import type { FilmReading } from "./readings.ts";
import { inOrder } from "./readings.ts";

/** Air at one moment: °C, fraction, dew or frost point °C (null where there is none), saturation deficit g/m³. */
export type AirPoint = {
  readonly atMs: number;
  readonly tempC: number;
  readonly rh: number;
  readonly dewC: number | null;
  readonly deficitGM3: number;
};

export type DayView = {
  /** Every `stepS`; null where no reading lies within `gapS` on both sides, so that a picture leaves a hole. */
  readonly points: readonly (AirPoint | null)[];
  /** Lowest and highest of the points; null where there is none. */
  readonly spans: {
    readonly tempC: LowHigh;
    readonly rh: LowHigh;
    readonly dewC: LowHigh | null;
    readonly deficitGM3: LowHigh;
  } | null;
  /** ∫Δρ dt over the known part, g·h/m³: what a day of this air gives to a coat. */
  readonly doseGHM3: number;
  /** Known share of the time asked for, 0–1. */
  readonly knownShare: number;
};

export type LowHigh = { readonly low: number; readonly high: number };

/** A year of minutes: more is no picture. */
const mostPoints = 600_000;

/** Longest time between two readings that is drawn as a line; judgement, as is 2 h for a forecast's doubt. */
const gapS = 7200;

/** The dew point, the deficit and all, of one reading or one stretch of a forecast. */
export function airPoint({ atMs, tempC, rh }: { atMs: number; tempC: number; rh: number }): AirPoint {
  requireMoment("atMs", atMs);
  return { atMs, tempC, rh, dewC: dewPointC({ tempC, rh }), deficitGM3: saturationDeficitGM3({ tempC, rh }) };
}

/**
 * A room's air from `fromMs` to `toMs` in points every `stepS` (60 s to a day), for a picture and its table.
 *
 * Between two readings temperature and vapour pressure go straight, as in the drying sum; across more than 2 h
 * nothing is drawn. Refuses an end that is not after the start.
 */
export function dayView({
  readings,
  fromMs,
  toMs,
  stepS,
}: {
  readonly readings: readonly FilmReading[];
  readonly fromMs: number;
  readonly toMs: number;
  readonly stepS: number;
}): DayView {
  requireWithin("stepS", stepS, { low: 60, high: 86_400, unit: "s" });
  requireMoment("fromMs", fromMs);
  requireMoment("toMs", toMs);
  if (!(toMs > fromMs)) throw new RangeError(`toMs must be after fromMs ${fromMs}, found ${toMs}`);
  const airAt = airThrough(readings);
  const count = Math.floor((toMs - fromMs) / (stepS * 1000)) + 1;
  requireWithin("(toMs − fromMs)/stepS", count, { low: 1, high: mostPoints, unit: "points" });
  const points = Array.from({ length: count }, (_, i) => {
    const air = airAt(fromMs + i * stepS * 1000);
    return air && airPoint(air);
  });
  const known = points.filter((point) => point !== null);
  // A point stands for one step, so the ends count half: the rule of trapezoids over the known stretches.
  let doseGHM3 = 0;
  let knownSteps = 0;
  for (const [i, point] of points.entries()) {
    const before = points[i - 1] ?? null;
    if (point === null || before === null) continue;
    doseGHM3 += (((before.deficitGM3 + point.deficitGM3) / 2) * stepS) / 3600;
    knownSteps += 1;
  }
  return { points, spans: spansOf(known), doseGHM3, knownShare: count > 1 ? knownSteps / (count - 1) : 0 };
}

/** A forecast's stretches as points at their middles. */
export function forecastPoints(intervals: readonly DryingInterval[], fromMs: number): readonly AirPoint[] {
  let atMs = fromMs;
  return intervals.map(({ durationS, tempC, rh }) => {
    requireWithin("durationS", durationS, { low: 0, high: 1e10, unit: "s" });
    const point = airPoint({ atMs: atMs + durationS * 500, tempC, rh });
    atMs += durationS * 1000;
    return point;
  });
}

/** The air at any time between two readings not over 2 h apart; null elsewhere. */
export function airThrough(
  readings: readonly FilmReading[],
): (atMs: number) => { readonly atMs: number; readonly tempC: number; readonly rh: number } | null {
  const ordered = inOrder(readings);
  return (atMs) => {
    requireWithin("atMs", atMs, { low: -8.64e15, high: 8.64e15, unit: "ms" });
    const after = firstAfter(ordered, atMs);
    const a = ordered[after - 1];
    const b = ordered[after];
    if (a === undefined) return null;
    if (a.atMs === atMs) return { atMs, tempC: a.tempC, rh: a.rh };
    if (b === undefined || b.atMs - a.atMs > gapS * 1000) return null;
    const share = (atMs - a.atMs) / (b.atMs - a.atMs);
    const tempC = a.tempC + share * (b.tempC - a.tempC);
    const vapourPa = vapourPressurePa(a) + share * (vapourPressurePa(b) - vapourPressurePa(a));
    return { atMs, tempC, rh: Math.min(1, vapourPa / saturationPressurePa(tempC)) };
  };
}

function firstAfter(ordered: readonly FilmReading[], atMs: number): number {
  let low = 0;
  let high = ordered.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((ordered[middle]?.atMs ?? Infinity) <= atMs) low = middle + 1;
    else high = middle;
  }
  return low;
}

function spansOf(known: readonly AirPoint[]): DayView["spans"] {
  const span = (values: readonly (number | null)[]): LowHigh | null => {
    const there = values.filter((value) => value !== null);
    return there.length === 0 ? null : { low: Math.min(...there), high: Math.max(...there) };
  };
  const tempC = span(known.map((point) => point.tempC));
  const rh = span(known.map((point) => point.rh));
  const deficitGM3 = span(known.map((point) => point.deficitGM3));
  if (tempC === null || rh === null || deficitGM3 === null) return null;
  return { tempC, rh, deficitGM3, dewC: span(known.map((point) => point.dewC)) };
}
