import { useEffect, useEffectEvent, useState } from "react";
import type { SceneView } from "../scene/sceneView.ts";
import { pointsOf, tipLimits, type PatternStudy } from "./patternStudy.ts";
import type { SceneController } from "./useSceneController.ts";

const cells = 88;
const restMs = 160;
type Skins = SceneView["pockets"];
const none: Skins = [];
type Shown = Pick<PatternStudy, "marks" | "up" | "hollowsAre"> & { readonly mmPerUnit: number };

/** What stays, as volumes in place, a moment after the last change. */
export function useTrappedSkins(
  { study, mmPerUnit, door }: Pick<SceneController, "study" | "mmPerUnit" | "door">,
  isWanted: boolean,
): Skins {
  const [found, setFound] = useState<Skins>(none);
  const { marks, up, hollowsAre } = study;
  const draw = useEffectEvent(async (shown: Shown, signal: AbortSignal): Promise<void> => {
    const vents = pointsOf(shown, "vent");
    const openings = shown.marks.map(({ point }) => point);
    const { minRise } = tipLimits;
    const isFilled = shown.hollowsAre === "metal";
    const asked = { mmPerUnit: shown.mmPerUnit, isFilled, up: shown.up, vents, openings, cells, minRise };
    const told = await door.ask("skins", asked, { signal });
    if (signal.aborted || !told.ok) return;
    const { air, plastic } = told.answer;
    setFound([
      ...(air === null ? [] : [{ colour: "water" as const, mesh: air }]),
      ...(plastic === null ? [] : [{ colour: "hold" as const, mesh: plastic }]),
    ]);
  });
  useEffect(() => {
    if (!isWanted) return;
    const stop = new AbortController();
    const timer = setTimeout(() => void draw({ mmPerUnit, marks, up, hollowsAre }, stop.signal), restMs);
    return () => {
      clearTimeout(timer);
      stop.abort();
    };
  }, [mmPerUnit, up, marks, hollowsAre, isWanted]);
  return isWanted ? found : none;
}
