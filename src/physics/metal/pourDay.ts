import { requireMoment, requireWithin } from "../stats/range.ts";
import { minuteMs } from "../stats/time.ts";

/** How something that is ready waits for the pour. */
export type HoldAs = "keep-in-kiln" | "keep-sand-hot" | "hold-metal-skim" | "keep-hot" | "stand-ready";

export type PourStep = {
  readonly id: string;
  readonly durationMin: number;
  /** How long its work stays good afterwards, min; null for as long as one likes. */
  readonly maxHoldMin: number | null;
  readonly holdAs: HoldAs;
  /** People it keeps busy; 0 where it runs by itself. */
  readonly people?: number | undefined;
  /** Tools or places that one step alone can have. */
  readonly uses?: readonly string[] | undefined;
};

/** Steps one after the other whose end meets the pour. */
export type PourTrack = { readonly id: string; readonly steps: readonly PourStep[] };

/** What has happened to a step; times epoch ms. */
export type StepDone = {
  readonly track: string;
  readonly step: string;
  readonly startedAt?: number | undefined;
  readonly doneAt?: number | undefined;
};

export type PlannedStep = {
  readonly id: string;
  readonly state: "waiting" | "running" | "done";
  readonly startAt: number;
  readonly endAt: number;
  /** Earliest start whose work would still be good at the pour; null where it keeps for ever. */
  readonly earliestAt: number | null;
};

export type PlannedTrack = {
  readonly id: string;
  readonly steps: readonly PlannedStep[];
  /** When it could be ready if everything went on at once. */
  readonly readyAt: number;
  /** Minutes it could still lose without moving the pour. */
  readonly slackMin: number;
};

export type HoldAdvice = {
  readonly track: string;
  readonly step: string;
  /** `again`: it would wait longer than it keeps, so the step is to be done again, from `startAt`. */
  readonly kind: "hold" | "again";
  readonly holdAs: HoldAs;
  readonly fromAt: number;
  readonly untilAt: number;
  readonly minutes: number;
  readonly maxHoldMin: number | null;
  readonly startAt: number | null;
  /** When to skim metal that is held: shortly before it is wanted. */
  readonly skimAt: number | null;
};

export type Clash = {
  /** `people`, or the tool two steps want. */
  readonly what: string;
  readonly fromAt: number;
  readonly untilAt: number;
  readonly steps: readonly { readonly track: string; readonly step: string }[];
};

export type PourPlan = {
  readonly pourAt: number;
  /** Minutes the pour moved from what was wanted. */
  readonly movedMin: number;
  /** The track that moved it. */
  readonly lateTrack: string | null;
  readonly startsAt: number;
  readonly tracks: readonly PlannedTrack[];
  readonly advice: readonly HoldAdvice[];
  readonly clashes: readonly Clash[];
};

/** Metal is skimmed this long before it is poured, min (common practice, no source). */
const skimBeforeMin = 3;

/**
 * A pour day from its end: every track's last step ends at the pour. With `done` and `now` it is planned
 * again: the pour moves no further than the latest track needs, what has not begun begins later, and what is
 * ready too soon gets advice on how long to hold. Minutes 0–10 000 a step; step ids are unique in a track.
 */
