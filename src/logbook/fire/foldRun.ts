import { effective } from "../log/effective.ts";
import type { Entry, EntryOf } from "../entries/entry.ts";
import { isOfKind, type EntryIn } from "../entries/entryKinds.ts";
import type { Run, LoggedReading } from "./fireStates.ts";
import { dated, lastOf } from "../log/lastOf.ts";
import { untilOf } from "../entries/packed.ts";

/** The kiln run its entries tell, or null while nothing that stands plans it. Total: no sequence of entries throws. */
export const foldRun = (id: string, entries: readonly Entry[]): Run | null => runFrom(id, effective(entries));

/** The same from the entries that stand, in order. */
export function runFrom(id: string, entries: readonly Entry[]): Run | null {
  const standing = entries.filter((entry) => isOfKind(entry, "run"));
  const plan = standing.find((entry) => entry.type === "run-planned");
  if (plan === undefined) return null;
  const run = standing.filter((entry) => entry !== plan).reduce(evolveRun, newRun(id, plan));
  const lateIds = lateReadings(standing);
  return { ...run, readings: runReadingsOf(standing), ...(lateIds.length === 0 ? {} : { lateIds }) };
}

function lateReadings(standing: readonly EntryIn<"run">[]): readonly string[] {
  const end = standing.find(({ type }) => type === "run-ended");
  if (end === undefined) return [];
  return standing
    .filter((entry) => readTypes.has(entry.type) && isWrittenAfter(entry, end))
    .map(({ id }) => id);
}

/** Ids rise with time, so they tell two lines of one moment apart. */
const isWrittenAfter = (entry: Written, end: Written): boolean =>
  entry.recordedAt > end.recordedAt || (entry.recordedAt === end.recordedAt && entry.id > end.id);
type Written = Pick<Entry, "recordedAt" | "id">;

const readTypes: ReadonlySet<string> = new Set(["run-read", "run-logged"]);

/** The steps of a run as these entries, standing and in order, leave them; none where nothing plans it. */
export const runSegments = (standing: readonly Entry[]): Run["segments"] =>
  (lastOf(standing, "run-changed") ?? standing.find((entry) => entry.type === "run-planned"))?.body
    .segments ?? [];

/** Every reading of a run that stands, a logger's unpacked, oldest first. */
function runReadingsOf(standing: readonly EntryIn<"run">[]): readonly LoggedReading[] {
  const readings: LoggedReading[] = [];
  for (const entry of standing) {
    const { id, at } = entry;
    if (entry.type === "run-read") readings.push({ id, at, kilnC: entry.body.kilnC });
    if (entry.type !== "run-logged") continue;
    const { afterS, kilnC } = entry.body;
    const count = Math.min(afterS.length, kilnC.length);
    for (let i = 0; i < count; i++)
      readings.push({ id: `${id}#${i}`, at: at + (afterS[i] ?? 0) * 1000, kilnC: kilnC[i] ?? NaN });
  }
  return readings.sort((a, b) => a.at - b.at);
}

const newRun = (id: string, planned: EntryOf<"run-planned">): Run => ({
  id,
  plan: dated(planned),
  pieceIds: planned.body.pieceIds,
  segments: planned.body.segments,
  changes: [],
  startedAt: null,
  startedC: null,
  readings: [],
  stepsDone: [],
  ended: null,
  lastAt: planned.at,
});

function evolveRun(before: Run, entry: EntryIn<"run">): Run {
  const { id, at } = entry;
  const run = { ...before, lastAt: Math.max(before.lastAt, untilOf(entry)) };
  switch (entry.type) {
    case "run-changed": {
      const { segments, note = null } = entry.body;
      return { ...run, segments, changes: [...run.changes, { id, at, note }] };
    }
    case "run-started":
      return run.startedAt === null ? { ...run, startedAt: at, startedC: entry.body.kilnC } : run;
    case "run-step-done": {
      const { segment, note = null } = entry.body;
      const place = run.segments[segment];
      const code = place?.kind === "instruction" ? place.code : null;
      return { ...run, stepsDone: [...run.stepsDone, { id, at, segment, code, note }] };
    }
    case "run-ended":
      return { ...run, ended: run.ended ?? dated(entry) };
    case "run-planned":
    case "run-read":
    case "run-logged":
      return run;
  }
}
