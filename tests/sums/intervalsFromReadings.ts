import type { DryingInterval } from "../../src/physics/drying/dryStep.ts";
import { inOrder, intervalsBetween, type FilmReading } from "../../src/physics/drying/readings.ts";
import { requireAirPressure, requireMoment } from "../../src/physics/stats/range.ts";

export type AirHistory = {
  readonly intervals: readonly DryingInterval[];
  /** Longest time without a reading between the first one and `toMs`, s. Over 2 h the answer is less sure. */
  readonly gapS: number;
  /** How long the first reading was held backwards, s; 0 where one is older than `fromMs`. */
  readonly heldBackS: number;
};

/**
 * A room's readings as stretches of constant air from `fromMs` to `toMs`, ready to dry a coat.
 *
 * Between two readings temperature and vapour pressure go in a straight line, also across a long gap: where
 * the far end of a gap is known that beats holding the near one, which on a cooling night would promise too
 * much. Stretches take the air of their middle; they are cut to 30 min where the air moves by more than 2 K or
 * 5 % rh. The film is held from the earlier reading, as a fan is switched, not faded. After the last reading
 * the air is held; before the first it is held back, and both are told. No readings: no intervals.
 */
export function intervalsFromReadings({
  readings,
  fromMs,
  toMs,
  pressurePa,
}: {
  readonly readings: readonly FilmReading[];
  readonly fromMs: number;
  readonly toMs: number;
  readonly pressurePa: number;
}): AirHistory {
  requireMoment("fromMs", fromMs);
  requireMoment("toMs", toMs);
  requireAirPressure(pressurePa);
  if (!(fromMs <= toMs)) throw new RangeError(`toMs must not be before fromMs ${fromMs}, found ${toMs}`);
  const ordered = inOrder(readings);
  const first = ordered[0];
  if (first === undefined) return { intervals: [], gapS: (toMs - fromMs) / 1000, heldBackS: 0 };
  const intervals: DryingInterval[] = [];
  let gapMs = 0;
  const heldBackMs = Math.max(0, Math.min(toMs, first.atMs) - fromMs);
  const add = (stretch: readonly DryingInterval[]): void => {
    intervals.push(...stretch);
  };
  if (heldBackMs > 0) add([held(first, { ms: heldBackMs, pressurePa })]);
  for (const [i, reading] of ordered.entries()) {
    const next = ordered[i + 1];
    const from = Math.max(fromMs, reading.atMs);
    const to = Math.min(toMs, next?.atMs ?? toMs);
    if (to <= from) continue;
    gapMs = Math.max(gapMs, (next?.atMs ?? toMs) - reading.atMs);
    add(
      next
        ? intervalsBetween(reading, next, { from, to, pressurePa })
        : [held(reading, { ms: to - from, pressurePa })],
    );
  }
  return { intervals, gapS: gapMs / 1000, heldBackS: heldBackMs / 1000 };
}

function held(
  { tempC, rh, filmWM2K }: FilmReading,
  { ms, pressurePa }: { ms: number; pressurePa: number },
): DryingInterval {
  return { durationS: ms / 1000, tempC, rh, pressurePa, filmWM2K };
}
