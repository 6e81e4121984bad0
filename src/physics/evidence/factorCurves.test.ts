import * as fc from "fast-check";
import { expect, test } from "vitest";
import truth from "../../../tests/truth/drying.json" with { type: "json" };
import { dryStep } from "../drying/dryStep.ts";
import { factorCurves, sharesAt } from "./factorCurves.ts";
import { readySpread } from "../stats/spread.ts";

const coat = truth.coats.backup;
const air = { tempC: 22, rh: 0.5, pressurePa: 101_325 };
const stepOf = (durationS: number) => dryStep({ ...air, durationS }, { filmWM2K: 15, pocketSM: 0 });
const curvesOf = (durations: readonly number[], timesS: readonly number[]) =>
  factorCurves({ coat, steps: durations.map(stepOf), timesS, spread: readySpread() });
const expectSame = (one: readonly number[], other: readonly number[]): void => {
  for (const [f, share] of one.entries()) expect(share).toBeCloseTo(other[f] ?? NaN, 9);
};

// 48.9 s and the rest of this step add up to a hair less than the whole of it.
test("air after a stretch counts, though the stretch was cut and its parts round to less than it", () => {
  const day = [371.1111123046875, 1735.5555555555554, 53.33333203125];
  expectSame(sharesAt(curvesOf(day, [420, 2160]), 2160), sharesAt(curvesOf(day, [2160]), 2160));
});

test("asking for a further time changes the water left at no other", () =>
  fc.assert(
    fc.property(
      fc.array(
        fc.integer({ min: 1, max: 64_800 }).map((ninths) => ninths / 9),
        { minLength: 1, maxLength: 8 },
      ),
      fc.array(
        fc.integer({ min: 0, max: 1100 }).map((mille) => mille / 1000),
        { minLength: 1, maxLength: 6 },
      ),
      (durations, places) => {
        const wholeS = durations.reduce((sum, one) => sum + one, 0);
        const timesS = places.map((place) => place * wholeS);
        const together = curvesOf(durations, timesS);
        for (const timeS of timesS)
          expectSame(sharesAt(together, timeS), sharesAt(curvesOf(durations, [timeS]), timeS));
      },
    ),
    { numRuns: 200 },
  ));
