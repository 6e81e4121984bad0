import type { Coat as WetCoat } from "../../physics/drying/coat.ts";
import { carryOver, readyWaterKgM2 } from "../../physics/drying/coat.ts";
import type { DryStep } from "../../physics/drying/dryStep.ts";
import { waterAfterStep } from "../../physics/drying/dryStep.ts";
import { doseBetween } from "../../physics/drying/front.ts";
import type { ReadySpread } from "../../physics/stats/spread.ts";
import type { Stay } from "../air/hanging.ts";
import { walkAir } from "../air/hanging.ts";

/** One of the three guesses of a coat's drying. */
type Guess = "early" | "likely" | "late";
type Lane = { factor: number; waterKgM2: number; readyAt: number | null; isFrozen: boolean };

/**
 * A coat on its way from dip to dry, as early, likely and late at once: each stretch of air is read once for
 * all three. Sums are those of `dryThrough`; here the stretches come from a shared room and stop when all is said.
 */
export type CoatTrack = {
  coat: WetCoat;
  readonly early: Lane;
  readonly likely: Lane;
  readonly late: Lane;
  at: number;
  /** kg·s/m³ of the room's air up to ready. */
  dose: number;
  condensed: boolean;
  lastStep: DryStep | null;
  /** When the likely guess's wet surface first fell to freezing, and how cold it was then. */
  frozen: { readonly at: number; readonly surfaceC: number } | null;
  readonly points: { at: number; waterKgM2: number }[];
};

/** Most water a coat can be said to hold, kg/m²: keeps a log of endless dips within the sums. */
const mostKgM2 = 5;

export function startTrack(coat: WetCoat, { at, spread }: { at: number; spread: ReadySpread }): CoatTrack {
  const lane = (factor: number): Lane => ({
    factor,
    waterKgM2: coat.waterKgM2,
    readyAt: null,
    isFrozen: false,
  });
  return {
    coat,
    early: lane(spread.early),
    likely: lane(spread.likely),
    late: lane(spread.late),
    at,
    dose: 0,
    condensed: false,
    lastStep: null,
    frozen: null,
    points: [{ at, waterKgM2: coat.waterKgM2 }],
  };
}

/** From here on the coat dries by these factors, as after a further dip, of which other things were seen. */
export function takeSpread(track: CoatTrack, spread: ReadySpread): void {
  track.early.factor = spread.early;
  track.likely.factor = spread.likely;
  track.late.factor = spread.late;
}

/** The same track, free to go on by itself. */
export function copyTrack(track: CoatTrack): CoatTrack {
  const { early, likely, late, points } = track;
  return { ...track, early: { ...early }, likely: { ...likely }, late: { ...late }, points: [...points] };
}

const lanesOf = ({ early, likely, late }: CoatTrack): readonly Lane[] => [early, likely, late];

/** Dries the coat up to a time; with `stopWhenReady` no further than the late guess. */
export function dryTo(
  track: CoatTrack,
  stays: readonly Stay[],
  {
    to,
    stopWhenReady = false,
    watch,
  }: {
    to: number;
    stopWhenReady?: boolean;
    /** Told after each stretch of air, with the time it ended. */
    watch?: ((at: number, track: CoatTrack) => void) | undefined;
  },
): void {
  const lanes = lanesOf(track);
  const readyKgM2 = readyWaterKgM2(track.coat);
  const dry = (step: DryStep, startAt: number): boolean => {
    track.lastStep = step;
    const wasReady = track.likely.readyAt;
    const surfaceC = step.parts.wetSurfaceC;
    if (
      step.says === "frost" &&
      wasReady === null &&
      (track.frozen === null || surfaceC < track.frozen.surfaceC)
    )
      track.frozen = { at: track.frozen?.at ?? startAt, surfaceC };
    for (const lane of lanes) pass(lane, { coat: track.coat, step, startAt, readyKgM2 });
    if (wasReady === null) {
      const { readyAt } = track.likely;
      const wetS = readyAt === null ? step.durationS : (readyAt - startAt) / 1000;
      track.dose += step.deficitKgM3 * wetS;
      track.condensed ||= step.says === "condensing";
      track.points.push({
        at: readyAt ?? startAt + step.durationS * 1000,
        waterKgM2: readyAt === null ? track.likely.waterKgM2 : readyKgM2,
      });
    }
    watch?.(startAt + step.durationS * 1000, track);
    return !(stopWhenReady && track.late.readyAt !== null);
  };
  walkAir(stays, { from: track.at, to }, (step, startAt) =>
    watch === undefined ? dry(step, startAt) : everyPart(step, startAt, dry),
  );
  track.at = Math.max(track.at, to);
}

