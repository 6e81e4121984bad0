import type { Piece } from "../piece/piece.ts";
import type { Run } from "./fireStates.ts";

const isLit = ({ startedAt, ended }: Pick<Run, "startedAt" | "ended">): boolean =>
  startedAt !== null && ended === null;

/** The kiln runs a piece was in by its own log, and after them those that are lit now with it among their pieces. */
export function runsOfPiece(
  { id, runIds }: Pick<Piece, "id" | "runIds">,
  known: ReadonlyMap<string, Run> | undefined,
): readonly Run[] {
  if (known === undefined) return [];
  const lit = [...known.values()].filter(
    (run) => isLit(run) && run.pieceIds.includes(id) && !runIds.includes(run.id),
  );
  return [...runIds.flatMap((runId) => known.get(runId) ?? []), ...lit];
}

/**
 * The firing or preheat this shell stands in now; null where none is lit. A preheat, a firing or the shell's way out of
 * the kiln logged since the run began ends it for this piece. A burnout writes itself into the piece's own log.
 */
export function kilnNow(piece: Piece, runs: readonly Run[]): Run | null {
  const run = runs.findLast((one) => isLit(one) && one.plan.purpose !== "burnout") ?? null;
  const since = run?.startedAt ?? null;
  if (since === null) return null;
  const { firings, preheats, outOfKiln } = piece;
  return [...firings, ...preheats, ...outOfKiln].some(({ at }) => at > since) ? null : run;
}
