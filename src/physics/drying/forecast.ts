import { dewPointC, saturationPressurePa } from "../air/air.ts";
import type { DryingInterval } from "./dryStep.ts";
import { requireAirPressure, requireMoment, requireWithin } from "../stats/range.ts";
import type { FilmReading } from "./readings.ts";
import { inOrder } from "./readings.ts";
import { dayMs, hourMs } from "../stats/time.ts";

export type AirForecast = {
  readonly intervals: readonly DryingInterval[];
  /** How it was made; null where there is no reading to start from. */
  readonly basis: "repeat-yesterday" | "hold-last" | null;
  /** Age of the last reading, s; null without one. */
  readonly lastAgeS: number | null;
};

/** Two months of minutes: no forecast reaches so far. */
const mostSteps = 100_000;

/** History that repeating yesterday needs, and the longest hole in its last day that may be bridged; judgement. */
const enoughMs = 20 * hourMs;
const bridgeableMs = 12 * hourMs;

/** Today's difference from yesterday fades with this time constant; estimate. */
const fadeMs = 6 * hourMs;

/** What a repeated day is kept within. */
const coldestC = -30;
const hottestC = 60;
const driestRh = 0.01;

/** A moment of air, its moisture as dew point: in a closed room that stays while rh follows the temperature. */
type Moment = { readonly tempC: number; readonly dewC: number };

/**
 * The room's air from `nowMs` to `untilMs` in steps of `stepS` (the last one shorter), for drying.
 *
 * With 20 h of readings and no hole over 12 h in the last day it repeats yesterday: the air at the same clock time, moved by today's
 * difference in temperature and dew point, which fades as e^(−t/6 h). Otherwise it holds the last reading, which
 * late in the day promises too much in an unheated room. Readings after `nowMs` are left out. The film is the
 * last reading's. Refuses a step under 60 s or an end before now.
 */
export function forecastAir({
  readings,
  nowMs,
  untilMs,
  stepS,
  pressurePa,
  basis: wanted,
}: {
  readonly readings: readonly FilmReading[];
  readonly nowMs: number;
  readonly untilMs: number;
  readonly stepS: number;
  readonly pressurePa: number;
  /** Ask for "hold-last" to compare the two. */
  readonly basis?: "hold-last" | undefined;
}): AirForecast {
  requireWithin("stepS", stepS, { low: 60, high: 86_400, unit: "s" });
  requireMoment("nowMs", nowMs);
  requireMoment("untilMs", untilMs);
  requireAirPressure(pressurePa);
  if (!(untilMs >= nowMs))
    throw new RangeError(`untilMs must not be before nowMs ${nowMs}, found ${untilMs}`);
  const count = (untilMs - nowMs) / 1000 / stepS;
  requireWithin("(untilMs − nowMs)/stepS", count, { low: 0, high: mostSteps, unit: "steps" });
  const known = inOrder(readings).filter(({ atMs }) => atMs <= nowMs);
  const last = known.at(-1);
  if (last === undefined) return { intervals: [], basis: null, lastAgeS: null };
  const lastAgeS = (nowMs - last.atMs) / 1000;
  const steps = stepsOf({ ms: untilMs - nowMs, stepMs: stepS * 1000 });
  const { filmWM2K } = last;
  if (wanted === "hold-last" || !knowsYesterday(known, { nowMs })) {
    const { tempC, rh } = last;
    const intervals = steps.map(({ durationS }) => ({ durationS, tempC, rh, pressurePa, filmWM2K }));
    return { intervals, basis: "hold-last", lastAgeS };
  }
  const momentAt = momentsOf(known);
  // Today's difference is taken at the last reading, which may be a while ago.
  const today = momentOf(last);
  const before = momentAt(last.atMs - dayMs);
  const offset = { tempC: today.tempC - before.tempC, dewC: today.dewC - before.dewC };
  const intervals = steps.map(({ middleMs, durationS }) => {
    const atMs = nowMs + middleMs;
    // A repeat reaches back over as many whole days as land it on readings.
    const days = Math.max(1, Math.ceil((atMs - last.atMs) / dayMs));
    const then = momentAt(atMs - days * dayMs);
    const fade = Math.exp(-(atMs - last.atMs) / fadeMs);
    const tempC = clamp(then.tempC + fade * offset.tempC, { low: coldestC, high: hottestC });
    const rh = rhOf({ tempC, dewC: then.dewC + fade * offset.dewC });
    return { durationS, tempC, rh, pressurePa, filmWM2K };
  });
  return { intervals, basis: "repeat-yesterday", lastAgeS };
}

function stepsOf({ ms, stepMs }: { ms: number; stepMs: number }) {
  return Array.from({ length: Math.ceil(ms / stepMs) }, (_, i) => {
    const startMs = i * stepMs;
    const lengthMs = Math.min(stepMs, ms - startMs);
    return { middleMs: startMs + lengthMs / 2, durationS: lengthMs / 1000 };
  });
}

function knowsYesterday(known: readonly FilmReading[], { nowMs }: { nowMs: number }): boolean {
  const first = known[0];
  const last = known.at(-1);
  if (first === undefined || last === undefined || last.atMs - first.atMs < enoughMs) return false;
  const times = [...known.map(({ atMs }) => atMs), nowMs];
  return times.every((atMs, i) => atMs <= nowMs - dayMs || atMs - (times[i - 1] ?? atMs) <= bridgeableMs);
}

function momentOf({ tempC, rh }: { tempC: number; rh: number }): Moment {
  const damp = Math.max(driestRh, rh);
  return { tempC, dewC: dewPointC({ tempC, rh: damp }) ?? tempC };
}

/** The air at a time on the straight line between the readings about it; each dew point is worked out once, when asked. */
function momentsOf(known: readonly FilmReading[]): (atMs: number) => Moment {
  const made: (Moment | undefined)[] = [];
  const momentOfIndex = (index: number): Moment & { readonly atMs: number } => {
    const reading = known[index];
    if (reading === undefined)
      throw new RangeError(`index must be 0–${known.length - 1} of the readings, found ${index}`);
    return { ...(made[index] ??= momentOf(reading)), atMs: reading.atMs };
  };
  return (atMs) => {
    const i = firstFrom(known, atMs);
    const after = momentOfIndex(Math.min(i, known.length - 1));
    const before = i === 0 ? after : momentOfIndex(i - 1);
    if (after.atMs <= before.atMs) return after;
    const share = clamp((atMs - before.atMs) / (after.atMs - before.atMs), { low: 0, high: 1 });
    return {
      tempC: before.tempC + share * (after.tempC - before.tempC),
      dewC: before.dewC + share * (after.dewC - before.dewC),
    };
  };
}

/** Index of the first reading at or after a time; their number where there is none. They are in order. */
function firstFrom(known: readonly FilmReading[], atMs: number): number {
  let low = 0;
  let high = known.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((known[middle]?.atMs ?? Infinity) < atMs) low = middle + 1;
    else high = middle;
  }
  return low;
}

function rhOf({ tempC, dewC }: Moment): number {
  const dew = clamp(dewC, { low: -99, high: tempC });
  return clamp(saturationPressurePa(dew) / saturationPressurePa(tempC), { low: driestRh, high: 1 });
}

function clamp(value: number, { low, high }: { low: number; high: number }): number {
  return Math.min(high, Math.max(low, value));
}
