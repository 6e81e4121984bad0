import { millisecondsInDay as dayMs, millisecondsInHour as hourMs } from "date-fns/constants";
import { pressureAtAltitudePa, rhOverIce } from "../../physics/air/air.ts";
import type { DryingInterval, DryStep } from "../../physics/drying/dryStep.ts";
import { forecastAir } from "../../physics/drying/forecast.ts";
import type { FilmReading as PhysicsReading } from "../../physics/drying/readings.ts";
import { inOrder, intervalsBetween } from "../../physics/drying/readings.ts";
import { airClasses } from "../../trade/airClasses.ts";
import type { AirReading } from "../piece/piece.ts";
import { ranges, within } from "../entries/ranges.ts";

/** How far the first reading of a room is held back: what came before is not known. Judgement. */
export const heldBackMs = 12 * hourMs;
const forecastMs = 14 * dayMs;
const yesterdayMs = 2 * dayMs;
const latestMs = 8.64e15;

/**
 * A cut of steady air, from `at` (epoch ms) to the next one. What it does to a coat is worked out once for each
 * pocket, when first asked. A line made from an earlier one keeps its cuts, as long as the readings about them are
 * the same: two lines that both hold two cuts are the same all the way between.
 */
export type Cut = {
  readonly at: number;
  readonly interval: DryingInterval;
  readonly steps: Map<number, DryStep>;
};

/** A room's air at one altitude, in order of time, whatever pocket it dries. */
export type AirLine = {
  readonly readings: readonly AirReading[];
  readonly pressurePa: number;
  readonly startsAt: number;
  readonly forecast: "repeat-yesterday" | "hold-last";
  readonly cuts: readonly Cut[];
};

/**
 * The line of these readings; null where none can be used. `before` is an earlier line of the same room and
 * altitude: what both have in common is taken from it, so a new reading costs no more than its own cuts.
 */
export function airLine(
  all: readonly AirReading[],
  { altitudeM, before }: { altitudeM: number; before: AirLine | null },
): AirLine | null {
  const readings = usableInOrder(all);
  const first = readings[0];
  const last = readings.at(-1);
  if (first === undefined || last === undefined) return null;
  const pressurePa = pressureAtAltitudePa(within(ranges.altitudeM, altitudeM) ? altitudeM : 0);
  const recent = readings.slice(countUpTo(readings, last.at - yesterdayMs - 1)).map(toPhysics);
  const ahead = forecastAir({
    readings: recent,
    nowMs: last.at,
    untilMs: last.at + forecastMs,
    stepS: 3600,
    pressurePa,
  });
  const forecast = ahead.basis ?? "hold-last";
  const startsAt = first.at - heldBackMs;
  const ofBefore = before?.pressurePa === pressurePa ? before : null;
  const run = ofBefore && commonRun(ofBefore.readings, readings);
  const sameStart = ofBefore?.startsAt === startsAt && run?.from === 0 && run.fromBefore === 0;
  const start = sameStart ? ofBefore.cuts.slice(0, 1) : [heldBack(first, { startsAt, pressurePa })];
  const past =
    ofBefore && run && run.count > 1
      ? [
          ...cutsOf(readings.slice(0, run.from + 1), pressurePa),
          ...cutsWithin(ofBefore, run),
          ...cutsOf(readings.slice(run.from + run.count - 1), pressurePa),
        ]
      : cutsOf(readings, pressurePa);
  // Held air is one cut, however long.
  const future = forecast === "hold-last" ? ahead.intervals.slice(0, 1) : ahead.intervals;
  return {
    readings,
    pressurePa,
    startsAt,
    forecast,
    cuts: [...start, ...past, ...inRow(future, last.at)],
  };
}

/** How many of these, which are in order, are at or before `at`. */
export function countUpTo(ordered: readonly { readonly at: number }[], at: number): number {
  let low = 0;
  let high = ordered.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((ordered[middle]?.at ?? Infinity) <= at) low = middle + 1;
    else high = middle;
  }
  return low;
}

