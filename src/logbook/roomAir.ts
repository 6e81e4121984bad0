import { pressureAtAltitudePa, rhOverIce } from "../physics/air.ts";
import type { DryingInterval, DryStep } from "../physics/dryStep.ts";
import { dryStep } from "../physics/dryStep.ts";
import { forecastAir } from "../physics/forecast.ts";
import type { AirReading as PhysicsReading } from "../physics/readings.ts";
import { intervalsFromReadings } from "../physics/readings.ts";
import { airClasses } from "../trade/airClasses.ts";
import type { AirReading } from "./piece.ts";
import { ranges, within } from "./ranges.ts";

/** How far the first reading of a room is held back: what came before is not known. Judgement. */
export const heldBackMs = 12 * 3_600_000;
const forecastMs = 14 * 86_400_000;
const yesterdayMs = 2 * 86_400_000;
const latestMs = 8.64e15;

/** A stretch of steady air, epoch ms; the last one of a room has no end. */
export type Stretch = { readonly from: number; readonly to: number; readonly step: DryStep };

/** A room's air as one line of stretches, from half a day before its first reading to the end of time. */
export type RoomAir = {
  readonly readings: readonly AirReading[];
  readonly pressurePa: number;
  readonly startsAt: number;
  readonly forecast: "repeat-yesterday" | "hold-last";
  /** The index of the stretch that holds this time; 0 before the start. */
  readonly indexAt: (at: number) => number;
  readonly stretch: (index: number) => Stretch | null;
  /** The reading in force at this time: the last one before it, else the first. */
  readonly readingAt: (at: number) => AirReading;
};

export type AirOptions = { readonly altitudeM: number; readonly pocketSM: number };

const known = new WeakMap<readonly AirReading[], Map<string, RoomAir | null>>();

/**
 * The air of a room for pieces with this pocket; null where it has no reading that can be used. Kept as long as
 * the same list of readings comes back, so that two hundred pieces read their room once.
 *
 * Past the last reading the forecast starts from that reading, not from now: as long as nothing new is read, a
 * ready time stands still while the clock goes on.
 */
export function roomAir(
  readings: readonly AirReading[],
  { altitudeM, pocketSM }: AirOptions,
): RoomAir | null {
  const ofRoom = known.get(readings) ?? new Map<string, RoomAir | null>();
  known.set(readings, ofRoom);
  const key = `${altitudeM} ${pocketSM}`;
  const kept = ofRoom.get(key);
  if (kept !== undefined) return kept;
  const made = readRoom(readings, { altitudeM, pocketSM });
  ofRoom.set(key, made);
  return made;
}

function readRoom(all: readonly AirReading[], { altitudeM, pocketSM }: AirOptions): RoomAir | null {
  const readings = all.filter(isUsable).sort((a, b) => a.at - b.at || (a.id < b.id ? -1 : 1));
  const first = readings[0];
  const last = readings.at(-1);
  if (first === undefined || last === undefined) return null;
  const pressurePa = pressureAtAltitudePa(within(ranges.altitudeM, altitudeM) ? altitudeM : 0);
  const line = readings.map(toPhysics);
  const recent = line.filter(({ atMs }) => atMs >= last.at - yesterdayMs);
  const ahead = forecastAir({
    readings: recent,
    nowMs: last.at,
    untilMs: last.at + forecastMs,
    stepS: 3600,
    pressurePa,
  });
  const forecast = ahead.basis ?? "hold-last";
  const past = intervalsFromReadings({ readings: line, fromMs: first.at, toMs: last.at, pressurePa });
  const before = { ...airOf(toPhysics(first)), pressurePa, durationS: heldBackMs / 1000 };
  // Held air is one stretch, however long.
  const future = forecast === "hold-last" ? ahead.intervals.slice(0, 1) : ahead.intervals;
  const intervals = [before, ...past.intervals, ...future];
  const startsAt = first.at - heldBackMs;
  return {
    readings,
    pressurePa,
    startsAt,
    forecast,
    readingAt: (at) => readings[Math.max(0, countUpTo(readings, at) - 1)] ?? first,
    ...stretchesOf(intervals, { startsAt, pocketSM }),
  };
}

/** Stretches are read when a coat first walks through them: most of a forecast never is. */
function stretchesOf(
  intervals: readonly DryingInterval[],
  { startsAt, pocketSM }: { startsAt: number; pocketSM: number },
): Pick<RoomAir, "indexAt" | "stretch"> {
  const starts: { at: number }[] = [];
  let at = startsAt;
  for (const { durationS } of intervals) {
    starts.push({ at });
    at += durationS * 1000;
  }
  const made: (Stretch | undefined)[] = [];
  const stretch = (index: number): Stretch | null => {
    const ready = made[index];
    if (ready) return ready;
    const interval = intervals[index];
    const from = starts[index]?.at;
    if (interval === undefined || from === undefined) return null;
    const step = dryStep(interval, { filmWM2K: interval.filmWM2K ?? airClasses.still.filmWM2K, pocketSM });
    const fresh = { from, to: starts[index + 1]?.at ?? Infinity, step };
    made[index] = fresh;
    return fresh;
  };
  return { stretch, indexAt: (time) => Math.max(0, countUpTo(starts, time) - 1) };
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

function isUsable({ at, airC, rh, air }: AirReading): boolean {
  const timed = within({ low: 0, high: latestMs - forecastMs }, at);
  return timed && within(ranges.airC, airC) && within(ranges.rh, rh) && Object.hasOwn(airClasses, air);
}

function toPhysics({ at, airC, rh, air }: AirReading): PhysicsReading {
  // Sensors tell humidity over water also in frost; the sums want it over ice.
  return { atMs: at, tempC: airC, rh: rhOverIce({ tempC: airC, rh }), filmWM2K: airClasses[air].filmWM2K };
}

const airOf = ({ tempC, rh, filmWM2K }: PhysicsReading) => ({ tempC, rh, filmWM2K });
