import type { WetLayer } from "../drying/coat.ts";
import { requireCoat } from "../drying/coat.ts";
import type { DryCourse } from "../drying/dryAlong.ts";
import { dryAlong, stepsInRow } from "../drying/dryAlong.ts";
import type { DryStep } from "../drying/dryStep.ts";
import { requirePositive, requireWithin } from "../stats/range.ts";
import type { ReadySpread } from "../stats/spread.ts";

/** The model's answers over the unknown factor on this coat's time, as a grid in its logarithm. */
export type FactorCurves = {
  /** Evenly spaced, rising. */
  readonly lnFactors: readonly number[];
  /** Logarithm of what is believed of each before any evidence, up to a constant. */
  readonly logPrior: readonly number[];
  /** Times since the coat went on, s, rising. */
  readonly timesS: readonly number[];
  /** Water left as a share of the starting water: `shares[time][factor]`. */
  readonly shares: readonly (readonly number[])[];
};

/** Grid points and reach, standard deviations of the prior: sums over a bell curve so cut are exact to 1e-4. */
const points = 161;
const reachSd = 4;

/**
 * Dries a coat by each factor of the grid and keeps the water at each of `timesS`.
 *
 * `steps` are the stretches of air since the coat went on (`dryStep`), read once for all factors; a time past
 * their end keeps the last water. The prior is the lognormal one of `spread`.
 */
export function factorCurves({
  coat,
  steps,
  timesS,
  spread,
}: {
  readonly coat: WetLayer;
  readonly steps: readonly DryStep[];
  readonly timesS: readonly number[];
  readonly spread: ReadySpread;
}): FactorCurves {
  requireCoat(coat);
  for (const afterS of timesS) requireWithin("timesS", afterS, { low: 0, high: 1e10, unit: "s" });
  requirePositive("spread.likely", spread.likely, { high: 1e4, unit: "" });
  requireWithin("spread.sigmaLn", spread.sigmaLn, { low: 0, high: 2, unit: "" });
  for (const { durationS } of steps) requireWithin("durationS", durationS, { low: 0, high: 1e10, unit: "s" });
  const z = Array.from({ length: points }, (_, i) => reachSd * ((2 * i) / (points - 1) - 1));
  // A prior of no width still needs a grid; a thousandth is no width to anyone.
  const sigma = Math.max(1e-3, spread.sigmaLn);
  const lnFactors = z.map((one) => Math.log(spread.likely) + sigma * one);
  const ordered = [...new Set(timesS)].toSorted((a, b) => a - b);
  const startKgM2 = coat.waterKgM2;
  const courses = lnFactors.map((ln): DryCourse => ({
    factor: Math.exp(ln),
    waterKgM2: startKgM2,
    readyAt: null,
    isFrozen: false,
  }));
  const shares = cutAt(steps, ordered).map((stretch) => {
    dryAlong(courses, { coat, air: stepsInRow(stretch) });
    return courses.map(({ waterKgM2 }) => (startKgM2 > 0 ? waterKgM2 / startKgM2 : 0));
  });
  return { lnFactors, logPrior: z.map((one) => -0.5 * one * one), timesS: ordered, shares };
}

/** The steps up to each time, from the one before; a step across a time is cut there, which changes nothing. */
function cutAt(steps: readonly DryStep[], timesS: readonly number[]): readonly (readonly DryStep[])[] {
  let i = 0;
  let usedS = 0;
  let atS = 0;
  return timesS.map((untilS) => {
    const stretch: DryStep[] = [];
    for (;;) {
      const step = steps[i];
      if (step === undefined || atS >= untilS) return stretch;
      const [restS, wantedS] = [step.durationS - usedS, untilS - atS];
      if (restS > wantedS) {
        stretch.push({ ...step, durationS: wantedS });
        usedS += wantedS;
        atS = untilS;
        return stretch;
      }
      // The rest of a step ends it, whatever its parts round to: the air after it still counts.
      if (restS > 0) stretch.push({ ...step, durationS: restS });
      atS += restS;
      i += 1;
      usedS = 0;
    }
  });
}

/** The shares at a time of the curves; refuses a time they were not asked for. */
export function sharesAt({ timesS, shares }: FactorCurves, afterS: number): readonly number[] {
  const row = shares[timesS.indexOf(afterS)];
  if (row === undefined)
    throw new RangeError(`curves must hold the time ${afterS} s, found ${timesS.join()}`);
  for (const share of row)
    if (!(share >= 0 && share <= 1e15)) requireWithin("share", share, { low: 0, high: 1e15, unit: "" });
  return row;
}