const countBefore = (ordered: readonly { readonly at: number }[], at: number): number => {
  let index = countUpTo(ordered, at);
  while (index > 0 && ordered[index - 1]?.at === at) index -= 1;
  return index;
};

type Run = { readonly from: number; readonly fromBefore: number; readonly count: number };

/** The readings two lists have in common in one run, its ends free of others of the same moment. */
function commonRun(before: readonly AirReading[], readings: readonly AirReading[]): Run {
  let from = countBefore(readings, before[0]?.at ?? 0);
  let fromBefore = countBefore(before, readings[0]?.at ?? 0);
  let count = 0;
  while (isSame(before[fromBefore + count], readings[from + count])) count += 1;
  const tied = (i: number): boolean => isTied(readings, from + i) || isTied(before, fromBefore + i);
  while (count > 0 && tied(count)) count -= 1;
  while (count > 0 && tied(0)) {
    from += 1;
    fromBefore += 1;
    count -= 1;
  }
  return { from, fromBefore, count };
}

const isTied = (readings: readonly AirReading[], index: number): boolean =>
  readings[index] !== undefined && readings[index].at === readings[index - 1]?.at;

function isSame(a: AirReading | undefined, b: AirReading | undefined): boolean {
  if (a === undefined || b === undefined) return false;
  if (a === b) return true;
  return a.id === b.id && a.at === b.at && a.airC === b.airC && a.rh === b.rh && a.air === b.air;
}

function cutsWithin({ readings, cuts }: AirLine, { fromBefore, count }: Run): readonly Cut[] {
  const begin = readings[fromBefore]?.at ?? 0;
  const end = readings[fromBefore + count - 1]?.at ?? 0;
  return cuts.slice(countBefore(cuts, begin), countBefore(cuts, end));
}

function cutsOf(readings: readonly AirReading[], pressurePa: number): readonly Cut[] {
  const ordered = inOrder(readings.map(toPhysics));
  return ordered.flatMap((reading, i) => {
    const next = ordered[i + 1];
    if (next === undefined || next.atMs <= reading.atMs) return [];
    const span = { from: reading.atMs, to: next.atMs, pressurePa };
    return inRow(intervalsBetween(reading, next, span), reading.atMs);
  });
}

function inRow(intervals: readonly DryingInterval[], from: number): readonly Cut[] {
  let at = from;
  return intervals.map((interval) => {
    const cut = { at, interval, steps: new Map<number, DryStep>() };
    at += interval.durationS * 1000;
    return cut;
  });
}

function heldBack(
  first: AirReading,
  { startsAt, pressurePa }: { startsAt: number; pressurePa: number },
): Cut {
  const { tempC, rh, filmWM2K } = toPhysics(first);
  const interval = { tempC, rh, filmWM2K, pressurePa, durationS: heldBackMs / 1000 };
  return { at: startsAt, interval, steps: new Map() };
}

function usableInOrder(all: readonly AirReading[]): readonly AirReading[] {
  // Readings from the store come in order: then the list itself will do.
  const ready = all.every((reading, i) => {
    const before = all[i - 1];
    return isUsable(reading) && (before === undefined || isBefore(before, reading));
  });
  if (ready) return all;
  return all.filter(isUsable).sort((a, b) => a.at - b.at || (a.id < b.id ? -1 : 1));
}

const isBefore = (a: AirReading, b: AirReading): boolean => a.at < b.at || (a.at === b.at && a.id < b.id);

function isUsable({ at, airC, rh, air }: AirReading): boolean {
  const timed = within({ low: 0, high: latestMs - forecastMs }, at);
  return timed && within(ranges.airC, airC) && within(ranges.rh, rh) && Object.hasOwn(airClasses, air);
}

function toPhysics({ at, airC, rh, air }: AirReading): PhysicsReading {
  // Sensors tell humidity over water also in frost; the sums want it over ice.
  return { atMs: at, tempC: airC, rh: rhOverIce({ tempC: airC, rh }), filmWM2K: airClasses[air].filmWM2K };
}
