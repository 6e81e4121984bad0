import { airPoint, airThrough, forecastPoints } from "./dayView.ts";
import { forecastAir } from "./forecast.ts";
import { requireMoment, requireWhole } from "../stats/range.ts";
import type { FilmReading } from "./readings.ts";
import { inOrder } from "./readings.ts";
import { dayMs } from "../stats/time.ts";

/** What a forecast may look back on: its own rule asks for a day and bridges another half. */
const reachMs = 2 * dayMs;
/** Days that make a median worth telling, and hours that make a day; judgement. */
const enoughDays = 3;
const enoughHours = 12;

export type ForecastError =
  | {
      readonly ok: true;
      /** Past days that could be compared. */
      readonly days: number;
      /** Median of what the forecast was off by, over all hours of those days, >= 0. */
      readonly tempK: number;
      readonly rh: number;
      readonly dewK: number;
      readonly deficitGM3: number;
    }
  | {
      readonly ok: false;
      readonly code: "too-little-history";
      readonly days: number;
      readonly wanted: number;
    };

/**
 * How far repeating yesterday has been off in this room: at this clock time of each of the `mostDays` days before
 * `nowMs` (epoch ms) the next 24 h are foretold from what was known then, and compared hour by hour with what was
 * read.
 *
 * A day counts where the forecast could repeat one and at least 12 of its hours were read without a hole over 2 h.
 * Refuses under three such days.
 */
export function forecastError({
  readings,
  nowMs,
  mostDays = 28,
}: {
  readonly readings: readonly FilmReading[];
  readonly nowMs: number;
  readonly mostDays?: number | undefined;
}): ForecastError {
  requireWhole("mostDays", mostDays, { low: 1, high: 400 });
  requireMoment("nowMs", nowMs);
  const known = inOrder(readings).filter(({ atMs }) => atMs <= nowMs);
  const airAt = airThrough(known);
  const days = Array.from({ length: mostDays }, (_, i) => nowMs - (i + 1) * dayMs)
    .map((thenMs) => missesFrom(known, { thenMs, airAt }))
    .filter((misses) => misses.length >= enoughHours);
  if (days.length < enoughDays)
    return { ok: false, code: "too-little-history", days: days.length, wanted: enoughDays };
  const all = days.flat();
  return {
    ok: true,
    days: days.length,
    tempK: median(all.map((miss) => miss.tempK)),
    rh: median(all.map((miss) => miss.rh)),
    dewK: median(all.flatMap((miss) => miss.dewK ?? [])),
    deficitGM3: median(all.map((miss) => miss.deficitGM3)),
  };
}

type Miss = {
  readonly tempK: number;
  readonly rh: number;
  readonly dewK: number | null;
  readonly deficitGM3: number;
};

/** What a forecast made then was off by in each hour that was read afterwards; none where it held the last reading. */
function missesFrom(
  known: readonly FilmReading[],
  { thenMs, airAt }: { thenMs: number; airAt: ReturnType<typeof airThrough> },
): readonly Miss[] {
  const readings = known.filter(({ atMs }) => atMs > thenMs - reachMs && atMs <= thenMs);
  const forecast = forecastAir({
    readings,
    nowMs: thenMs,
    untilMs: thenMs + dayMs,
    stepS: 3600,
    // Only temperature and moisture are compared; neither depends on the pressure.
    pressurePa: 101_325,
  });
  if (forecast.basis !== "repeat-yesterday") return [];
  return forecastPoints(forecast.intervals, thenMs).flatMap((foretold) => {
    const air = airAt(foretold.atMs);
    if (air === null) return [];
    const read = airPoint(air);
    const dewK = foretold.dewC === null || read.dewC === null ? null : Math.abs(foretold.dewC - read.dewC);
    return [
      {
        tempK: Math.abs(foretold.tempC - read.tempC),
        rh: Math.abs(foretold.rh - read.rh),
        dewK,
        deficitGM3: Math.abs(foretold.deficitGM3 - read.deficitGM3),
      },
    ];
  });
}

/** Middle value; the mean of the two middle ones of an even number; 0 of none. */
function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  const half = sorted.length >> 1;
  const upper = sorted[half] ?? 0;
  return sorted.length % 2 === 1 ? upper : ((sorted[half - 1] ?? upper) + upper) / 2;
}
