import { useEffect, useState } from "react";
import { cupRepeatability } from "../../../trade/cups.ts";
import { useShop } from "../../base/state/shop.tsx";

const lookMs = 100;
const { value: stepS } = cupRepeatability.stepS;

/** To the step in which cup seconds are reported. */
export const roundedS = (seconds: number): number =>
  Math.round(Math.round(seconds / stepS) * stepS * 10) / 10;

export type Stopwatch = {
  readonly isRunning: boolean;
  /** Seconds so far, or as it was stopped; null before the first start. */
  readonly seconds: number | null;
  readonly start: () => void;
  readonly stop: () => number;
};

/** Counts against the clock and not in ticks, so that a page held back still tells the truth. */
export function useStopwatch(): Stopwatch {
  const { clock } = useShop();
  const [startedAt, setStartedAt] = useState<number | null>(null);
  const [seconds, setSeconds] = useState<number | null>(null);
  useEffect(() => {
    if (startedAt === null) return undefined;
    const timer = setInterval(() => setSeconds((clock() - startedAt) / 1000), lookMs);
    return () => clearInterval(timer);
  }, [startedAt, clock]);
  return {
    isRunning: startedAt !== null,
    seconds,
    start: () => {
      setSeconds(0);
      setStartedAt(clock());
    },
    stop: () => {
      const told = roundedS((clock() - (startedAt ?? clock())) / 1000);
      setStartedAt(null);
      setSeconds(told);
      return told;
    },
  };
}
