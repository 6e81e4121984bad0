import { millisecondsInDay as dayMs } from "date-fns/constants";
import { useLiveQuery } from "dexie-react-hooks";
import { useEffect, useState } from "react";
import { writeNote } from "../../../device/outsideNote.ts";
import { askToKeep } from "../../../device/persistence.ts";
import { useSettings } from "../../base/state/live.ts";
import { useShop } from "../../base/state/shop.tsx";
import { readOwnCount } from "../../../storage/demo.ts";
import { useNow } from "../../base/state/useNow.ts";

/** Waits until the taps have come to rest, so that counting never stands in a hand's way. */
const restMs = 3000;

/**
 * Keeps the note outside the store up with the log, and asks the browser to keep the log once there is a day of it;
 * the demo counts for neither. Shows nothing.
 */
export function LogNote() {
  const { db, clock } = useShop();
  const [{ lastBackup, askedToKeepAt }, change] = useSettings();
  const [firstAt, setFirstAt] = useState<number | null>(null);
  // A page that is left open comes to its second day too.
  const now = useNow();
  // Ids begin with the time they were made, so that the last one is the newest line.
  const last = useLiveQuery(() => db.entries.orderBy("id").last(), [db]);
  useEffect(() => {
    if (last === undefined) return;
    const note = async (): Promise<void> => {
      const own = await readOwnCount(db);
      setFirstAt(own.firstAt);
      writeNote({ entries: own.entries, lastAt: last.recordedAt, backupAt: lastBackup?.at ?? null });
    };
    // Where it fails it is written with the next entry; a store that is gone has its own page.
    const timer = setTimeout(() => void note().catch(() => undefined), restMs);
    return () => clearTimeout(timer);
  }, [db, last, lastBackup]);
  const isDayOld = firstAt !== null && now - firstAt > dayMs;
  useEffect(() => {
    if (!isDayOld || askedToKeepAt > 0) return;
    void askToKeep().then(() => change({ askedToKeepAt: clock() }));
  }, [isDayOld, askedToKeepAt, change, clock]);
  return null;
}
