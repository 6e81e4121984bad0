import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import type { Moment, Refusal } from "./command.ts";

/** Clocks of two devices may differ a little; what is ahead by more is a slip. */
export const clockSlackMs = 5 * minuteMs;

/** No log of ours is older: 2000-01-01, UTC. */
const earliestMs = 946_684_800_000;

export function timeFault(at: number, { now }: Pick<Moment, "now">): Refusal | null {
  if (at > now + clockSlackMs) return { code: "in-future", at, now };
  if (!(at >= earliestMs))
    return { code: "out-of-range", field: "at", found: at, low: earliestMs, high: now };
  return null;
}
