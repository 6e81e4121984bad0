import type { WetLayer } from "./coat.ts";
import { readyWaterKgM2, requireCoat } from "./coat.ts";
import type { AirVisit, DryCourse } from "./dryAlong.ts";
import { dryAlong } from "./dryAlong.ts";
import type { DryStep } from "./dryStep.ts";
import { doseBetween } from "./front.ts";
import { requirePositive, requireWithin } from "../stats/range.ts";
import type { ReadySpread } from "../stats/spread.ts";

/** The three guesses of a coat's drying. */
export const guesses = ["early", "likely", "late"] as const;
export type Guess = (typeof guesses)[number];

/** A coat on its way from dip to dry, as early, likely and late at once. Times in ms of one clock. */
export type CoatTrack = {
  coat: WetLayer;
  early: DryCourse;
  likely: DryCourse;
  late: DryCourse;
  at: number;
  /** kg·s/m³ of the room's air up to ready. */
  dose: number;
  condensed: boolean;
  lastStep: DryStep | null;
  /** When the likely guess's wet surface first fell to freezing, and how cold it was then. */
  frozen: { readonly at: number; readonly surfaceC: number } | null;
  readonly points: { at: number; waterKgM2: number }[];
};

/** A coat as it goes on at `at`, ms, drying by the factors of `spread`; refuses a coat or a factor out of range. */
export function startTrack(
  coat: WetLayer,
  { at, spread }: { readonly at: number; readonly spread: ReadySpread },
): CoatTrack {
  requireCoat(coat);
  requireWithin("at", at, { low: -latestMs, high: latestMs, unit: "ms" });
  for (const guess of guesses) requirePositive(guess, spread[guess], { high: 1e6, unit: "" });
  const { waterKgM2 } = coat;
  const course = (factor: number): DryCourse => ({ factor, waterKgM2, readyAt: null, isFrozen: false });
  return {
    coat,
    early: course(spread.early),
    likely: course(spread.likely),
    late: course(spread.late),
    at,
    dose: 0,
    condensed: false,
    lastStep: null,
    frozen: null,
    points: [{ at, waterKgM2 }],
  };
}

/** The last moment a clock can tell, ms. */
const latestMs = 8.64e15;

/**
 * Dries the coat through the air that `air` shows from where it is up to `to`, ms; with `stopWhenReady` no further than
 * the late guess. Nothing is done where `to` lies behind.
 */
export function dryTrack(
  track: CoatTrack,
  {
    to,
    air,
    stopWhenReady = false,
    onStep,
  }: {
    readonly to: number;
    readonly air: (span: { readonly from: number; readonly to: number }, visit: AirVisit) => void;
    readonly stopWhenReady?: boolean | undefined;
    /** Called after each stretch of air, with the time it ended. */
    readonly onStep?: ((at: number, track: CoatTrack) => void) | undefined;
  },
): void {
  requireWithin("to", to, { low: -latestMs, high: latestMs, unit: "ms" });
  const { coat, likely } = track;
  const readyKgM2 = readyWaterKgM2(coat);
  let wasReady = likely.readyAt;
  dryAlong([track.early, likely, track.late], {
    coat,
    air: (visit) => air({ from: track.at, to }, visit),
    onStep: (step, startAt) => {
      track.lastStep = step;
      const endAt = startAt + step.durationS * 1000;
      // What wets a ready coat again counts too.
      if (wasReady === null || likely.readyAt === null) count(track, { step, startAt, endAt, readyKgM2 });
      wasReady = likely.readyAt;
      onStep?.(endAt, track);
      return !(stopWhenReady && track.late.readyAt !== null);
    },
  });
  track.at = Math.max(track.at, to);
}

/** What one stretch of air did to a coat that was not ready before or after it. */
function count(
  track: CoatTrack,
  {
    step,
    startAt,
    endAt,
    readyKgM2,
  }: {
    readonly step: DryStep;
    readonly startAt: number;
    readonly endAt: number;
    readonly readyKgM2: number;
  },
): void {
  const { readyAt, waterKgM2 } = track.likely;
  const surfaceC = step.parts.wetSurfaceC;
  if (step.says === "frost" && (track.frozen === null || surfaceC < track.frozen.surfaceC))
    track.frozen = { at: track.frozen?.at ?? startAt, surfaceC };
  track.dose += step.deficitKgM3 * (readyAt === null ? step.durationS : (readyAt - startAt) / 1000);
  track.condensed ||= step.says === "condensing";
  track.points.push(readyAt === null ? { at: endAt, waterKgM2 } : { at: readyAt, waterKgM2: readyKgM2 });
}

/** kg·s/m³ to the g·h/m³ that is shown. */
const shownDose = (dose: number): number => (dose * 1000) / 3600;

/**
 * ∫Δρ dt of the room's air up to ready or to now, g·h/m³, and that from the start to ready, the rest of it from the
 * likely guess's water at the last air seen. What is needed is null before any air was seen.
 */
export function dosesOf({ coat, likely, lastStep, dose }: CoatTrack): {
  readonly suppliedGHM3: number;
  readonly neededGHM3: number | null;
} {
  requireWithin("dose", dose, { low: 0, high: 1e24, unit: "kg·s/m³" });
  const suppliedGHM3 = shownDose(dose);
  if (likely.readyAt !== null) return { suppliedGHM3, neededGHM3: suppliedGHM3 };
  if (lastStep === null) return { suppliedGHM3, neededGHM3: null };
  requirePositive("factor", likely.factor, { high: 1e6, unit: "" });
  const range = { fromKgM2: likely.waterKgM2, toKgM2: readyWaterKgM2(coat) };
  const left = likely.factor * doseBetween(range, coat, lastStep.parts);
  return { suppliedGHM3, neededGHM3: suppliedGHM3 + shownDose(left) };
}

/**
 * Why the likely guess is not ready: what the last air does; null where it is. "history-ends": it was drying and would
 * go on, or there was no air.
 */
export function whyNotReady({
  likely,
  lastStep,
}: Pick<CoatTrack, "likely" | "lastStep">): null | "frost" | "air-too-damp" | "condensing" | "history-ends" {
  if (likely.readyAt !== null) return null;
  if (likely.isFrozen) return "frost";
  return lastStep === null || lastStep.says === "drying" ? "history-ends" : lastStep.says;
}
