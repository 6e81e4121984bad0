import { useMemo } from "react";
import type { Run } from "../../../logbook/fire/fireStates.ts";
import { runStanding } from "../../../logbook/fire/runStanding.ts";
import { useAlarmSource } from "../../base/alarm/alarmSources.ts";
import type { AlarmSource } from "../../base/alarm/ringDue.ts";
import { WatcherGuard } from "../../base/parts/WatcherGuard.tsx";
import { usePieceNames, useRuns } from "../../base/state/live.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { useNow } from "../../base/state/useNow.ts";
import { runDues } from "./runDues.ts";

const lookEveryMs = 10_000;

/** The due times of every kiln that is on. Draws nothing. */
export function RunDues() {
  const runs = useRuns("open");
  return (
    <>
      {runs
        ?.filter(({ startedAt }) => startedAt !== null)
        .map((run) => (
          <WatcherGuard key={run.id} watches="Alarms for a kiln run">
            <OneRun run={run} />
          </WatcherGuard>
        ))}
    </>
  );
}

function OneRun({ run }: { readonly run: Run }): null {
  const tick = useNow(lookEveryMs);
  const names = usePieceNames(run.pieceIds);
  const format = useFormat();
  const now = Math.max(tick, run.lastAt);
  const source = useMemo((): AlarmSource | undefined => {
    const standing = runStanding(run, now);
    if (standing === null || names === undefined) return undefined;
    return {
      key: `run/${run.id}`,
      dues: runDues(run.id, standing, { now, names, format }),
      since: 0,
      missed: "rung",
    };
  }, [run, now, names, format]);
  useAlarmSource(source);
  return null;
}