export function planPour({
  pourAt,
  tracks,
  done = [],
  now,
  people = 1,
}: {
  pourAt: number;
  tracks: readonly PourTrack[];
  done?: readonly StepDone[] | undefined;
  /** Null while it is only a plan. */
  now: number | null;
  people?: number | undefined;
}): PourPlan {
  for (const step of tracks.flatMap(({ steps }) => steps)) {
    requireWithin("durationMin", step.durationMin, { low: 0, high: 10_000, unit: "min" });
    requireWithin("maxHoldMin", step.maxHoldMin ?? 0, { low: 0, high: 1e9, unit: "min" });
    requireWithin("people", step.people ?? 0, { low: 0, high: 1000, unit: "" });
  }
  requireMoment("pourAt", pourAt);
  if (now !== null) requireMoment("now", now);
  for (const { startedAt, doneAt } of done) {
    if (startedAt !== undefined) requireMoment("startedAt", startedAt);
    if (doneAt !== undefined) requireMoment("doneAt", doneAt);
  }
  requireWithin("people", people, { low: 0, high: 1000, unit: "" });
  const soonest = tracks.map((track) => asSoonAsCan(track, { done, now }));
  const readyAts = soonest.map((steps) => steps.at(-1)?.endAt ?? -Infinity);
  const latest = Math.max(pourAt, now ?? -Infinity, ...(now === null ? [] : readyAts));
  const planned = tracks.map((track, i) => backFrom(latest, { track, soonest: soonest[i] ?? [] }));
  const starts = planned.flatMap(({ steps }) => steps.map(({ startAt }) => startAt));
  return {
    pourAt: latest,
    movedMin: (latest - pourAt) / minuteMs,
    lateTrack: latest > pourAt ? (tracks[readyAts.indexOf(latest)]?.id ?? null) : null,
    startsAt: Math.min(latest, ...starts),
    tracks: planned.map((track, i) => {
      const readyAt = now === null ? latest : (readyAts[i] ?? latest);
      return { ...track, readyAt, slackMin: (latest - readyAt) / minuteMs };
    }),
    advice:
      now === null
        ? []
        : tracks.flatMap((track, i) => holds(track, { planned: planned[i], pourAt: latest, now })),
    clashes: clashesOf({ tracks, planned, people }),
  };
}

type Soon = { readonly state: PlannedStep["state"]; readonly startAt: number; readonly endAt: number };

function asSoonAsCan(
  { id: track, steps }: PourTrack,
  { done, now }: { done: readonly StepDone[]; now: number | null },
): readonly Soon[] {
  const told = steps.map(({ id }) => toldOf(done.filter((one) => one.track === track && one.step === id)));
  const lastTold = told.findLastIndex((one) => one.startedAt !== undefined || one.doneAt !== undefined);
  const soon: Soon[] = [];
  let freeAt = now ?? 0;
  for (const [i, { durationMin }] of steps.entries()) {
    const length = durationMin * minuteMs;
    const { startedAt, doneAt } = told[i] ?? {};
    if (doneAt !== undefined)
      soon.push({ state: "done", startAt: Math.min(doneAt, startedAt ?? doneAt - length), endAt: doneAt });
    else if (i < lastTold) {
      // A later step began, so this one must have ended, though nobody told.
      const next = told.slice(i + 1).find((one) => one.startedAt !== undefined || one.doneAt !== undefined);
      const endAt = next?.startedAt ?? next?.doneAt ?? freeAt;
      soon.push({ state: "done", startAt: startedAt ?? endAt - length, endAt });
    } else if (startedAt !== undefined)
      soon.push({ state: "running", startAt: startedAt, endAt: Math.max(startedAt + length, now ?? 0) });
    else {
      const startAt = Math.max(freeAt, now ?? 0);
      soon.push({ state: "waiting", startAt, endAt: startAt + length });
    }
    freeAt = soon.at(-1)?.endAt ?? freeAt;
  }
  return soon;
}

/** What the lines on one step come to: the last of each wins, and a start after an end is the step done again. */
function toldOf(lines: readonly StepDone[]): Pick<StepDone, "startedAt" | "doneAt"> {
  const startedAt = lines.findLast((line) => line.startedAt !== undefined)?.startedAt;
  const doneAt = lines.findLast((line) => line.doneAt !== undefined)?.doneAt;
  const isAgain = startedAt !== undefined && doneAt !== undefined && startedAt > doneAt;
  return { startedAt, doneAt: isAgain ? undefined : doneAt };
}

