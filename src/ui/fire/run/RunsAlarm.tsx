import { useMemo } from "react";
import type { Run } from "../../../logbook/fire/fireStates.ts";
import { runStanding } from "../../../logbook/fire/runStanding.ts";
import { useRuns } from "../../base/state/live.ts";
import { useNow } from "../../base/state/useNow.ts";
import { WatcherGuard } from "../../base/parts/WatcherGuard.tsx";
import { stepDues } from "./runDues.ts";
import { useRunAlarm } from "./useRunAlarm.ts";

const lookEveryMs = 10_000;

/** Rings what is to be done at every kiln that is on, on whatever screen, while the app lives. Draws nothing. */
export function RunsAlarm() {
  const runs = useRuns("open");
  return (
    <>
      {runs
        ?.filter(({ startedAt }) => startedAt !== null)
        .map((run) => (
          <WatcherGuard key={run.id} watches="Alarms for a kiln run">
            <OneRunAlarm run={run} />
          </WatcherGuard>
        ))}
    </>
  );
}

function OneRunAlarm({ run }: { readonly run: Run }): null {
  const tick = useNow(lookEveryMs);
  const now = Math.max(tick, run.lastAt);
  const dues = useMemo(() => {
    const standing = runStanding(run, now);
    return standing === null ? [] : stepDues(run.id, standing, now);
  }, [run, now]);
  useRunAlarm(run.id, dues, now);
  return null;
}
