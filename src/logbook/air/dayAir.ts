import { addDays } from "date-fns/addDays";
import { millisecondsInDay as dayMs, millisecondsInHour as hourMs } from "date-fns/constants";
import { startOfDay } from "date-fns/startOfDay";
import { rhOverIce } from "../../physics/air/air.ts";
import type { AirPoint, DayView } from "../../physics/drying/dayView.ts";
import { airPoint, dayView, forecastPoints } from "../../physics/drying/dayView.ts";
import { forecastAir } from "../../physics/drying/forecast.ts";
import type { FilmReading as PhysicsReading } from "../../physics/drying/readings.ts";
import type { AirReading } from "../piece/piece.ts";
import { airClasses } from "../../trade/airClasses.ts";

const stepS = 600;
/** Past this age of the last reading, ms, nothing is foretold. Judgement. */
const tooOldMs = dayMs;

/** As the sums want it: sensors tell humidity over water also in frost. */
export const toPhysics = ({ at, airC, rh, air }: AirReading): PhysicsReading => ({
  atMs: at,
  tempC: airC,
  rh: rhOverIce({ tempC: airC, rh }),
  filmWM2K: airClasses[air].filmWM2K,
});

/** Midnight of the device's own clock before this moment, epoch ms, and the ones about it. */
export const midnight = (at: number, daysOn = 0): number => addDays(startOfDay(at), daysOn).getTime();

export type DayForecast = {
  /** Hour by hour from now; led by the last reading where that is not two hours old. */
  readonly points: readonly AirPoint[];
  readonly basis: "repeat-yesterday" | "hold-last";
};

export type Day = {
  readonly from: number;
  /** Midnight, or for today a day from now. */
  readonly to: number;
  readonly view: DayView;
  /** Today only; null where there is nothing to foretell from. */
  readonly ahead: DayForecast | null;
  /** When last was read at all, epoch ms. */
  readonly lastAt: number | null;
};

/** The air of the day that began at `from`, as read; for the day that `now` is in also the next 24 h. */
export function dayOf(
  readings: readonly PhysicsReading[],
  { from, now }: { from: number; now: number },
): Day {
  const next = midnight(from, 1);
  const isToday = now >= from && now < next;
  const known = readings.filter(({ atMs }) => atMs <= now);
  // On the very stroke of midnight there is no day yet to show.
  const until = isToday ? Math.max(now, from + stepS * 1000) : next;
  const view = dayView({ readings: known, fromMs: from, toMs: until, stepS });
  const lastAt = known.at(-1)?.atMs ?? null;
  return {
    from,
    to: isToday ? now + dayMs : next,
    view,
    ahead: isToday ? aheadOf(known, now) : null,
    lastAt,
  };
}

function aheadOf(known: readonly PhysicsReading[], now: number): DayForecast | null {
  const last = known.at(-1);
  if (last === undefined || now - last.atMs > tooOldMs) return null;
  const { intervals, basis } = forecastAir({
    readings: known.filter(({ atMs }) => atMs > now - 2 * dayMs),
    nowMs: now,
    untilMs: now + dayMs,
    stepS: 3600,
    // Only temperature and moisture are shown; neither depends on the pressure.
    pressurePa: 101_325,
  });
  if (basis === null) return null;
  const points = forecastPoints(intervals, now);
  const isFresh = now - last.atMs < 2 * hourMs;
  return { points: isFresh ? [airPoint(last), ...points] : points, basis };
}

export type Spell = { readonly from: number; readonly to: number; readonly most: number };

/** Stretches of a day in which the humidity lay over a limit; a hole in the readings ends one. */
export function spellsOver(points: readonly (AirPoint | null)[], limitRh: number): readonly Spell[] {
  const spells: Spell[] = [];
  let isOpen = false;
  for (const point of points) {
    const isOver = point !== null && point.rh > limitRh;
    const before = isOpen ? spells.pop() : undefined;
    if (isOver)
      spells.push({
        from: before?.from ?? point.atMs,
        to: point.atMs,
        most: Math.max(before?.most ?? 0, point.rh),
      });
    else if (before !== undefined) spells.push(before);
    isOpen = isOver;
  }
  return spells;
}

/** The point nearest to a moment, of those read and foretold; null where none lies within a step or an hour. */
export function dayPointAt(
  day: Day,
  at: number,
): { readonly point: AirPoint; readonly isForetold: boolean } | null {
  const nearest = (points: readonly (AirPoint | null)[], withinMs: number): AirPoint | null =>
    points.reduce<AirPoint | null>(
      (best, point) =>
        point !== null &&
        Math.abs(point.atMs - at) <= Math.min(withinMs, best === null ? Infinity : Math.abs(best.atMs - at))
          ? point
          : best,
      null,
    );
  const read = nearest(day.view.points, stepS * 1000);
  if (read !== null) return { point: read, isForetold: false };
  const foretold = nearest(day.ahead?.points ?? [], hourMs);
  return foretold && { point: foretold, isForetold: true };
}
