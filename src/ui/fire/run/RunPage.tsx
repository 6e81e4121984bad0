import { useMemo } from "react";
import { useParams } from "wouter";
import { isPutAway, type Run } from "../../../logbook/fire/fireStates.ts";
import { useArchive, useFigures, useRack, useRun } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { Empty } from "../../base/parts/Empty.tsx";
import { Page } from "../../base/parts/Page.tsx";
import { streamOf } from "../../../logbook/entries/entry.ts";
import { Timeline } from "../../base/history/Timeline.tsx";
import { soundRun } from "../../../logbook/fire/soundRun.ts";
import { RunBefore } from "./RunBefore.tsx";
import { RunLive } from "./RunLive.tsx";

const purposeNames = { burnout: "Burnout", firing: "Firing", preheat: "Preheat" } as const;

const endWord = (run: Run, result: "done" | "stopped"): string =>
  isPutAway(run) ? "cancelled" : result === "done" ? "over" : "stopped";

/** One kiln run: before its start, under way, or over. */
export function RunPage() {
  const { id = "" } = useParams();
  const found = useRun(id);
  const rack = useRack();
  const archive = useArchive();
  const shop = useFigures();
  // What no kiln could have is named in the log below, and is in none of the figures.
  const run = useMemo(() => (found === undefined || found === null ? null : soundRun(found.run)), [found]);
  if (found === undefined || rack === undefined || archive === undefined) return null;
  if (found === null || run === null)
    return (
      <Page title="No such run" back={paths.fire}>
        <Empty title="This run does not exist">
          <p>It is not in this device’s log.</p>
        </Empty>
      </Page>
    );
  const all = [...rack.map(({ standing }) => standing.piece), ...archive];
  const pieces = run.pieceIds.flatMap((pieceId) => all.find((piece) => piece.id === pieceId) ?? []);
  const kiln = shop?.kilns.find((one) => one.id === run.plan.kilnId) ?? null;
  const name = `${purposeNames[run.plan.purpose]}${kiln === null ? "" : `, ${kiln.name}`}`;
  return (
    <Page title={run.ended === null ? name : `${name}: ${endWord(run, run.ended.result)}`} back={paths.fire}>
      {run.startedAt === null ? (
        <RunBefore run={run} pieces={pieces} kiln={kiln} />
      ) : (
        <RunLive run={run} pieces={pieces} kiln={kiln} />
      )}
      <Timeline stream={streamOf("run", run.id)} entries={found.entries} />
    </Page>
  );
}
