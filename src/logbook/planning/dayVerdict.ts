import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import type { FireAhead } from "./fireAhead.ts";
import type { PieceAhead } from "./pieceAhead.ts";

/**
 * Whether a piece is hot by the moment of the pour: `sure` even by the cautious figures, `perhaps` by the middle ones
 * alone, where each coat has to be felt before the next. Times are epoch ms.
 */
export type DayVerdict =
  | {
      readonly is: "sure" | "perhaps";
      /** When its shell must be dry for fire. */
      readonly dryBy: number;
      /** Time to spare between dry at the soonest, by the figure that holds, and that. */
      readonly spareMs: number;
    }
  | {
      readonly is: "too-late";
      /** How much later it could be poured, by the middle figures, and when by the cautious ones. */
      readonly lateMs: number;
      readonly soonestAt: number;
    };

/** A piece against the moment metal moves, with so many minutes from dry to hot; null where no way leads there. */
export function dayVerdict(
  { ways: { late, middle } }: Pick<PieceAhead, "ways">,
  { pourAt, minutes }: { readonly pourAt: number; readonly minutes: number },
): DayVerdict | null {
  const dryBy = pourAt - minutes * minuteMs;
  if (late.ok && late.dryAt <= dryBy) return { is: "sure", dryBy, spareMs: dryBy - late.dryAt };
  if (middle.ok && middle.dryAt <= dryBy) return { is: "perhaps", dryBy, spareMs: dryBy - middle.dryAt };
  const soonest = late.ok ? late : middle;
  const least = middle.ok ? middle : late;
  if (!soonest.ok || !least.ok) return null;
  return {
    is: "too-late",
    lateMs: least.dryAt - dryBy,
    soonestAt: soonest.dryAt + minutes * minuteMs,
  };
}

/** Minutes from the start of the first run a piece is in to the pour, with all runs of its kiln one after the other. */
export function minutesFor(fire: FireAhead, pieceId: string): number {
  if (!fire.ok) return 0;
  const first = fire.runs.findIndex(({ pieceIds }) => pieceIds.includes(pieceId));
  return first < 0 ? 0 : fire.runs.slice(first).reduce((sum, { minutes }) => sum + minutes, 0);
}
