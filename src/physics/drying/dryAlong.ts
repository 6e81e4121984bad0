import type { WetLayer } from "./coat.ts";
import { readyWaterKgM2 } from "./coat.ts";
import type { DryStep } from "./dryStep.ts";
import { waterAfterStep } from "./dryStep.ts";
import { doseBetween } from "./front.ts";
import { requireWithin } from "../stats/range.ts";

/** One way a coat's water may go: by this factor on time (1 = none), every deficit is divided by it. */
export type DryCourse = {
  readonly factor: number;
  waterKgM2: number;
  /** Since when it stays ready, ms on the clock of the air; null while it is not. */
  readyAt: number | null;
  isFrozen: boolean;
};

/** Is given one stretch of air and when it starts, ms; says whether it wants the next. */
export type AirVisit = (step: DryStep, startAt: number) => boolean;

/**
 * The one integrator of drying: takes a coat through stretches of air, on every course at once, and calls `onStep`
 * after each stretch, until the air ends or `onStep` says it has seen enough. Exact in each stretch, so splitting one
 * changes nothing. What comes of it is written into the courses.
 *
 * Too damp air still takes water, down to its last tenth, but readiness is called only in a stretch at or under 80 %.
 * Water that settles again goes back into the pores (see `front.ts`) and takes a readiness back if it lifts the coat
 * over its mark. A coat that froze while wet is never ready after it. Refuses water, factors and layers out of range.
 */
export function dryAlong(
  courses: readonly DryCourse[],
  {
    coat,
    air,
    onStep = goOn,
  }: {
    readonly coat: WetLayer;
    /** Shows the air, stretch after stretch. */
    readonly air: (visit: AirVisit) => void;
    readonly onStep?: AirVisit | undefined;
  },
): void {
  const readyKgM2 = readyWaterKgM2(coat);
  air((step, startAt) => {
    if (step.durationS <= 0) return true;
    for (const course of courses) pass(course, { coat, step, startAt, readyKgM2 });
    return onStep(step, startAt);
  });
}

const goOn = (): boolean => true;

/** Stretches one after the other, the first at 0 ms: air for `dryAlong`. Refuses one of more than 1e10 s. */
export function stepsInRow(steps: readonly DryStep[]): (visit: AirVisit) => void {
  return (visit) => {
    let at = 0;
    for (const step of steps) {
      requireWithin("durationS", step.durationS, { low: 0, high: 1e10, unit: "s" });
      if (!visit(step, at)) return;
      at += step.durationS * 1000;
    }
  };
}

function pass(
  course: DryCourse,
  {
    coat,
    step,
    startAt,
    readyKgM2,
  }: {
    readonly coat: WetLayer;
    readonly step: DryStep;
    readonly startAt: number;
    readonly readyKgM2: number;
  },
): void {
  const { factor, waterKgM2 } = course;
  const endKgM2 = waterAfterStep(step, { coat, waterKgM2, resistanceFactor: factor });
  if (endKgM2 > waterKgM2 && endKgM2 > readyKgM2) course.readyAt = null;
  // What froze while wet is spoilt: no later air makes it ready.
  if (step.says === "frost" && course.readyAt === null) course.isFrozen = true;
  if (course.readyAt === null && !course.isFrozen && endKgM2 <= readyKgM2 && step.says === "drying") {
    const dose = doseBetween({ fromKgM2: waterKgM2, toKgM2: readyKgM2 }, coat, step.parts);
    // The last digit must not put ready past the end of the stretch.
    course.readyAt = startAt + 1000 * Math.min(step.durationS, (factor * dose) / step.deficitKgM3);
  }
  course.waterKgM2 = endKgM2;
}
