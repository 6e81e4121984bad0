import { useLiveQuery } from "dexie-react-hooks";
import { readTaken, type TakenData } from "../../../storage/taken.ts";
import { useShop } from "../../base/state/shop.tsx";

/** What left the buckets on pieces; undefined while it loads. */
export function useTaken(): TakenData | undefined {
  const { db, clock } = useShop();
  return useLiveQuery(() => readTaken(db, clock()), [db, clock]);
}
