import { useEffect, useMemo } from "react";
import { setBadge } from "../../../device/badge.ts";
import { useAlarmSource } from "../../base/alarm/alarmSources.ts";
import type { AlarmSource } from "../../base/alarm/ringDue.ts";
import { useRack, useSettings } from "../../base/state/live.ts";
import { useNow } from "../../base/state/useNow.ts";
import { coatRing } from "./coatRings.ts";
import { duesOf } from "./duesOf.ts";

const lookEveryMs = 15_000;

/** The due times of the rack, and how many are due on the app's badge. Draws nothing. */
export function RackDues(): null {
  const items = useRack();
  const [{ lastSeenDueAt }] = useSettings();
  const now = useNow(lookEveryMs);
  const source = useMemo((): AlarmSource | undefined => {
    if (items === undefined) return undefined;
    const dues = duesOf(items).map(coatRing);
    return { key: "rack", dues, since: lastSeenDueAt, missed: "listed" };
  }, [items, lastSeenDueAt]);
  useAlarmSource(source);
  const ready = source?.dues.filter(({ dueMs }) => dueMs <= now).length;
  useEffect(() => {
    if (ready !== undefined) void setBadge(ready);
  }, [ready]);
  return null;
}
