import type { Piece } from "../piece/piece.ts";

/** A shell that was this hot, °C, holds no water any more; common practice, no source. */
const driedOutC = 150;

/**
 * The times, epoch ms, at which fire had driven all water out: a burnout that ran to its end, a kiln or a shell that
 * was read hot, a firing. A burnout stopped cold does not count.
 */
export function hotTimes({
  burnouts,
  firings,
  preheats,
}: Pick<Piece, "burnouts" | "firings" | "preheats">): readonly number[] {
  const kiln = burnouts.flatMap(({ readings, ended }) => [
    ...readings.filter(({ kilnC }) => kilnC >= driedOutC).map(({ at }) => at),
    ...(ended === null || ended.result === "stopped" ? [] : [ended.at]),
  ]);
  const heated = preheats.filter(({ shellC }) => shellC >= driedOutC);
  return [...kiln, ...firings.map(({ at }) => at), ...heated.map(({ at }) => at)];
}

/** When the shell was first that hot between the two times; null when it was not. */
export function firstHotAt(
  piece: Pick<Piece, "burnouts" | "firings" | "preheats">,
  { since, until = Infinity }: { since: number; until?: number },
): number | null {
  const times = hotTimes(piece).filter((at) => at >= since && at <= until);
  return times.length === 0 ? null : Math.min(...times);
}
