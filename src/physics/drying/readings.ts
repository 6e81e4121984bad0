import { saturationPressurePa, vapourPressurePa } from "../air/air.ts";
import type { DryingInterval } from "./dryStep.ts";
import { requireAirPressure, requireFraction, requireWithin } from "../stats/range.ts";

/** One reading of a room: epoch ms, °C, fraction, and the air's movement as a film coefficient, W/m²K. */
export type FilmReading = {
  readonly atMs: number;
  readonly tempC: number;
  readonly rh: number;
  readonly filmWM2K: number;
};

/** Longest step where the air changes, s: within it the deficit may count as constant. */
const subStepS = 1800;

/** A century between two readings is a wrong clock. */
const mostGapMs = 3.2e12;

/** Changes between two readings that call for sub-steps. */
const steadyTempK = 2;
const steadyRh = 0.05;

/** Readings in order of time. Ties are put in order by value, so that the order they came in never matters. */
export function inOrder(readings: readonly FilmReading[]): readonly FilmReading[] {
  for (const { atMs, tempC, rh, filmWM2K } of readings) {
    requireWithin("filmWM2K", filmWM2K, { low: 0, high: 500, unit: "W/m²K" });
    requireWithin("atMs", atMs, { low: 0, high: 8.64e15, unit: "ms" });
    requireWithin("tempC", tempC, { low: -40, high: 90, unit: "°C" });
    requireFraction("rh", rh);
  }
  return [...readings].sort(
    (a, b) => a.atMs - b.atMs || a.tempC - b.tempC || a.rh - b.rh || a.filmWM2K - b.filmWM2K,
  );
}

/** The air between two readings that follow one another, from `from` to `to` (epoch ms) within them. Refuses readings of one moment. */
export function intervalsBetween(
  a: FilmReading,
  b: FilmReading,
  { from, to, pressurePa }: { from: number; to: number; pressurePa: number },
): readonly DryingInterval[] {
  inOrder([a, b]);
  requireAirPressure(pressurePa);
  if (!(b.atMs > a.atMs))
    throw new RangeError(`the later reading must be after ${a.atMs} ms, found ${b.atMs}`);
  requireWithin("from", from, { low: a.atMs, high: b.atMs, unit: "ms" });
  requireWithin("to", to, { low: from, high: b.atMs, unit: "ms" });
  requireWithin("to − from", to - from, { low: 0, high: mostGapMs, unit: "ms" });
  const steady = Math.abs(b.tempC - a.tempC) <= steadyTempK && Math.abs(b.rh - a.rh) <= steadyRh;
  const parts = steady ? 1 : Math.ceil((to - from) / 1000 / subStepS);
  const ms = (to - from) / parts;
  return Array.from({ length: parts }, (_, i) => {
    const share = (from + (i + 0.5) * ms - a.atMs) / (b.atMs - a.atMs);
    return { ...airBetween(a, b, share), durationS: ms / 1000, pressurePa, filmWM2K: a.filmWM2K };
  });
}

/** Air on the straight line of temperature and vapour pressure between two, `share` 0–1 of the way. */
function airBetween(
  a: { tempC: number; rh: number },
  b: { tempC: number; rh: number },
  share: number,
): { readonly tempC: number; readonly rh: number } {
  const tempC = a.tempC + share * (b.tempC - a.tempC);
  const vapourPa = vapourPressurePa(a) + share * (vapourPressurePa(b) - vapourPressurePa(a));
  return { tempC, rh: Math.min(1, vapourPa / saturationPressurePa(tempC)) };
}
