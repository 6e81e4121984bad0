import type { FiringLimits } from "./firingLimits.ts";
import type { InstructionCode, Segment, Stretch } from "./firingSegments.ts";
import { plannedC, scheduleCurve } from "./firingSegments.ts";
import type { RunFinding } from "./runFindings.ts";
import { requireMoment, requireWhole } from "../stats/range.ts";
import { runFindings } from "./runFindings.ts";
import type { KilnReading, RunPosition, Ticked } from "./runPosition.ts";
import { orderedReadings, runPosition } from "./runPosition.ts";
import { minuteMs } from "../stats/time.ts";

export type KilnRun = {
  readonly segments: readonly Segment[];
  readonly limits: FiringLimits;
  readonly startC: number;
  /** Epoch ms. */
  readonly startedAt: number;
  readonly readings: readonly KilnReading[];
  readonly ticked: readonly Ticked[];
};

/** The next thing to do, and when the plan wants it from where the run is. */
export type NextStep = {
  readonly segment: number;
  readonly what: InstructionCode | "ramp" | "hold";
  readonly at: number;
};

export type RunJudgement = {
  readonly position: RunPosition;
  /** Minute of the plan it should have come to since. */
  readonly nowMin: number;
  /** Minutes the run is ahead of its plan; below 0 it is behind. Null before the first reading. */
  readonly aheadMin: number | null;
  readonly plannedC: number;
  readonly lastReading: KilnReading | null;
  /** Minutes since the last reading, or since the start. */
  readonly unreadMin: number;
  /** Null once all is done. */
  readonly next: NextStep | null;
  /** Instructions whose time has come and that nobody ticked. */
  readonly waiting: readonly { readonly segment: number; readonly code: InstructionCode }[];
  readonly endsAt: number;
  readonly findings: readonly RunFinding[];
};

/**
 * A run beside its plan at a moment: where it is, what is next, what went wrong. The readings may be few and
 * in any order; those after `now` are left out. It judges what was read and controls nothing.
 */
export function judgeRun(run: KilnRun, now: number): RunJudgement {
  const { segments, limits, startC, startedAt } = run;
  requireMoment("now", now);
  requireMoment("startedAt", startedAt);
  for (const { at, segment } of run.ticked) {
    requireMoment("at of a tick", at);
    requireWhole("segment", segment, { low: 0, high: 1e6 });
  }
  const curve = scheduleCurve(segments, startC);
  const readings = orderedReadings(run.readings, startedAt).filter(({ at }) => at <= now);
  const ticked = run.ticked.filter(({ at }) => at <= now);
  const position = runPosition({ curve, startedAt, readings });
  const lastReading = readings.at(-1) ?? null;
  // Since the last reading the run is taken to have gone on as planned.
  const sinceMin = Math.max(0, (now - position.at) / minuteMs);
  const endMin = curve.at(-1)?.endMin ?? 0;
  const nowMin = Math.min(position.planMin + sinceMin, endMin);
  const clockOf = (planMin: number): number => now + (planMin - nowMin) * minuteMs;
  return {
    position,
    nowMin,
    aheadMin: lastReading === null ? null : position.planMin - (position.at - startedAt) / minuteMs,
    plannedC: plannedC(curve, { minute: (now - startedAt) / minuteMs, startC }),
    lastReading,
    unreadMin: (now - (lastReading?.at ?? startedAt)) / minuteMs,
    next: nextStep({ segments, curve, ticked, nowMin, clockOf }),
    waiting: segments.flatMap((part, segment) =>
      part.kind === "instruction" &&
      (curve[segment]?.startMin ?? Infinity) <= nowMin + 1e-9 &&
      !ticked.some((done) => done.segment === segment)
        ? [{ segment, code: part.code }]
        : [],
    ),
    endsAt: clockOf(endMin),
    findings: runFindings({ segments, limits, readings, ticked, start: { at: startedAt, kilnC: startC } }),
  };
}

function nextStep({
  segments,
  curve,
  ticked,
  nowMin,
  clockOf,
}: {
  segments: readonly Segment[];
  curve: readonly Stretch[];
  ticked: readonly Ticked[];
  nowMin: number;
  clockOf: (planMin: number) => number;
}): NextStep | null {
  for (const { segment, startMin } of curve) {
    const part = segments[segment];
    if (part === undefined || startMin <= nowMin + 1e-9 || ticked.some((done) => done.segment === segment))
      continue;
    return { segment, what: part.kind === "instruction" ? part.code : part.kind, at: clockOf(startMin) };
  }
  return null;
}
