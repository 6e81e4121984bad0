import { millisecondsInDay as dayMs } from "date-fns/constants";
import { useLiveQuery } from "dexie-react-hooks";
import { useEffect } from "react";
import { writeNote } from "../../../device/outsideNote.ts";
import { askToKeep } from "../../../device/persistence.ts";
import { useSettings } from "../../base/state/live.ts";
import { useShop } from "../../base/state/shop.tsx";

/** Waits until the taps have come to rest, so that counting never stands in a hand's way. */
const restMs = 3000;

/**
 * Keeps the note outside the store up with the log, and asks the browser to keep the log once there is a day of it.
 * Shows nothing.
 */
export function LogNote() {
  const { db, clock } = useShop();
  const [{ lastBackup, askedToKeepAt }, change] = useSettings();
  // Ids begin with the time they were made, so that the last one is the newest line.
  const last = useLiveQuery(() => db.entries.orderBy("id").last(), [db]);
  const first = useLiveQuery(() => db.entries.orderBy("id").first(), [db]);
  useEffect(() => {
    if (last === undefined) return;
    const timer = setTimeout(() => {
      void db.entries
        .count()
        .then((entries) => writeNote({ entries, lastAt: last.recordedAt, backupAt: lastBackup?.at ?? null }))
        // Written with the next entry; a store that is gone has its own page.
        .catch(() => undefined);
    }, restMs);
    return () => clearTimeout(timer);
  }, [db, last, lastBackup]);
  const isDayOld = first !== undefined && clock() - first.recordedAt > dayMs;
  useEffect(() => {
    if (!isDayOld || askedToKeepAt > 0) return;
    void askToKeep().then(() => change({ askedToKeepAt: clock() }));
  }, [isDayOld, askedToKeepAt, change, clock]);
  return null;
}
