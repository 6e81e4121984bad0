import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import type { RunStanding } from "../../../logbook/fire/runStanding.ts";
import type { InstructionCode } from "../../../physics/heat/firingSegments.ts";
import { scheduleCurve } from "../../../physics/heat/firingSegments.ts";

/** Something to do at the kiln and when the plan wants it from where the run is; epoch ms. */
export type StepDue = {
  /** The same for the same step of the same run, however often its time is reckoned anew. */
  readonly id: string;
  readonly segment: number;
  readonly code: InstructionCode;
  readonly dueMs: number;
};

/** The instructions of a run that nobody ticked, each with its time from where the run is now. */
export function stepDues(runId: string, { run, judged }: RunStanding, now: number): readonly StepDue[] {
  const ticked = new Set(run.ticked.map(({ segment }) => segment));
  return scheduleCurve(run.segments, run.startC).flatMap(({ segment, startMin }) => {
    const part = run.segments[segment];
    if (part?.kind !== "instruction" || ticked.has(segment)) return [];
    const dueMs = now + (startMin - judged.nowMin) * minuteMs;
    return [{ id: `${runId}-${part.code}-${segment}`, segment, code: part.code, dueMs }];
  });
}
