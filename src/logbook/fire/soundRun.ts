import type { RunSegment } from "../entries/fireBodies.ts";
import type { Run } from "./fireStates.ts";
import { ranges, within } from "../entries/ranges.ts";

/** What a run's sums take where its plan says nothing they can: a room's temperature. */
const roomC = 20;

/**
 * The run without readings and steps no kiln could have: what its sums take. A step left out stays as a step of no
 * time, so that the places of the others, by which they are ticked, stay theirs.
 */
export function soundRun(run: Run): Run {
  const { plan, startedC, readings } = run;
  return {
    ...run,
    plan: { ...plan, startC: within(ranges.kilnC, plan.startC) ? plan.startC : roomC },
    startedC: within(ranges.kilnC, startedC) ? startedC : null,
    readings: readings.every(isHeard) ? readings : readings.filter(isHeard),
    segments: run.segments.every(isSound) ? run.segments : run.segments.map(soundSegment),
  };
}

const isHeard = ({ kilnC }: { readonly kilnC: number }): boolean => within(ranges.kilnC, kilnC);

function isSound(part: RunSegment): boolean {
  switch (part.kind) {
    case "ramp":
      return within(ranges.kilnC, part.toC) && within(ranges.rateKPerH, part.rateKPerH);
    case "hold":
      return within(ranges.kilnC, part.atC) && within(ranges.segmentMin, part.minutes);
    case "instruction":
      return part.minutes === undefined || within(ranges.segmentMin, part.minutes);
  }
}

const soundSegment = (part: RunSegment): RunSegment =>
  isSound(part)
    ? part
    : part.kind === "instruction"
      ? { ...part, minutes: 0 }
      : { kind: "hold", atC: roomC, minutes: 0 };
