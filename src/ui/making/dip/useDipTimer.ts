import { useEffect, useRef, useState } from "react";
import { bell } from "../../base/alarm/bell.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useSettings } from "../../base/state/live.ts";
import type { CoatKind } from "../../../trade/coats.ts";

export type TimerKind = "drain" | "stucco";
export type TimerLengths = Readonly<Record<TimerKind, number>>;

/** Seconds to drain, and to wait before the stucco: middle of what is usual. Common practice, no source. */
export function usualLengths(kind: CoatKind): TimerLengths {
  return kind === "prime" ? { drain: 45, stucco: 15 } : { drain: 30, stucco: 10 };
}

type Running = { readonly kind: TimerKind; readonly endsAt: number; readonly lengthS: number };

export const timerWords: Record<TimerKind, { running: string; over: string }> = {
  drain: { running: "Draining", over: "Drained. Stucco now." },
  stucco: { running: "Wait before stucco", over: "Stucco now." },
};

/**
 * One short timer, counted against the clock and not in ticks. `onOver` is called once; the tone is also set ahead,
 * so that it keeps time while the page is held back. It rings only while the screen is on.
 */
export function useDipTimer(onOver: (kind: TimerKind, lengthS: number) => void) {
  const { clock } = useShop();
  const [{ tone }] = useSettings();
  const [running, setRunning] = useState<Running | null>(null);
  const [now, setNow] = useState(clock);
  const over = useRef(onOver);
  useEffect(() => {
    over.current = onOver;
  });

  useEffect(() => {
    if (running === null) return undefined;
    const look = (): void => {
      const at = clock();
      setNow(at);
      if (at < running.endsAt) return;
      setRunning(null);
      over.current(running.kind, running.lengthS);
    };
    const timer = setInterval(look, 200);
    document.addEventListener("visibilitychange", look);
    return () => {
      clearInterval(timer);
      document.removeEventListener("visibilitychange", look);
    };
  }, [running, clock]);

  return {
    running,
    leftS: running === null ? null : Math.max(0, Math.ceil((running.endsAt - now) / 1000)),
    start: (kind: TimerKind, lengthS: number): void => {
      const at = clock();
      setNow(at);
      setRunning({ kind, lengthS, endsAt: at + lengthS * 1000 });
      if (tone) bell.ring({ inS: lengthS, rounds: 3 });
    },
    stop: (): void => {
      setRunning(null);
      bell.silence();
    },
  };
}

export type DipTimer = ReturnType<typeof useDipTimer>;
