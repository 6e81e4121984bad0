import { useEffect, useMemo, useState } from "react";
import type { Fill } from "../../../geometry/fillFromGate.ts";
import { fillTimeline, moments, type FillMoment } from "../scene/fillTimeline.ts";
import { fillVolume } from "../scene/fillVolume.ts";
import type { FillLook } from "../scene/sceneView.ts";
import { deviceCaps } from "./deviceCaps.ts";
import { pointsOf } from "./patternStudy.ts";
import type { Mark } from "../../../logbook/casting/mark.ts";
import type { SceneController } from "./useSceneController.ts";

export type FillState = {
  readonly gates: readonly Mark[];
  readonly gateId: string | null;
  readonly setGateId: (id: string) => void;
  readonly found: Fill | null;
  readonly told: FillMoment | null;
  readonly look: FillLook | null;
  /** 0 to `moments`. */
  readonly at: number;
  readonly setAt: (at: number) => void;
  readonly isPlaying: boolean;
  readonly play: (isPlaying: boolean) => void;
  readonly isWorking: boolean;
  readonly trouble: string | null;
};

const mostCells = 128;
const playMs = 9000;

/** Metal from a gate, asked whenever what it hangs on has changed, and how far the picture of it is. */
export function useFill({ door: { ask }, study, mmPerUnit }: SceneController, isWanted: boolean): FillState {
  const { marks, up, hollowsAre } = study;
  const gates = marks.filter(({ kind }) => kind === "gate");
  const [asked, setGateId] = useState<string | null>(null);
  const gate = gates.find(({ id }) => id === asked) ?? gates[0] ?? null;
  const [answer, setAnswer] = useState<{
    readonly key: string;
    readonly fill: Fill | null;
    readonly trouble: string | null;
  }>();
  const [at, setAt] = useState(moments);
  const [isPlaying, play] = useState(false);
  const vents = pointsOf(study, "vent");
  const key = JSON.stringify([gate?.point, vents, up, mmPerUnit, hollowsAre]);
  const isDone = answer?.key === key;

  useEffect(() => {
    const from = JSON.parse(key) as [Mark["point"] | null, Mark["point"][], Mark["point"], number];
    const [point, open, upward, mm] = from;
    if (!isWanted || point === null || point === undefined || isDone) return;
    const stop = new AbortController();
    const run = async (): Promise<void> => {
      const cells = Math.min(mostCells, deviceCaps().cells);
      const told = await ask(
        "fill",
        { mmPerUnit: mm, up: upward, gate: point, vents: open, cells },
        { signal: stop.signal },
      );
      if (stop.signal.aborted) return;
      const trouble = told.ok ? null : "message" in told ? told.message : "The calculation has stopped.";
      setAnswer({ key, fill: told.ok ? told.answer : null, trouble });
    };
    void run();
    return () => stop.abort();
  }, [key, isWanted, isDone, ask]);

  useEffect(() => {
    if (!isPlaying) return;
    const timer = setInterval(
      () =>
        setAt((now) => {
          if (now >= moments) play(false);
          return Math.min(moments, now + 1);
        }),
      playMs / moments,
    );
    return () => clearInterval(timer);
  }, [isPlaying]);

  const fill = answer?.fill ?? null;
  const pairs = useMemo(() => (fill === null ? null : fillVolume(fill)), [fill]);
  const timeline = useMemo(() => (fill === null ? null : fillTimeline(fill)), [fill]);
  const look = useMemo(
    () => (fill === null || pairs === null ? null : { grid: fill.grid, pairs, share: at / moments }),
    [fill, pairs, at],
  );
  return {
    gates,
    gateId: gate?.id ?? null,
    setGateId,
    found: fill,
    told: timeline?.[at] ?? null,
    look: isWanted && gate !== null ? look : null,
    at,
    setAt: (next) => {
      play(false);
      setAt(next);
    },
    isPlaying,
    play: (next) => {
      if (next && at >= moments) setAt(0);
      play(next);
    },
    isWorking: isWanted && gate !== null && !isDone,
    trouble: isDone ? (answer?.trouble ?? null) : null,
  };
}
