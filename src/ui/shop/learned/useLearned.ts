import { useLiveQuery } from "dexie-react-hooks";
import { useCallback, useEffect, useState } from "react";
import { relearn, type Learned } from "../../../storage/learning.ts";
import { useShop } from "../../base/state/shop.tsx";

/** What the shop has learned, worked out anew after each entry; `anew` forgets what was kept of pieces long dry. */
export function useLearned(): {
  readonly learned: Learned | null;
  readonly failed: boolean;
  readonly anew: () => Promise<void>;
} {
  const { db, clock } = useShop();
  const count = useLiveQuery(() => db.entries.count(), [db]);
  const [learned, setLearned] = useState<Learned | null>(null);
  const [failed, setFailed] = useState(false);
  useEffect(() => {
    if (count === undefined) return undefined;
    let gone = false;
    const look = async (): Promise<void> => {
      try {
        const found = await relearn(db, clock());
        if (!gone) setLearned(found);
      } catch {
        if (!gone) setFailed(true);
      }
    };
    void look();
    return () => {
      gone = true;
    };
  }, [db, clock, count]);
  const anew = useCallback(async () => {
    setLearned(await relearn(db, clock(), { anew: true }));
  }, [db, clock]);
  return { learned, failed, anew };
}
