import type { Command, LogCommand } from "../log/command.ts";
import { streamOf } from "../entries/entry.ts";
import type { Run } from "../fire/fireStates.ts";
import type { Piece } from "../piece/piece.ts";
import { ranges, within } from "../entries/ranges.ts";
import { energyFilledIn, heatFilledIn } from "../fire/runHeat.ts";

export type InsideOfRun = "clean" | "residue" | "stopped";

export type EndDraft = {
  readonly result: "done" | "stopped";
  /** By piece; a piece that is left out takes what the result of the run says. */
  readonly inside: Readonly<Record<string, InsideOfRun | undefined>>;
  readonly peakC: number | null;
  readonly holdMin: number | null;
  /** Whether the shells count as fired, and as preheated. */
  readonly isFired: boolean;
  readonly isPreheated: boolean;
  readonly shellC: number | null;
  readonly energyKWh: number | null;
  readonly note: string;
};

/** Below this a run has bonded nothing and is no firing (common practice, no source). */
const leastFiringC = 600;

/** The end as the readings tell it, to be changed where they do not tell all. */
export function startingEnd(run: Run, energyKWh: number | null): EndDraft {
  const held = heatFilledIn(run.readings);
  const isHot = held !== null && held.peakC >= leastFiringC;
  const endsHot = run.segments.some((part) => part.kind === "instruction" && part.code === "keep-hot");
  const last = run.readings.at(-1)?.kilnC ?? null;
  return {
    result: "done",
    inside: {},
    peakC: held?.peakC ?? null,
    holdMin: held?.holdMin ?? null,
    isFired: run.plan.purpose !== "preheat" && isHot,
    isPreheated: endsHot,
    shellC: endsHot && last !== null ? Math.round(last) : null,
    energyKWh: energyKWh === null ? null : energyFilledIn(energyKWh),
    note: "",
  };
}

/** The crack of this run that sent a piece back to its coats; null while there is none. */
export const crackIn = (run: Pick<Run, "id">, { cracks }: Piece): Piece["cracks"][number] | null =>
  cracks.find(({ runId }) => runId === run.id) ?? null;

/** The burnout of this run in a piece's log; null where it was never begun there. */
export const burnoutIn = (run: Pick<Run, "id">, { burnouts }: Piece): Piece["burnouts"][number] | null =>
  burnouts.findLast(({ runId }) => runId === run.id) ?? null;

export type EndFault = "no-inside" | "no-peak" | "no-hold" | "no-shell";

/** The pieces whose inside must be looked at before the run can end: in a burnout that went through, all but a cracked one. */
const unseen = (run: Run, pieces: readonly Piece[], draft: EndDraft): readonly Piece[] =>
  pieces.filter(
    (piece) =>
      draft.result === "done" &&
      draft.inside[piece.id] === undefined &&
      crackIn(run, piece) === null &&
      burnoutIn(run, piece)?.ended === null,
  );

export function endFaults(
  draft: EndDraft,
  { run, pieces }: { readonly run: Run; readonly pieces: readonly Piece[] },
): readonly EndFault[] {
  const { isFired, isPreheated, peakC, holdMin, shellC } = draft;
  return [
    ...(unseen(run, pieces, draft).length > 0 ? (["no-inside"] as const) : []),
    ...(isFired && !within(ranges.peakC, peakC) ? (["no-peak"] as const) : []),
    ...(isFired && !within(ranges.holdMin, holdMin) ? (["no-hold"] as const) : []),
    ...(isPreheated && !within(ranges.shellC, shellC) ? (["no-shell"] as const) : []),
  ];
}

type PieceCommand = LogCommand<"burnout-ended"> | LogCommand<"shell-fired"> | LogCommand<"shell-preheated">;

/** What the end of a run writes in the log of one piece: a cracked one was stopped, the others as they came out. */
export function pieceEnd(run: Run, piece: Piece, draft: EndDraft): readonly PieceCommand[] {
  const stream = streamOf("piece", piece.id);
  const commands: PieceCommand[] = [];
  const isCracked = crackIn(run, piece) !== null;
  const burnout = burnoutIn(run, piece);
  const told = draft.inside[piece.id] ?? (draft.result === "stopped" ? "stopped" : "clean");
  const result = isCracked ? "stopped" : told;
  if (burnout !== null && burnout.ended === null)
    commands.push({ do: "log", stream, type: "burnout-ended", body: { result } });
  if (isCracked || (run.plan.purpose === "burnout" && result === "stopped")) return commands;
  const { isFired, isPreheated, peakC, holdMin, shellC } = draft;
  const isLogged = piece.firings.some(({ runId }) => runId === run.id);
  if (isFired && !isLogged && peakC !== null && holdMin !== null)
    commands.push({
      do: "log",
      stream,
      type: "shell-fired",
      body: { peakC, holdMin, ...seenInside(run, draft.inside[piece.id]), runId: run.id },
    });
  const stands = piece.preheats.some(
    ({ at, runId }) => runId === run.id || (run.startedAt !== null && at > run.startedAt),
  );
  if (isPreheated && !stands && shellC !== null)
    commands.push({ do: "log", stream, type: "shell-preheated", body: { shellC, runId: run.id } });
  return commands;
}

/** The end of a run: what it writes in each piece's log, then its own end. A piece whose log has it already gets nothing. */
export function endRun(run: Run, pieces: readonly Piece[], draft: EndDraft): readonly Command[] {
  const { result, energyKWh } = draft;
  const note = draft.note.trim();
  const body = {
    result,
    ...(energyKWh === null ? {} : { energyKWh }),
    ...(note === "" ? {} : { note }),
  };
  return [
    ...pieces.flatMap((piece) => pieceEnd(run, piece, draft)),
    { do: "log", stream: streamOf("run", run.id), type: "run-ended", body },
  ];
}

/** A firing has no burnout's end to say how the inside came out. */
const seenInside = (run: Run, inside: InsideOfRun | undefined): { readonly inside?: "clean" | "residue" } =>
  run.plan.purpose === "firing" && (inside === "clean" || inside === "residue") ? { inside } : {};
