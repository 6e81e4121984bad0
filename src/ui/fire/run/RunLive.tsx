import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import { useMemo } from "react";
import { streamOf } from "../../../logbook/entries/entry.ts";
import type { Run } from "../../../logbook/fire/fireStates.ts";
import type { Piece } from "../../../logbook/piece/piece.ts";
import { heatGiven, runEnergy, runHeat } from "../../../logbook/fire/runHeat.ts";
import { loggedSegments, runStanding, shiftedPlan } from "../../../logbook/fire/runStanding.ts";
import type { Kiln } from "../../../logbook/shop/shopThings.ts";
import { RingCard } from "../../base/alarm/RingCard.tsx";
import { useFleeting } from "../../base/state/fleeting.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { useNow } from "../../base/state/useNow.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { EnergyFacts } from "./EnergyFacts.tsx";
import { FindingBlock } from "./FindingBlock.tsx";
import { RunEnd } from "./RunEnd.tsx";
import { RunFile } from "./RunFile.tsx";
import { RunNext } from "./RunNext.tsx";
import { RunPieces } from "./RunPieces.tsx";
import { RunReading } from "./RunReading.tsx";
import { RunSteps } from "./RunSteps.tsx";
import { runDues } from "./runDues.ts";
import { runFindingText } from "./runFindingText.ts";
import { ScheduleChart } from "./ScheduleChart.tsx";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./run.module.css";

const lookEveryMs = 10_000;
/** A plan this many minutes off is worth moving. */
const worthMovingMin = 10;

type Props = {
  readonly run: Run;
  readonly pieces: readonly Piece[];
  readonly kiln: Kiln | null;
};

/** A run under way, or over: what is next, plan and readings on one chart, what went wrong. */
export function RunLive({ run, pieces, kiln }: Props) {
  const { log } = useShop();
  const format = useFormat();
  const say = useFleeting((fleeting) => fleeting.say);
  const tick = useNow(lookEveryMs);
  const isOver = run.ended !== null;
  const now = run.ended?.at ?? Math.max(tick, run.lastAt);
  const standing = useMemo(() => runStanding(run, now), [run, now]);
  const dues = useMemo(
    () =>
      standing === null || isOver
        ? []
        : runDues(run.id, standing, { now, names: pieces.map(({ plan }) => plan.name), format }),
    [run.id, pieces, standing, now, isOver, format],
  );
  if (standing === null) return null;
  const { run: kilnRun, judged } = standing;
  const stream = streamOf("run", run.id);
  const onTick = async (segment: number): Promise<void> => {
    await log({ do: "log", stream, type: "run-step-done", body: { segment } });
  };
  const elapsedMin = (now - kilnRun.startedAt) / minuteMs;
  const moved =
    isOver || judged.aheadMin === null || Math.abs(judged.aheadMin) < worthMovingMin
      ? null
      : shiftedPlan(kilnRun.segments, { startC: kilnRun.startC, planMin: judged.nowMin, elapsedMin });
  const move = async (): Promise<void> => {
    if (moved === null) return;
    const body = { segments: loggedSegments(moved), note: "moved to where the run is" };
    if ((await log({ do: "log", stream, type: "run-changed", body })).ok) say("Rest of the plan moved.");
  };
  const { basis } = run.plan;
  const energy = runEnergy(run);
  const heat = runHeat(run, heatGiven(run, pieces));

  return (
    <>
      <p className={styles["caution"]}>
        Dipbook does not control the kiln. It needs its own controller and limit, and a person on watch. Local
        codes come first.
      </p>
      {!isOver && <RunNext standing={standing} now={now} onTick={onTick} />}
      {judged.findings.length > 0 && (
        <Card
          title="Findings"
          tone={judged.findings.some(({ level }) => level === "hold") ? "hold" : "watch"}
        >
          {judged.findings.map((found) => (
            <FindingBlock
              key={`${found.code} ${found.limit}`}
              level={found.level}
              text={runFindingText(found, format)}
            />
          ))}
        </Card>
      )}
      {basis === undefined && (
        <p className={sheet["soft"]}>This plan has no shell data, so only its timing is checked.</p>
      )}
      {!isOver && <RunReading runId={run.id} standing={standing} />}
      <Card title="Plan and readings">
        <ScheduleChart
          segments={kilnRun.segments}
          startC={kilnRun.startC}
          live={{ startedAt: kilnRun.startedAt, now, readings: run.readings, nowMin: judged.nowMin }}
        />
        {moved !== null && (
          <div className={`${sheet["row"]} ${sheet["middle"]}`}>
            <Button onPress={move}>Move the rest of the plan to now</Button>
            <span className={sheet["soft"]}>Only the times of the steps to come change.</span>
          </div>
        )}
        {(energy !== null || heat !== null) && (
          <EnergyFacts
            totalMin={elapsedMin}
            topC={heat?.peakC ?? null}
            energyKWh={energy?.energyKWh ?? null}
            isGiven={energy?.basis === "given"}
            kiln={kiln}
            took={isOver ? "Took" : "So far"}
          />
        )}
      </Card>
      {run.ended !== null && (
        <Card title="Readings of a kiln logger">
          <p className={sheet["soft"]}>
            Import the logger’s file after the run: highest temperature, energy, holds and warnings are
            updated.
          </p>
          <RunFile runId={run.id} startedAt={kilnRun.startedAt} endedAt={run.ended.at} />
        </Card>
      )}
      <RunPieces run={run} pieces={pieces} isLive={!isOver} />
      <RunSteps standing={standing} now={now} onTick={isOver ? null : onTick} />
      {!isOver && (
        <RingCard
          dues={dues}
          keys={{
            start: "Keep the screen on and sound alarms here",
            stop: "Stop keeping the screen on",
            calendar: "Calendar file of the next steps",
          }}
          fileName="kiln-run"
        >
          If the run is late, add it to the calendar again. Alarms only remind: a hot kiln needs a controller
          and a person.
        </RingCard>
      )}
      {!isOver && <RunEnd run={run} pieces={pieces} energyKWh={energy?.energyKWh ?? null} />}
    </>
  );
}
