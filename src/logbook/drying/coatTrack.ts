import { carryOver, readyWaterKgM2 } from "../../physics/drying/coat.ts";
import type { CoatTrack, Guess } from "../../physics/drying/coatTrack.ts";
import { dryTrack, guesses } from "../../physics/drying/coatTrack.ts";
import type { AirVisit, DryCourse } from "../../physics/drying/dryAlong.ts";
import type { ReadySpread } from "../../physics/stats/spread.ts";
import type { Stay } from "../air/hanging.ts";
import { walkAir } from "../air/hanging.ts";

/** Most water a coat can be said to hold, kg/m²: keeps a log of endless dips within the sums. */
const mostKgM2 = 5;

/** From here on the coat dries by these factors, as after a further dip, of which other things were seen. */
export function takeSpread(track: CoatTrack, spread: ReadySpread): void {
  for (const guess of guesses) track[guess] = { ...track[guess], factor: spread[guess] };
}

/** The same track, free to go on by itself. */
export function copyTrack(track: CoatTrack): CoatTrack {
  const { early, likely, late, points } = track;
  return { ...track, early: { ...early }, likely: { ...likely }, late: { ...late }, points: [...points] };
}

/** Called after each stretch of air a coat went through, with the time it ended. */
export type Watch = (at: number, track: CoatTrack) => void;

/** Dries the coat in the air it hung in up to a time; with `stopWhenReady` no further than the late guess. */
export function dryTo(
  track: CoatTrack,
  stays: readonly Stay[],
  {
    to,
    stopWhenReady,
    watch,
  }: { to: number; stopWhenReady?: boolean | undefined; watch?: Watch | undefined },
): void {
  dryTrack(track, {
    to,
    stopWhenReady,
    onStep: watch,
    air: (span, visit) => walkAir(stays, span, watch === undefined ? visit : inParts(visit)),
  });
}

/** Whoever watches sees the water bend within a long stretch of steady air too. */
const watchedS = 300;

/** Shows a stretch in even parts, which changes nothing of where it ends; stops where one says so. */
function inParts(visit: AirVisit): AirVisit {
  return (step, startAt) => {
    const parts = Math.max(1, Math.ceil(step.durationS / watchedS));
    const part = { ...step, durationS: step.durationS / parts };
    for (let i = 0; i < parts; i += 1) if (!visit(part, startAt + i * part.durationS * 1000)) return false;
    return true;
  };
}

/** A further dip of the same coat: its water on top of what is left. */
export function redip(track: CoatTrack, newKgM2: number): void {
  const criticalShare = track.coat.criticalKgM2 / track.coat.waterKgM2;
  const leftKgM2 = Math.min(mostKgM2, track.likely.waterKgM2);
  track.coat = { ...track.coat, ...carryOver({ leftKgM2, newKgM2, criticalShare }) };
  for (const guess of guesses) {
    track[guess].waterKgM2 = track.coat.waterKgM2;
    track[guess].readyAt = null;
  }
  track.points.push({ at: track.at, waterKgM2: track.likely.waterKgM2 });
}

/** Someone saw that it is still wet: what the sum thought of it gives way to what `to` makes of each guess. */
export function seenWet(track: CoatTrack, to: (course: DryCourse, guess: Guess) => DryCourse): void {
  for (const guess of guesses) track[guess] = { ...to(track[guess], guess), readyAt: null };
  track.points.push({ at: track.at, waterKgM2: track.likely.waterKgM2 });
}

/** Seen dry, or dried by fire: ready from now, if it was not before. */
export function seenDry(track: CoatTrack, { at, leftKgM2 }: { at: number; leftKgM2?: number }): void {
  const left = leftKgM2 ?? readyWaterKgM2(track.coat);
  for (const guess of guesses) {
    const course = track[guess];
    course.waterKgM2 = Math.min(course.waterKgM2, left);
    course.readyAt ??= at;
  }
  track.points.push({ at, waterKgM2: track.likely.waterKgM2 });
}
