import type { Piece } from "../logbook/piece/piece.ts";
import type { Standing } from "../logbook/piece/standing.ts";
import { minutesWithin } from "../logbook/fire/runHeat.ts";
import { soundRun } from "../logbook/fire/soundRun.ts";
import { practice } from "../trade/practice.ts";

export type Heat = {
  readonly peakC: number;
  readonly holdMin: number;
  readonly entries: readonly string[];
};

/**
 * What fire the shell has had since its last coat or patch: the best firing, else a burnout that was read hot for long
 * enough to be one, in its own log or in its run's. Null when the log knows of none.
 */
export function bestHeat({ piece, runs }: Pick<Standing, "piece" | "runs">): Heat | null {
  const since = Math.max(
    piece.startedAt,
    ...piece.coats.map(({ dippedAt }) => dippedAt),
    ...piece.cracks.map(({ patched }) => patched?.at ?? piece.startedAt),
  );
  const fired = piece.firings
    .filter(({ at }) => at >= since)
    .map(({ id, peakC, holdMin }): Heat => ({ peakC, holdMin, entries: [id] }));
  const burnt = piece.burnouts
    .filter(({ startedAt }) => startedAt >= since)
    .flatMap((burnout): readonly Heat[] => {
      const hot = burnout.readings.filter(isHot);
      return [
        ...heatOf(
          burnout.readings,
          hot.map(({ id }) => id),
        ),
        ...heatOf(runReadings(piece, burnout, runs), [burnout.id]),
      ];
    });
  const enough = [...fired, ...burnt].filter(isEnough);
  return enough.at(-1) ?? fired.at(-1) ?? burnt.at(-1) ?? null;
}

type Reading = { readonly at: number; readonly kilnC: number };

const isHot = ({ kilnC }: Reading): boolean => kilnC >= practice.firedC.value;

/** Minutes at a firing's heat: a dip between two hot readings is no part of them. None where nothing was read so hot. */
function heatOf(readings: readonly Reading[], entries: readonly string[]): readonly Heat[] {
  if (!readings.some(isHot)) return [];
  const peakC = readings.reduce((most, { kilnC }) => Math.max(most, kilnC), -Infinity);
  const holdMin = minutesWithin(readings, { lowC: practice.firedC.value, highC: Infinity });
  return [{ peakC, holdMin, entries }];
}

/** What the kiln was read at while the shell was in it; none where the run's end stands as a firing in its log. */
function runReadings(
  { firings }: Piece,
  { runId, startedAt, ended }: Piece["burnouts"][number],
  runs: Standing["runs"],
): readonly Reading[] {
  if (runId === null || ended === null || ended.result === "stopped") return [];
  if (firings.some((firing) => firing.runId === runId)) return [];
  const run = runs.find(({ id }) => id === runId);
  return run === undefined
    ? []
    : soundRun(run).readings.filter(({ at }) => at >= startedAt && at <= ended.at);
}

export const isEnough = ({ peakC, holdMin }: Heat): boolean =>
  peakC >= practice.firedC.value && holdMin >= practice.firedMin.value;
