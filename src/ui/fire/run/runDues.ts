import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import type { RunStanding } from "../../../logbook/fire/runStanding.ts";
import type { InstructionCode, Segment, Stretch } from "../../../physics/heat/firingSegments.ts";
import { scheduleCurve } from "../../../physics/heat/firingSegments.ts";
import type { RingDue } from "../../base/alarm/ringDue.ts";
import type { Format } from "../../base/format/units.ts";
import { paths } from "../../base/state/paths.ts";
import { instructionWords } from "./instructionWords.ts";
import { segmentTitle } from "./segmentWords.ts";

type Known = {
  /** Epoch ms. */
  readonly now: number;
  /** Of the pieces in it. */
  readonly names: readonly string[];
  readonly format: Format;
};

/**
 * What is to be done at the kiln, each with its time from where the run is now: instructions nobody ticked, every
 * change of slope, the end of every hold and of the plan. A kiln turned by hand has to be turned at each of them.
 */
export function runDues(
  runId: string,
  { run, judged }: RunStanding,
  { now, names, format }: Known,
): readonly RingDue[] {
  const curve = scheduleCurve(run.segments, run.startC);
  const ticked = new Set(run.ticked.map(({ segment }) => segment));
  const at = (minute: number): number => now + (minute - judged.nowMin) * minuteMs;
  const due = dueFor(runId, names);
  const told = curve.flatMap(({ segment, startMin }) => {
    const part = run.segments[segment];
    if (part?.kind !== "instruction" || ticked.has(segment)) return [];
    return [due({ id: `${part.code}-${segment}`, dueMs: at(startMin), ...instructionSays(part.code) })];
  });
  const turns = turnsOf(run.segments, curve);
  // Of those that are past only the last is kept, until it has rung: what came before it is no longer so.
  const from = turns.findLastIndex(({ minute }) => minute <= judged.nowMin);
  return [
    ...told,
    ...turns.slice(Math.max(0, from)).map(({ id, minute, before, next }) =>
      due({
        id,
        dueMs: at(minute),
        ...turnSays(
          before && segmentTitle(run.segments[before.segment] ?? nothing, before.fromC, format),
          next && segmentTitle(run.segments[next.segment] ?? nothing, next.fromC, format),
        ),
      }),
    ),
  ];
}

const nothing: Segment = { kind: "hold", atC: 0, minutes: 0, reasons: [] };

/** A moment at which the kiln goes on otherwise than before; `next` is null at the end of the plan. */
type Turn = {
  readonly id: string;
  readonly minute: number;
  readonly before: Stretch | null;
  readonly next: Stretch | null;
};

/** Every change of slope and every end of a hold, but for the start, where somebody stands at the kiln. */
function turnsOf(segments: readonly Segment[], curve: readonly Stretch[]): readonly Turn[] {
  const turns: Turn[] = [];
  let before: Stretch | null = null;
  for (const stretch of curve) {
    const part = segments[stretch.segment];
    if (part === undefined || part.kind === "instruction" || stretch.endMin <= stretch.startMin) continue;
    const last: Segment | undefined = before === null ? undefined : segments[before.segment];
    if (stretch.startMin > 0 && !goesOn(last, part, before, stretch))
      turns.push({ id: `turn-${stretch.segment}`, minute: stretch.startMin, before, next: stretch });
    before = stretch;
  }
  const end = curve.at(-1)?.endMin ?? 0;
  return before === null || end === 0
    ? turns
    : [...turns, { id: "through", minute: end, before, next: null }];
}

/** True where a step only goes on with the one before, as one that was cut in two when the plan was moved. */
function goesOn(last: Segment | undefined, part: Segment, before: Stretch | null, stretch: Stretch): boolean {
  if (last === undefined || before === null) return false;
  if (last.kind === "hold" && part.kind === "hold") return last.atC === part.atC;
  return (
    last.kind === "ramp" &&
    part.kind === "ramp" &&
    last.rateKPerH === part.rateKPerH &&
    Math.sign(before.toC - before.fromC) === Math.sign(stretch.toC - stretch.fromC)
  );
}

type Says = { readonly title: string; readonly says: string; readonly short: string };

const instructionSays = (code: InstructionCode): Says => instructionWords[code];

function turnSays(before: string | null, next: string | null): Says {
  if (next === null)
    return {
      title: "Kiln plan finished",
      says: "Read the kiln, then end the run.",
      short: "plan finished",
    };
  const over = before === null ? "" : `Over now: ${lower(before)}. `;
  return {
    title: `Kiln: ${lower(next)}`,
    says: `${over}Read the kiln before you turn it.`,
    short: lower(next),
  };
}

const lower = (text: string): string => `${text.slice(0, 1).toLowerCase()}${text.slice(1)}`;

const dueFor =
  (runId: string, names: readonly string[]) =>
  ({ id, dueMs, title, says, short }: Pick<RingDue, "id" | "dueMs"> & Says): RingDue => {
    const name = ["Kiln", ...names].join(", ");
    return {
      id: `${runId}-${id}`,
      dueMs,
      words: title,
      name,
      notice: { title, body: says },
      path: paths.run(runId),
      calendar: () => ({
        durationMin: 10,
        summary: `${name}: ${short}`,
        description: `${title}. ${says} The time is from the plan: check the kiln.`,
      }),
    };
  };
