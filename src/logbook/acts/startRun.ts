import type { Command } from "../log/command.ts";
import { streamOf } from "../entries/entry.ts";
import type { Run } from "../fire/fireStates.ts";
import type { Piece } from "../piece/piece.ts";

/** The burnout of a run, as its start writes it in the log of one piece. */
export const beginBurnout = (run: Pick<Run, "id">, piece: Pick<Piece, "id">): Command => ({
  do: "log",
  stream: streamOf("piece", piece.id),
  type: "burnout-started",
  body: { runId: run.id },
});

/**
 * The start of a run with the kiln at `kilnC`, °C, and of the burnout in the log of each piece that goes in. A piece
 * that was scrapped or put away since the plan is not in the kiln; one whose burnout is under way keeps that one.
 */
export function startRun(
  run: Run,
  pieces: readonly Piece[],
  { kilnC }: { readonly kilnC: number },
): readonly Command[] {
  const start: Command = {
    do: "log",
    stream: streamOf("run", run.id),
    type: "run-started",
    body: { kilnC },
  };
  const goesIn = ({ archived, phase, burnouts }: Piece): boolean =>
    !archived && phase !== "scrapped" && burnouts.at(-1)?.ended !== null;
  return run.plan.purpose === "burnout"
    ? [start, ...pieces.filter(goesIn).map((piece) => beginBurnout(run, piece))]
    : [start];
}
