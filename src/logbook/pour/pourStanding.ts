import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import {
  planPour,
  type PourPlan,
  type PourTrack as DayTrack,
  type StepDone,
} from "../../physics/metal/pourDay.ts";
import type { Pour, Run } from "../fire/fireStates.ts";
import { dayTracks } from "./pourSteps.ts";
import { runStanding } from "../fire/runStanding.ts";

/** What a kiln run or a melt says of a step by itself: epoch ms. */
export type Sensed = {
  readonly step: string;
  readonly startedAt: number;
  /** When it is now expected to be through. */
  readonly endsAt: number | null;
  readonly doneAt: number | null;
};

export type PourStanding = {
  readonly plan: PourPlan;
  readonly tracks: readonly DayTrack[];
  /** Steps whose times come from their own run or melt, not from a mark. */
  readonly sensed: ReadonlySet<string>;
};

/**
 * A pour day at `now`: marks first, then what its run and its melt say, then the plan. Once metal moves, nothing is
 * planned any further: it stands as it did then.
 */
export function pourStanding(
  pour: Pick<Pour, "plan" | "steps" | "marks">,
  {
    now,
    people,
    sensed,
  }: { readonly now: number; readonly people: number; readonly sensed: readonly Sensed[] },
): PourStanding {
  const marked = new Set(pour.marks.map(({ step }) => step));
  const heard = sensed.filter(({ step }) => !marked.has(step) && pour.steps.some(({ id }) => id === step));
  const tracks = dayTracks(pour.steps).map((track) => ({
    ...track,
    steps: track.steps.map((step) => {
      const told = heard.find((one) => one.step === step.id);
      if (told === undefined || told.endsAt === null || told.doneAt !== null) return step;
      const minutes = (told.endsAt - told.startedAt) / minuteMs;
      return { ...step, durationMin: Math.min(10_000, Math.max(0, minutes)) };
    }),
  }));
  const trackOf = (step: string): string => pour.steps.find(({ id }) => id === step)?.track ?? "people";
  const done: readonly StepDone[] = [
    ...heard.map((told): StepDone => ({
      track: trackOf(told.step),
      step: told.step,
      startedAt: told.startedAt,
      doneAt: told.doneAt ?? undefined,
    })),
    ...pour.marks.map((mark): StepDone => ({
      track: trackOf(mark.step),
      step: mark.step,
      ...(mark.state === "done" ? { doneAt: mark.at } : { startedAt: mark.at }),
    })),
  ];
  return {
    plan: planPour({ pourAt: pour.plan.pourAt, tracks, done, now, people }),
    tracks,
    sensed: new Set(heard.map(({ step }) => step)),
  };
}

/** What a started kiln run says of the shell's preheat; null before its start. */
export function sensedRun(run: Run, now: number): Sensed | null {
  const standing = runStanding(run, now);
  if (run.startedAt === null || standing === null) return null;
  return {
    step: "shell-preheated",
    startedAt: run.startedAt,
    endsAt: standing.judged.endsAt,
    doneAt: run.ended?.result === "done" ? run.ended.at : null,
  };
}
