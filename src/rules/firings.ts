import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import type { Piece } from "../logbook/piece/piece.ts";
import { practice } from "../trade/practice.ts";

export type Heat = {
  readonly peakC: number;
  readonly holdMin: number;
  readonly entries: readonly string[];
};

/**
 * What fire the shell has had since its last coat or patch: the best firing, else a burnout that was read hot for long
 * enough to be one. Null when the log knows of none.
 */
export function bestHeat(piece: Piece): Heat | null {
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
    .flatMap(({ readings }): readonly Heat[] => {
      const hot = readings.filter(({ kilnC }) => kilnC >= practice.firedC.value);
      const [first] = hot;
      const last = hot.at(-1);
      if (first === undefined || last === undefined) return [];
      return [
        {
          peakC: Math.max(...hot.map(({ kilnC }) => kilnC)),
          holdMin: (last.at - first.at) / minuteMs,
          entries: hot.map(({ id }) => id),
        },
      ];
    });
  const enough = [...fired, ...burnt].filter(isEnough);
  return enough.at(-1) ?? fired.at(-1) ?? burnt.at(-1) ?? null;
}

export const isEnough = ({ peakC, holdMin }: Heat): boolean =>
  peakC >= practice.firedC.value && holdMin >= practice.firedMin.value;
