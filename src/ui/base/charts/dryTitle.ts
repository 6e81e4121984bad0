import type { CoatDrying } from "../../../logbook/piece/standing.ts";
import { soonTime } from "../format/time.ts";

/** What the curve of a coat's water shows: when it is likely dry enough for the next. */
export function dryTitle(
  { coat, readyAt: { likely } }: Pick<CoatDrying, "coat" | "readyAt">,
  now: number,
  locale: string,
): string {
  if (likely === null) return `Coat ${coat.number}: no drying time yet`;
  const at = soonTime(likely, now, locale);
  return likely <= now
    ? `Coat ${coat.number} probably dry enough since ${at}`
    : `Coat ${coat.number} dry enough, probably ${at}`;
}
