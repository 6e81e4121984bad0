import type { Stretch } from "./firingSegments.ts";
import { requireCurve } from "./firingSegments.ts";
import { requireMoment, requireWithin } from "../stats/range.ts";
import { minuteMs } from "../stats/time.ts";

/** A kiln reading; `at` is epoch ms. */
export type KilnReading = { readonly at: number; readonly kilnC: number };
/** Something ticked off at the kiln. */
export type Ticked = { readonly segment: number; readonly at: number };

/** Where in its plan a run is. */
export type RunPosition = {
  /** Null once the plan is through. */
  readonly segment: number | null;
  /** Minute of the plan that the run has come to. */
  readonly planMin: number;
  /** When it was there: the last reading, or the start. */
  readonly at: number;
};

/** A reading this near a segment's temperatures is on it: the swing of a controller and its sensor (judgement). */
const nearK = 8;
/** A kelvin further off weighs as much as this many minutes off the plan's pace (judgement). */
const minutesPerK = 1;

/**
 * Place in the plan from readings alone, however few: of all places whose temperature fits a reading, the one
 * nearest to where the plan's own pace would have brought the run since the reading before. A run that keeps
 * its plan is found on it; a ramp that lags is found by its temperature; a hold is counted by the clock.
 *
 * Readings in time, none before the start.
 */
export function runPosition({
  curve,
  startedAt,
  readings,
}: {
  curve: readonly Stretch[];
  startedAt: number;
  readings: readonly KilnReading[];
}): RunPosition {
  requireMoment("startedAt", startedAt);
  requireCurve(curve);
  for (const { at, kilnC } of readings) {
    requireMoment("at of a reading", at);
    requireWithin("kilnC", kilnC, { low: -273, high: 4000, unit: "°C" });
  }
  let place: RunPosition = { segment: curve.length === 0 ? null : 0, planMin: 0, at: startedAt };
  for (const { at, kilnC } of readings) {
    const expectedMin = place.planMin + (at - place.at) / minuteMs;
    place = { ...nearestPlace(curve, { kilnC, expectedMin }), at };
  }
  return place;
}

/** Readings from the start on, in time; of two at one moment the hotter one comes last. */
export function orderedReadings(readings: readonly KilnReading[], startedAt: number): readonly KilnReading[] {
  requireMoment("startedAt", startedAt);
  for (const { at, kilnC } of readings) {
    requireMoment("at of a reading", at);
    requireWithin("kilnC", kilnC, { low: -273, high: 4000, unit: "°C" });
  }
  return readings.filter(({ at }) => at >= startedAt).toSorted((a, b) => a.at - b.at || a.kilnC - b.kilnC);
}

function nearestPlace(
  curve: readonly Stretch[],
  { kilnC, expectedMin }: { kilnC: number; expectedMin: number },
): Omit<RunPosition, "at"> {
  const endMin = curve.at(-1)?.endMin ?? 0;
  let best: Omit<RunPosition, "at"> = { segment: null, planMin: endMin };
  let leastCost = Infinity;
  for (const { segment, startMin, endMin: stretchEndMin, fromC, toC } of curve) {
    const onC = Math.min(Math.max(kilnC, Math.min(fromC, toC)), Math.max(fromC, toC));
    const planMin =
      fromC === toC
        ? Math.min(Math.max(expectedMin, startMin), stretchEndMin)
        : startMin + ((onC - fromC) / (toC - fromC)) * (stretchEndMin - startMin);
    const offK = Math.max(0, Math.abs(kilnC - onC) - (fromC === toC ? nearK : 0));
    const cost = Math.abs(planMin - expectedMin) + offK * minutesPerK;
    if (cost >= leastCost) continue;
    leastCost = cost;
    best = { segment, planMin };
  }
  return best.planMin >= endMin ? { segment: null, planMin: endMin } : best;
}
