import { factorCurves } from "../../physics/evidence/factorCurves.ts";
import type { DryStep } from "../../physics/drying/dryStep.ts";
import type { ReadySpread } from "../../physics/stats/spread.ts";
import { indexedCoat } from "../../physics/evidence/surfaceEvidence.ts";
import type { Conflict } from "../../physics/evidence/waterPosterior.ts";
import { waterPosterior } from "../../physics/evidence/waterPosterior.ts";
import { readObservations } from "./coatShares.ts";
import type { CoatSpan, UsedObservation, UnusedObservation } from "./coatSpan.ts";
import { walkAir } from "../air/hanging.ts";
import { airGrounds } from "../air/airGrounds.ts";
import { remembered } from "../log/memo.ts";
import type { DryingMemory } from "./dryingMemory.ts";

/** What was seen of a coat and its sum, put together. */
export type SpanBelief = {
  /** The coat's own factors on time, for drying it on: in place of the spread before anything was seen. */
  readonly spread: ReadySpread;
  readonly heard: readonly UsedObservation[];
  readonly unheard: readonly UnusedObservation[];
  /** Observations that do not go with the rest, as of the last of them. */
  readonly conflicts: readonly (Conflict & { readonly seenId: string })[];
};

/**
 * The belief that the observations of a span leave of the coat's factor on time; null where none speaks.
 */
export function spanBelief(
  span: CoatSpan,
  { prior, id, memory }: { prior: ReadySpread; id: string; memory: DryingMemory | null },
): SpanBelief | null {
  if (span.seen.length === 0) return null;
  const lastAt = span.seen.reduce((last, { at }) => Math.max(last, at), span.from);
  const make = (): { readonly belief: SpanBelief | null } => ({ belief: believe(span, prior, lastAt) });
  if (memory === null) return make().belief;
  const grounds = [
    ...memory.rest,
    prior.likely,
    prior.sigmaLn,
    span.wet.waterKgM2,
    span.wet.criticalKgM2,
    span.from,
    span.seen.length,
    span.weights.dryG,
    span.weights.waterFraction,
    ...airGrounds(span.stays, { from: span.from, until: lastAt, isWhole: false }),
  ];
  return remembered<ReturnType<typeof make>>({ memo: memory.memo, kind: "belief", id }, grounds, make).belief;
}

function believe(span: CoatSpan, prior: ReadySpread, lastAt: number): SpanBelief | null {
  const { heard, unheard } = readObservations(span);
  const evidence = heard.map((one) => one.evidence);
  const steps = stepsSince(span, lastAt);
  if (evidence.length === 0 || steps === null) return null;
  const nowS = (lastAt - span.from) / 1000;
  const timesS = [
    nowS,
    ...evidence.flatMap(({ afterS, sinceS }) => (sinceS === null ? [afterS] : [afterS, sinceS])),
  ];
  const { readyShare } = indexedCoat(span.wet, 0);
  const curves = factorCurves({ coat: span.wet, steps, timesS, spread: prior });
  const { spread, modelSpread, conflicts, pulls } = waterPosterior({ curves, evidence, nowS, readyShare });
  // Moved by what the evidence moves on the grid: where it moves nothing the prior stays to its last digit.
  const moved = (guess: "early" | "likely" | "late"): number =>
    prior[guess] * (spread[guess] / modelSpread[guess]);
  return {
    spread: { early: moved("early"), likely: moved("likely"), late: moved("late"), sigmaLn: spread.sigmaLn },
    heard,
    unheard,
    conflicts: conflicts.map((conflict) => {
      const place = pulls.findIndex(
        ({ source, afterS, apart }) =>
          source === conflict.source && afterS === conflict.afterS && apart === conflict.apart,
      );
      return { ...conflict, seenId: heard[place]?.seen.id ?? "" };
    }),
  };
}

/** The stretches of air from the dip to a time. Null where the time has not moved on to any. */
export function stepsSince(
  { stays, from }: Pick<CoatSpan, "stays" | "from">,
  to: number,
): readonly DryStep[] | null {
  const steps: DryStep[] = [];
  walkAir(stays, { from, to }, (step) => {
    steps.push(step);
    return true;
  });
  return steps.length === 0 && to > from ? null : steps;
}