/** Whoever watches sees the water bend within a long stretch of steady air too. */
const watchedS = 300;

/** Cuts a stretch into even parts, which changes nothing of where it ends; stops where one says so. */
function everyPart(
  step: DryStep,
  startAt: number,
  dry: (step: DryStep, startAt: number) => boolean,
): boolean {
  const parts = Math.max(1, Math.ceil(step.durationS / watchedS));
  const part = { ...step, durationS: step.durationS / parts };
  for (let i = 0; i < parts; i += 1) if (!dry(part, startAt + i * part.durationS * 1000)) return false;
  return true;
}

function pass(
  lane: Lane,
  { coat, step, startAt, readyKgM2 }: { coat: WetCoat; step: DryStep; startAt: number; readyKgM2: number },
): void {
  const { factor, waterKgM2 } = lane;
  const endKgM2 = waterAfterStep(step, { coat, waterKgM2, resistanceFactor: factor });
  if (endKgM2 > waterKgM2 && endKgM2 > readyKgM2) lane.readyAt = null;
  // What froze while wet is spoilt: no later air makes it ready.
  if (step.says === "frost" && lane.readyAt === null) lane.isFrozen = true;
  if (lane.readyAt === null && !lane.isFrozen && endKgM2 <= readyKgM2 && step.says === "drying") {
    const dose = doseBetween({ fromKgM2: waterKgM2, toKgM2: readyKgM2 }, coat, step.parts);
    lane.readyAt = startAt + 1000 * Math.min(step.durationS, (factor * dose) / step.deficitKgM3);
  }
  lane.waterKgM2 = endKgM2;
}

/** A further dip of the same coat: its water on top of what is left. */
export function redip(track: CoatTrack, newKgM2: number): void {
  const criticalShare = track.coat.criticalKgM2 / track.coat.waterKgM2;
  const leftKgM2 = Math.min(mostKgM2, track.likely.waterKgM2);
  track.coat = { ...track.coat, ...carryOver({ leftKgM2, newKgM2, criticalShare }) };
  for (const lane of lanesOf(track)) {
    lane.waterKgM2 = track.coat.waterKgM2;
    lane.readyAt = null;
  }
  track.points.push({ at: track.at, waterKgM2: track.likely.waterKgM2 });
}

/** Someone saw that it is still wet: what the sum thought of it gives way to what `to` makes of each guess. */
export function seenWet(track: CoatTrack, to: (lane: Lane, guess: Guess) => Lane): void {
  for (const guess of ["early", "likely", "late"] as const)
    Object.assign(track[guess], to(track[guess], guess), { readyAt: null });
  track.points.push({ at: track.at, waterKgM2: track.likely.waterKgM2 });
}

/** Seen dry, or dried by fire: ready from now, if it was not before. */
export function seenDry(track: CoatTrack, { at, leftKgM2 }: { at: number; leftKgM2?: number }): void {
  const left = leftKgM2 ?? readyWaterKgM2(track.coat);
  for (const lane of lanesOf(track)) {
    lane.waterKgM2 = Math.min(lane.waterKgM2, left);
    lane.readyAt ??= at;
  }
  track.points.push({ at, waterKgM2: track.likely.waterKgM2 });
}

/** The dose still wanted from the likely guess's water, kg·s/m³, at the last air seen; null without air. */
export function doseLeft({ coat, likely, lastStep }: CoatTrack): number | null {
  if (lastStep === null) return null;
  const range = { fromKgM2: likely.waterKgM2, toKgM2: readyWaterKgM2(coat) };
  return likely.factor * doseBetween(range, coat, lastStep.parts);
}
