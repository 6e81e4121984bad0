import { useMemo } from "react";
import { memoOf } from "../../../storage/memoOf.ts";
import { newsMs } from "../../../device/dueAlarm.ts";
import type { Pour } from "../../../logbook/fire/fireStates.ts";
import { useAlarmSource } from "../../base/alarm/alarmSources.ts";
import type { AlarmSource } from "../../base/alarm/ringDue.ts";
import { WatcherGuard } from "../../base/parts/WatcherGuard.tsx";
import { usePours } from "../../base/state/live.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useNow } from "../../base/state/useNow.ts";
import { pourDay } from "./pourDay.ts";
import { usePourParts } from "./usePourParts.ts";

const lookEveryMs = 10_000;

/** The due times of every pour that is under way. Draws nothing. */
export function PourDues() {
  return usePours("open")?.map((pour) => (
    <WatcherGuard key={pour.id} watches="Alarms for a pour">
      <OnePour pour={pour} />
    </WatcherGuard>
  ));
}

function OnePour({ pour }: { readonly pour: Pour }): null {
  const { clock, db } = useShop();
  const now = Math.max(useNow(lookEveryMs), clock());
  const parts = usePourParts(pour);
  const source = useMemo(
    (): AlarmSource | undefined =>
      parts && {
        key: `pour/${pour.id}`,
        dues: pourDay(pour, parts, { now, memo: memoOf(db) }).dues,
        since: now - newsMs,
        missed: "rung",
      },
    [pour, parts, now, db],
  );
  useAlarmSource(source);
  return null;
}