/** Steps that have not begun, as late as they can; the others as they were. */
function backFrom(
  pourAt: number,
  { track, soonest }: { track: PourTrack; soonest: readonly Soon[] },
): { readonly id: string; readonly steps: readonly PlannedStep[] } {
  const steps: PlannedStep[] = [];
  let nextAt = pourAt;
  let nextEarliestAt: number | null = pourAt;
  for (let i = track.steps.length - 1; i >= 0; i--) {
    const step = track.steps[i]!;
    const soon = soonest[i]!;
    const length = step.durationMin * minuteMs;
    const endAt = soon.state === "waiting" ? nextAt : soon.endAt;
    const startAt = soon.state === "waiting" ? nextAt - length : soon.startAt;
    const earliestAt: number | null =
      nextEarliestAt === null || step.maxHoldMin === null
        ? null
        : nextEarliestAt - (step.maxHoldMin + step.durationMin) * minuteMs;
    steps.unshift({ id: step.id, state: soon.state, startAt, endAt, earliestAt });
    nextAt = startAt;
    nextEarliestAt = earliestAt;
  }
  return { id: track.id, steps };
}

function holds(
  { id: track, steps }: PourTrack,
  {
    planned,
    pourAt,
    now,
  }: { planned: { readonly steps: readonly PlannedStep[] } | undefined; pourAt: number; now: number },
): readonly HoldAdvice[] {
  return steps.flatMap((step, i): readonly HoldAdvice[] => {
    const here = planned?.steps[i];
    const next = planned?.steps[i + 1];
    if (here === undefined || here.state === "waiting" || (next !== undefined && next.state !== "waiting"))
      return [];
    const untilAt = next?.startAt ?? pourAt;
    const minutes = (untilAt - here.endAt) / minuteMs;
    if (minutes < 0.5 || untilAt <= now) return [];
    const isTooLong = step.maxHoldMin !== null && minutes > step.maxHoldMin;
    return [
      {
        track,
        step: step.id,
        kind: isTooLong ? "again" : "hold",
        holdAs: step.holdAs,
        fromAt: here.endAt,
        untilAt,
        minutes,
        maxHoldMin: step.maxHoldMin,
        startAt: isTooLong ? Math.max(now, untilAt - step.durationMin * minuteMs) : null,
        skimAt: step.holdAs === "hold-metal-skim" ? Math.max(now, untilAt - skimBeforeMin * minuteMs) : null,
      },
    ];
  });
}

/** Times at which steps that are not done want more people than there are, or one tool twice. */
function clashesOf({
  tracks,
  planned,
  people,
}: {
  tracks: readonly PourTrack[];
  planned: readonly { readonly steps: readonly PlannedStep[] }[];
  people: number;
}): readonly Clash[] {
  const busy = tracks.flatMap((track, t) =>
    track.steps.flatMap((step, s) => {
      const at = planned[t]?.steps[s];
      return at === undefined || at.state === "done" ? [] : [{ track: track.id, step, at }];
    }),
  );
  const whats = ["people", ...new Set(busy.flatMap(({ step }) => step.uses ?? []))];
  const edges = [...new Set(busy.flatMap(({ at }) => [at.startAt, at.endAt]))].sort((a, b) => a - b);
  return whats.flatMap((what) => {
    const found: Clash[] = [];
    for (const [i, fromAt] of edges.entries()) {
      const untilAt = edges[i + 1];
      if (untilAt === undefined) continue;
      const there = busy.filter(
        ({ step, at }) =>
          at.startAt < untilAt &&
          at.endAt > fromAt &&
          (what === "people" ? (step.people ?? 0) > 0 : step.uses?.includes(what) === true),
      );
      const wanted = there.reduce((sum, { step }) => sum + (what === "people" ? (step.people ?? 0) : 1), 0);
      if (wanted <= (what === "people" ? people : 1)) continue;
      const steps = there.map(({ track, step }) => ({ track, step: step.id }));
      const before = found.at(-1);
      if (before?.untilAt === fromAt && before.steps.map(keyOf).join() === steps.map(keyOf).join())
        found[found.length - 1] = { ...before, untilAt };
      else found.push({ what, fromAt, untilAt, steps });
    }
    return found;
  });
}

const keyOf = ({ track, step }: { track: string; step: string }): string => `${track}/${step}`;
