import { useLiveQuery } from "dexie-react-hooks";
import { useEffect } from "react";
import { relearn } from "../../../storage/learning.ts";
import { useShop } from "../../base/state/shop.tsx";

/** Waits until the taps have come to rest, so that learning never stands in a hand's way. */
const restMs = 4000;

/** Keeps what the shop has learned of its drying up with the log. Shows nothing. */
export function Learner() {
  const { db, clock } = useShop();
  const count = useLiveQuery(() => db.entries.count(), [db]);
  useEffect(() => {
    if (count === undefined) return;
    const timer = setTimeout(() => {
      // What can't be worked out now is worked out after the next entry: nothing rests on it being there.
      relearn(db, clock()).catch(() => undefined);
    }, restMs);
    return () => clearTimeout(timer);
  }, [db, clock, count]);
  return null;
}
