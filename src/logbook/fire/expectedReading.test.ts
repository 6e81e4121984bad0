import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { monday } from "../../../tests/logs/testLog.ts";
import { streamLog } from "../../../tests/logs/testStreamLog.ts";
import { expectedReading, offPlanK } from "./expectedReading.ts";
import { foldRun } from "./foldRun.ts";
import { runStanding } from "./runStanding.ts";

/** 20 °C to 320 °C at 100 K/h, an hour there, then on. Readings in minutes and °C; asked at `nowMin`. */
function expectedAt(nowMin: number, read: readonly (readonly [minute: number, kilnC: number])[]) {
  const log = streamLog("run/r");
  const segments = [
    { kind: "ramp", toC: 320, rateKPerH: 100 },
    { kind: "hold", atC: 320, minutes: 60 },
    { kind: "ramp", toC: 870, rateKPerH: 200 },
  ] as const;
  log.tell("run-planned", { kilnId: null, purpose: "firing", pieceIds: [], startC: 20, segments }, monday);
  log.tell("run-started", { kilnC: 20 }, monday);
  for (const [minute, kilnC] of read) log.tell("run-read", { kilnC }, monday + minute * minuteMs);
  const run = foldRun("r", log.entries());
  const standing = run && runStanding(run, monday + nowMin * minuteMs);
  if (standing === null) throw new Error("no run");
  return expectedReading(standing);
}

describe("what the kiln is likely to show", () => {
  test("is not known before the first reading, whatever the plan has by now", () => {
    expect(expectedAt(150, [])).toEqual({ kilnC: null, why: "unread", fromC: 20 });
  });

  test("is the last reading carried along the plan", () => {
    // Ten kelvin behind at an hour: on its plan it is at 110, and half an hour of 100 K/h later at 160.
    const { kilnC, why } = expectedAt(90, [[60, 110]]);
    expect(why).toBe("carried");
    expect(kilnC).toBeCloseTo(160, 6);
    // The plan's clock alone would say 170.
    expect(kilnC).not.toBeCloseTo(170, 0);
  });

  test("a kiln at 506 °C under a plan of 150 °C is not asked to be at 150 °C: the keys begin from 506 °C", () => {
    expect(expectedAt(79, [[78, 506]])).toEqual({ kilnC: null, why: "off-plan", fromC: 506 });
  });

  test("off the plan begins past 50 K, half an hour of a usual slope", () => {
    expect(offPlanK).toBe(50);
    expect(expectedAt(61, [[60, 120 + offPlanK]]).why).toBe("carried");
    expect(expectedAt(61, [[60, 120 + offPlanK + 1]]).why).toBe("off-plan");
    expect(expectedAt(61, [[60, 120 - offPlanK - 1]]).why).toBe("off-plan");
  });

  test("property: asked at the moment of a reading it is that reading, never the plan's figure", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 400 }), fc.integer({ min: 0, max: 1300 }), (minute, kilnC) => {
        const expected = expectedAt(minute, [[minute, kilnC]]);
        expect(expected.fromC).toBeCloseTo(kilnC, 6);
      }),
    );
  });
});
