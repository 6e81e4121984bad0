import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import { firingPractice } from "../../physics/heat/firingLimits.ts";
import type { Run } from "../fire/fireStates.ts";
import type { Piece } from "../piece/piece.ts";

type Reading = { readonly at: number; readonly kilnC: number };

/** A shell that was this hot itself, °C, not only the kiln round it, holds no water any more: judgement. */
const driedOutC = 150;

/** A heat that drove all water out of the shell, and when it was last seen; `entryId` is null for a logger's reading. */
export type DryHeat = { readonly at: number; readonly entryId: string | null };

/**
 * The last heat after `since`, epoch ms, that dried this shell through: a burnout to its end, a firing, a preheat, or
 * kiln readings that show an hour at 110 °C or more. Null where the log shows none.
 */
export function lastDryHeat(piece: Piece, runs: readonly Run[], since = -Infinity): DryHeat | null {
  const { burnouts, firings, preheats } = piece;
  const heats: readonly DryHeat[] = [
    ...burnouts.flatMap(({ ended, readings }) => [
      ...(ended === null || ended.result === "stopped" ? [] : [heatOf(ended)]),
      ...readHeat(readings, since),
    ]),
    ...runs.flatMap(({ readings }) => readHeat(readings, since)),
    ...firings.filter(({ peakC, holdMin }) => isDrying(peakC, holdMin)).map(heatOf),
    ...preheats.filter(({ shellC, heldMin }) => isDrying(shellC, heldMin ?? 0)).map(heatOf),
  ].filter(({ at }) => at > since);
  return heats.reduce<DryHeat | null>(
    (last, heat) => (last === null || heat.at > last.at ? heat : last),
    null,
  );
}

const heatOf = ({ at, id }: { readonly at: number; readonly id: string }): DryHeat => ({ at, entryId: id });

function isDrying(shellC: number, minutes: number): boolean {
  const { steamHoldC, patchedHoldMin } = firingPractice;
  return shellC >= driedOutC || (shellC >= steamHoldC && minutes >= patchedHoldMin);
}

/** Kiln readings after `since` that show an hour at 110 °C or more: as of the last of them. */
function readHeat(readings: readonly Reading[], since: number): readonly DryHeat[] {
  const { steamHoldC, patchedHoldMin } = firingPractice;
  const counted = readings.filter(({ at }) => at >= since).toSorted((a, b) => a.at - b.at);
  let heldMs = 0;
  let last: Reading | null = null;
  for (const [i, reading] of counted.entries()) {
    if (reading.kilnC < steamHoldC) continue;
    const before = counted[i - 1];
    if (before !== undefined && before.kilnC >= steamHoldC) heldMs += reading.at - before.at;
    last = reading;
  }
  return last === null || heldMs < patchedHoldMin * minuteMs ? [] : [{ at: last.at, entryId: null }];
}
