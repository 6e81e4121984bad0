import type { Refusal } from "./command.ts";
import type { Entry, EntryType } from "../entries/entry.ts";
import { parseStream, startOfKind } from "../entries/entryKinds.ts";
import { runSegments } from "../fire/foldRun.ts";
import { untilOf } from "../entries/packed.ts";
import type { ProposedEntry } from "./pieceGuard.ts";
import type { SettledLog } from "./settledLog.ts";

type Fire = "run" | "melt" | "pour";

/** A run and a melt are started on their own, apart from the plan; a pour is under way from its plan on. */
const startOf: Readonly<Record<Fire, EntryType | null>> = {
  run: "run-started",
  melt: "melt-started",
  pour: null,
};
const endOf: Readonly<Record<Fire, EntryType>> = { run: "run-ended", melt: "melt-ended", pour: "pour-ended" };

export const isFire = (kind: string | undefined): kind is Fire =>
  kind !== undefined && Object.hasOwn(endOf, kind);

/** True for the end that puts a plan away before it was started: a run's "stopped", a melt's "dropped". */
const isPuttingAway = ({ type, body }: Pick<Entry, "type" | "body">): boolean =>
  type === "run-ended"
    ? "result" in body && body.result === "stopped"
    : type === "melt-ended" && "dropped" in body && body.dropped === true;

/** True for the entry that sets a run or a melt going. */
export const isSetGoing = (type: EntryType): boolean => type === startOf.run || type === startOf.melt;

type Course = {
  readonly planned: Entry | null;
  readonly started: Entry | null;
  readonly ended: Entry | null;
  /** What may stand only between the start and the end. */
  readonly between: readonly Entry[];
};

/**
 * Why this entry can't be in the log of a run, a melt or a pour: each is planned once, started and ended once and in
 * that order, and read only in between, without a margin; or put away before it was started. `own` is the stream without the entry asked about. Null for
 * what fits, and for other streams.
 */
export function fireFault({ settled: { standing } }: SettledLog, asked: ProposedEntry): Refusal | null {
  const { kind } = parseStream(asked.stream) ?? {};
  if (!isFire(kind)) return null;
  const { type, at } = asked;
  const course = courseOf(kind, standing);
  const { planned, ended } = course;
  if (type === startOfKind[kind]) {
    const first = standing.find((other) => other.type !== type);
    return first && at > first.at ? { code: "out-of-order", at, after: null, before: first.at } : null;
  }
  if (planned && at < planned.at) return { code: "before-start", at, startedAt: planned.at };
  if (type === startOf[kind]) return startFault(course, asked);
  if (type === endOf[kind]) return endFault(course, asked, startOf[kind] !== null);
  if (ended && untilOf(asked) > ended.at) return { code: "already-ended", endedAt: ended.at };
  if (type === "run-changed") return null;
  return placeFault(course, asked, startOf[kind] !== null) ?? referenceFault(standing, course, asked);
}

function courseOf(kind: Fire, standing: readonly Entry[]): Course {
  const find = (type: EntryType | null): Entry | null =>
    standing.find((entry) => entry.type === type) ?? null;
  const around: readonly (EntryType | null)[] = [
    startOfKind[kind],
    startOf[kind],
    endOf[kind],
    "run-changed",
  ];
  return {
    planned: find(startOfKind[kind]),
    started: find(startOf[kind]),
    ended: find(endOf[kind]),
    between: standing.filter(({ type }) => !around.includes(type)),
  };
}

function startFault({ started, ended, between }: Course, { stream, at }: ProposedEntry): Refusal | null {
  if (started) return { code: "already-started", stream };
  // A melt that was put away stays so until that is struck; a run's "stopped" may be that of a start logged late.
  if (ended?.type === "melt-ended" && isPuttingAway(ended))
    return { code: "already-ended", endedAt: ended.at };
  const before = Math.min(ended?.at ?? Infinity, ...between.map((entry) => entry.at));
  return at > before ? { code: "out-of-order", at, after: null, before } : null;
}

function endFault(
  { started, ended, between }: Course,
  asked: ProposedEntry,
  isStarted: boolean,
): Refusal | null {
  const { at, stream } = asked;
  if (ended) return { code: "already-ended", endedAt: ended.at };
  if (isStarted && !started && !isPuttingAway(asked)) return { code: "not-started" };
  if (started && asked.type === "melt-ended" && isPuttingAway(asked))
    return { code: "already-started", stream };
  const after = between.reduce((last, entry) => Math.max(last, untilOf(entry)), started?.at ?? -Infinity);
  return at < after ? { code: "out-of-order", at, after, before: null } : null;
}

function placeFault({ started, ended }: Course, { at }: ProposedEntry, isStarted: boolean): Refusal | null {
  if (!isStarted) return null;
  if (!started) return { code: "not-started" };
  return at < started.at ? { code: "out-of-order", at, after: started.at, before: ended?.at ?? null } : null;
}

/** A step that is marked must be in the plan, as it stood then. */
function referenceFault(
  standing: readonly Entry[],
  { planned }: Course,
  { type, body, at }: ProposedEntry,
): Refusal | null {
  if (type === "run-step-done" && "segment" in body) {
    const asOf = standing.filter((entry) => entry.at <= at);
    const high = runSegments(asOf).length - 1;
    const { segment: found } = body;
    return found > high ? { code: "out-of-range", field: "segment", found, low: 0, high } : null;
  }
  if (type === "pour-step-marked" && "step" in body) {
    const known =
      planned?.type === "pour-planned" && planned.body.steps.some((step) => step.id === body.step);
    return known ? null : { code: "no-such-step", step: String(body.step) };
  }
  return null;
}
