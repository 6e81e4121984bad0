import type { InstructionCode, Reason, Segment } from "../../physics/heat/firingSegments.ts";
import { plannedC, scheduleCurve } from "../../physics/heat/firingSegments.ts";
import type { KilnRun, RunJudgement } from "../../physics/heat/kilnRun.ts";
import { judgeRun } from "../../physics/heat/kilnRun.ts";
import type { RunSegment } from "../entries/fireBodies.ts";
import type { Run } from "./fireStates.ts";
import { ranges } from "../entries/ranges.ts";
import { runLimits } from "./runBasis.ts";
import { soundRun } from "./soundRun.ts";

const instructionCodes: readonly InstructionCode[] = [
  "extraction-on",
  "openings-checked",
  "cup-down",
  "pan-outside",
  "tray-in",
  "tray-out",
  "load-hot",
  "vents-open",
  "drain-watched",
  "carbon-checked",
  "inspect-cold",
  "keep-hot",
];

const within = ({ low, high }: { readonly low: number; readonly high: number }, value: number): number =>
  Math.min(high, Math.max(low, value));

/** A plan as the log keeps it: each slope and hold with the code of what binds it, within the log's ranges. */
export function loggedSegments(segments: readonly Segment[]): readonly RunSegment[] {
  return segments.map((part): RunSegment => {
    const reason = part.reasons[0]?.code;
    switch (part.kind) {
      case "ramp": {
        const rateKPerH = within(ranges.rateKPerH, part.rateKPerH);
        return { kind: "ramp", toC: part.toC, rateKPerH, ...(reason && { reason }) };
      }
      case "hold":
        return { kind: "hold", atC: part.atC, minutes: part.minutes, ...(reason && { reason }) };
      case "instruction":
        return {
          kind: "instruction",
          code: part.code,
          ...(part.minutes === undefined ? {} : { minutes: part.minutes }),
        };
    }
  });
}

/** A logged plan as physics reads it, place for place; an instruction of an unknown kind is the time it takes. */
export function plannedSegments(segments: readonly RunSegment[]): readonly Segment[] {
  let atC = 20;
  return segments.map((part): Segment => {
    if (part.kind === "instruction") {
      const code = instructionCodes.find((one) => one === part.code);
      const { minutes } = part;
      return code === undefined
        ? { kind: "hold", atC, minutes: minutes ?? 0, reasons: [] }
        : { kind: "instruction", code, minutes, reasons: [] };
    }
    const { reason, ...same } = part;
    atC = same.kind === "ramp" ? same.toC : same.atC;
    return {
      ...same,
      reasons: reason === undefined ? [] : [{ code: reason as Reason["code"], figures: {} }],
    };
  });
}

/** What has been ticked, by its place in the plan as it is now: a changed plan has its steps elsewhere. */
export function ticksOf(
  { stepsDone }: Pick<Run, "stepsDone">,
  segments: readonly Segment[],
): KilnRun["ticked"] {
  const taken = new Set<number>();
  return stepsDone.flatMap(({ at, code, segment }) => {
    const isIt = (place: number): boolean => {
      const part = segments[place];
      return part?.kind === "instruction" && part.code === code && !taken.has(place);
    };
    const found = isIt(segment) ? segment : segments.findIndex((_, place) => isIt(place));
    if (found === -1) return [];
    taken.add(found);
    return [{ segment: found, at }];
  });
}

export type RunStanding = {
  readonly run: KilnRun;
  readonly judged: RunJudgement;
};

/** Limits of a plan that does not say what it was made for: none, so only its time can be judged. */
const noLimits: KilnRun["limits"] = {
  rates: [],
  steamHold: null,
  drain: null,
  finish: null,
  pattern: null,
  tray: null,
  loadsHot: false,
  kiln: { powerKW: 1, maxC: 1800, volumeL: 1 },
  loadKg: 0,
};

/** A started run at `now`, epoch ms; null while it has not been started. After its end it stands as it ended. What no kiln could have is left out. */
export function runStanding(told: Run, now: number): RunStanding | null {
  const run = soundRun(told);
  if (run.startedAt === null) return null;
  const segments = plannedSegments(run.segments);
  const kilnRun: KilnRun = {
    segments,
    limits: runLimits(run.plan) ?? noLimits,
    startC: run.startedC ?? run.plan.startC,
    startedAt: run.startedAt,
    readings: run.readings,
    ticked: ticksOf(run, segments),
  };
  return { run: kilnRun, judged: judgeRun(kilnRun, Math.min(now, run.ended?.at ?? now)) };
}

/**
 * The plan with what remains moved to where the run is: it had come to `planMin` of its plan when `elapsedMin` of the
 * clock were gone. The step it is in is stretched or shortened so that it is there now; nothing after it changes.
 * Null where that can't be: a step can't have taken less than no time.
 */
export function shiftedPlan(
  segments: readonly Segment[],
  {
    startC,
    planMin,
    elapsedMin,
  }: { readonly startC: number; readonly planMin: number; readonly elapsedMin: number },
): readonly Segment[] | null {
  const curve = scheduleCurve(segments, startC);
  const stretch = curve.find(({ endMin }) => endMin > planMin);
  const part = segments[stretch?.segment ?? -1];
  if (stretch === undefined || part === undefined) return null;
  const tookMin = elapsedMin - stretch.startMin;
  if (!(tookMin > 0.01)) return null;
  const before = segments.slice(0, stretch.segment);
  const after = segments.slice(stretch.segment + 1);
  if (part.kind !== "ramp") {
    const minutes = tookMin + (stretch.endMin - planMin);
    return [...before, { ...part, minutes: Math.round(minutes * 10) / 10 }, ...after];
  }
  const atC = Math.round(plannedC(curve, { minute: planMin, startC }));
  const done = Math.abs(atC - stretch.fromC);
  if (done < 1) return [...before, { kind: "hold", atC, minutes: tookMin, reasons: [] }, part, ...after];
  const rateKPerH = (done / tookMin) * 60;
  if (rateKPerH < ranges.rateKPerH.low || rateKPerH > ranges.rateKPerH.high) return null;
  return [...before, { ...part, toC: atC, rateKPerH, reasons: [] }, part, ...after];
}
