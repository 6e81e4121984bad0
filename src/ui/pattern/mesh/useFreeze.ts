import { useState } from "react";
import type { FreezeOrder } from "../../../geometry/freezeOrder.ts";
import { feedsKey, feedsOf } from "./feeds.ts";
import type { SceneController } from "./useSceneController.ts";

export type FreezeState = {
  readonly found: FreezeOrder | null;
  /** Feeders were placed or moved since. */
  readonly isStale: boolean;
  readonly isWorking: boolean;
  readonly trouble: string | null;
  readonly run: () => Promise<void>;
};

const cells = 96;
const mostKept = 12;

/** What freezes last, with what is placed as its feeds; asked by hand, for it takes a while on a phone. */
export function useFreeze({ door: { ask, change }, study, mmPerUnit }: SceneController): FreezeState {
  const [found, setFound] = useState<{ readonly key: string; readonly order: FreezeOrder } | null>(null);
  const [isWorking, setIsWorking] = useState(false);
  const [trouble, setTrouble] = useState<string | null>(null);
  const feeds = feedsOf(study);
  const key = feedsKey(study, mmPerUnit);
  return {
    found: found?.order ?? null,
    isStale: found !== null && found.key !== key,
    isWorking,
    trouble,
    run: async () => {
      setIsWorking(true);
      setTrouble(null);
      const told = await ask("freeze", { mmPerUnit, cells, feeds });
      setIsWorking(false);
      if (told.ok) {
        const { hotSpots } = told.answer;
        setFound({ key, order: told.answer });
        change((now) => ({ ...now, hot: { key, spots: hotSpots.slice(0, mostKept) } }));
      } else if (told.why !== "aborted")
        setTrouble("message" in told ? told.message : "the worker has stopped");
    },
  };
}
