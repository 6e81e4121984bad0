import type { WetLayer } from "../src/physics/drying/coat.ts";
import { dosesOf, dryTrack, startTrack, whyNotReady } from "../src/physics/drying/coatTrack.ts";
import { stepsInRow } from "../src/physics/drying/dryAlong.ts";
import type { DryingInterval } from "../src/physics/drying/dryStep.ts";
import { dryStep } from "../src/physics/drying/dryStep.ts";

/** For tests only: the app's own drying, of one coat by one factor on time through air that starts at 0 s. */
export function dryThrough({
  coat,
  filmWM2K,
  pocketSM,
  intervals,
  resistanceFactor: factor = 1,
}: {
  readonly coat: WetLayer;
  readonly filmWM2K: number;
  readonly pocketSM: number;
  readonly intervals: readonly DryingInterval[];
  readonly resistanceFactor?: number | undefined;
}) {
  const steps = intervals.map((interval) => dryStep(interval, { filmWM2K, pocketSM }));
  const spread = { early: factor, likely: factor, late: factor, sigmaLn: 0 };
  const track = startTrack(coat, { at: 0, spread });
  const points: { readonly afterS: number; readonly waterKgM2: number }[] = [];
  dryTrack(track, {
    to: steps.reduce((sum, { durationS }) => sum + durationS, 0) * 1000,
    air: (_, visit) => stepsInRow(steps)(visit),
    onStep: (at) => points.push({ afterS: at / 1000, waterKgM2: track.likely.waterKgM2 }),
  });
  const { waterKgM2, readyAt } = track.likely;
  const { suppliedGHM3, neededGHM3 } = dosesOf(track);
  return {
    waterKgM2,
    readyAfterS: readyAt === null ? null : readyAt / 1000,
    reason: whyNotReady(track),
    doseSuppliedGHM3: suppliedGHM3,
    doseNeededGHM3: neededGHM3,
    condensed: track.condensed,
    points,
  };
}
