import { millisecondsInHour as hourMs } from "date-fns/constants";
import type { CoatDrying } from "../piece/standing.ts";

/**
 * Hours a coat wants from its dip until it is likely dry, judged at `judgedAt`, epoch ms: by the sum, else by the dose of
 * the air it had. Null where the air is not known or it was dipped twice.
 */
export function hoursNeeded(
  { coat, readyAt, doseNeededGHM3, doseSuppliedGHM3 }: CoatDrying,
  judgedAt: number,
): number | null {
  if (readyAt.likely !== null) return (readyAt.likely - coat.dippedAt) / hourMs;
  if (doseNeededGHM3 === null || !(doseSuppliedGHM3 > 0) || coat.redips.length > 0) return null;
  return (((judgedAt - coat.dippedAt) / hourMs) * doseNeededGHM3) / doseSuppliedGHM3;
}
