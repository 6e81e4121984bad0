import type { RunStanding } from "../../../logbook/fire/runStanding.ts";
import type { InstructionCode } from "../../../physics/heat/firingSegments.ts";
import { scheduleCurve } from "../../../physics/heat/firingSegments.ts";
import type { RingDue } from "../../base/alarm/ringDue.ts";
import { paths } from "../../base/state/paths.ts";
import { instructionWords } from "./instructionWords.ts";

/**
 * What is to be done at the kiln and nobody ticked, each with its time from where the run is now; `now` is epoch ms.
 * `names` are those of the pieces in it.
 */
export function runDues(
  runId: string,
  { run, judged }: RunStanding,
  { now, names }: { readonly now: number; readonly names: readonly string[] },
): readonly RingDue[] {
  const ticked = new Set(run.ticked.map(({ segment }) => segment));
  return scheduleCurve(run.segments, run.startC).flatMap(({ segment, startMin }) => {
    const part = run.segments[segment];
    if (part?.kind !== "instruction" || ticked.has(segment)) return [];
    const dueMs = now + (startMin - judged.nowMin) * 60_000;
    return [dueOf(part.code, { id: `${runId}-${part.code}-${segment}`, dueMs, runId, names })];
  });
}

function dueOf(
  code: InstructionCode,
  {
    id,
    dueMs,
    runId,
    names,
  }: Pick<RingDue, "id" | "dueMs"> & { readonly runId: string; readonly names: readonly string[] },
): RingDue {
  const { title, says, short } = instructionWords[code];
  return {
    id,
    dueMs,
    words: title,
    name: ["Kiln", ...names].join(", "),
    notice: { title, body: says },
    path: paths.run(runId),
    calendar: () => ({
      durationMin: 10,
      summary: `${["Kiln", ...names].join(", ")}: ${short}`,
      description: `${title}. ${says} The time is a plan's: look at the kiln.`,
    }),
  };
}
