import { soonTime } from "../../base/format/time.ts";
import type { LatestPour } from "../../../physics/metal/latestPour.ts";

/** Minutes as "1 min 18 s". */
export function minSec(minutes: number): string {
  const seconds = Math.max(0, Math.floor(minutes * 60));
  const [min, s] = [Math.floor(seconds / 60), seconds % 60];
  if (min === 0) return `${s} s`;
  return s === 0 ? `${min} min` : `${min} min ${s} s`;
}

export type StopRule = { readonly kind: "fine" | "late" | "stop"; readonly text: string };

/** The stop rule of a shell that has been out of the kiln so long; null minutes while it is in there. */
export function stopRule(latest: LatestPour, outMin: number | null): StopRule {
  const { surelyMin, likelyMin, reachedMin, neverWarmEnough } = latest;
  const surely = surelyMin ?? reachedMin;
  const likely = likelyMin ?? reachedMin;
  if (neverWarmEnough)
    return { kind: "stop", text: "Stop: the shell is too cold out of the kiln. Put it back." };
  if (outMin !== null && outMin > likely)
    return likelyMin === null
      ? { kind: "stop", text: `Stop: out for more than ${minSec(reachedMin)}. Put it back in the kiln.` }
      : { kind: "stop", text: "Stop: shell too cold. Put it back in the kiln." };
  const end =
    likelyMin === null
      ? `Stop after ${minSec(reachedMin)}.`
      : `Stop at ${minSec(likelyMin)}: shell too cold.`;
  return outMin !== null && outMin > surely
    ? { kind: "late", text: `Late: pour now or put it back. ${end}` }
    : { kind: "fine", text: `Pour within ${minSec(surely)}. ${end}` };
}

/** The stop rule of shells that have their metal: until when none may be broken out; `outAts` epoch ms, at least one. */
export function knockoutRule(
  outAts: readonly number[],
  { now, locale }: { readonly now: number; readonly locale: string },
): StopRule {
  const [first, last] = [Math.min(...outAts), Math.max(...outAts)];
  const at = (ms: number): string => soonTime(ms, now, locale);
  if (first <= now)
    return { kind: "fine", text: last <= now ? "Ready to break out." : `The last is ready at ${at(last)}.` };
  return {
    kind: "fine",
    text:
      at(first) === at(last)
        ? `Do not break it out before ${at(first)}.`
        : `Do not break the first out before ${at(first)}, the last before ${at(last)}.`,
  };
}
