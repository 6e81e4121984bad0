import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import { plannedC, scheduleCurve } from "../../physics/heat/firingSegments.ts";
import type { RunStanding } from "./runStanding.ts";

/**
 * A last reading this far, K, from what the plan had at that moment says that the kiln is not on its plan, and the plan
 * not where it has gone since. Half an hour of a slope of 100 K/h, and two taps of a key of 25: judgement.
 */
export const offPlanK = 50;

/** What the kiln is likely to show now. */
export type ExpectedReading = {
  /** °C: the last reading carried along the plan; null where there is none, or where it was far off the plan. */
  readonly kilnC: number | null;
  readonly why: "carried" | "unread" | "off-plan";
  /** Where the keys begin, °C: the expected, else the last reading, else the kiln at the start. */
  readonly fromC: number;
};

/** What a reading's keys begin from: always the last reading, never the plan alone, which knows nothing of the kiln. */
export function expectedReading({ run, judged }: RunStanding): ExpectedReading {
  const { startC, startedAt } = run;
  const { lastReading: last, position, nowMin } = judged;
  if (last === null) return { kilnC: null, why: "unread", fromC: startC };
  const curve = scheduleCurve(run.segments, startC);
  const planC = (minute: number): number => plannedC(curve, { minute, startC });
  if (Math.abs(last.kilnC - planC((last.at - startedAt) / minuteMs)) > offPlanK)
    return { kilnC: null, why: "off-plan", fromC: last.kilnC };
  const kilnC = last.kilnC + planC(nowMin) - planC(position.planMin);
  return { kilnC, why: "carried", fromC: kilnC };
}
