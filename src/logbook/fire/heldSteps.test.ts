import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import { expect, test } from "vitest";
import { monday } from "../../../tests/logs/testLog.ts";
import type { Segment } from "../../physics/heat/firingSegments.ts";
import { heldSteps } from "./heldSteps.ts";

const hold = (atC: number, minutes: number): Segment => ({ kind: "hold", atC, minutes, reasons: [] });
const ramp = (toC: number): Segment => ({ kind: "ramp", toC, rateKPerH: 200, reasons: [] });
const read = (...all: readonly (readonly [minute: number, kilnC: number])[]) =>
  all.map(([minute, kilnC]) => ({ at: monday + minute * minuteMs, kilnC }));

test("a hold was held for the minutes its readings lie within 15 K of it", () => {
  const readings = read([0, 20], [60, 320], [100, 330], [160, 870], [190, 860], [250, 400]);
  const [low, high] = heldSteps({ segments: [ramp(320), hold(320, 60), ramp(870), hold(870, 45)], readings });
  // Up: the last 15 of 300 K in 60 min; level: all of 40 min; on: 5 of 540 K in 60 min.
  expect(low).toMatchObject({ segment: 1, askedMin: 60 });
  expect(low?.heldMin).toBeCloseTo(3 + 40 + 5 / 9, 6);
  // Up: the last 15 of 540 K; level 30 min; down: 5 of 460 K.
  expect(high?.heldMin).toBeCloseTo(15 / 9 + 30 + (5 / 460) * 60, 6);
});

test("holds at one heat share its minutes and what they ask for; without readings nothing is said", () => {
  const segments = [ramp(870), hold(870, 45), hold(870, 15)];
  const held = heldSteps({ segments, readings: read([0, 870], [50, 870]) });
  expect(held.map(({ heldMin, askedMin }) => [heldMin, askedMin])).toEqual([
    [50, 60],
    [50, 60],
  ]);
  expect(heldSteps({ segments, readings: [] })).toEqual([]);
});
