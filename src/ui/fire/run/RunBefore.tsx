import { useState } from "react";
import { startRun } from "../../../logbook/acts/startRun.ts";
import { streamOf } from "../../../logbook/entries/entry.ts";
import type { Run } from "../../../logbook/fire/fireStates.ts";
import type { Piece } from "../../../logbook/piece/piece.ts";
import { energyKWhOf, runLimits, startRefusal } from "../../../logbook/fire/runBasis.ts";
import { plannedSegments } from "../../../logbook/fire/runStanding.ts";
import type { Kiln } from "../../../logbook/shop/shopThings.ts";
import { checkSchedule } from "../../../physics/heat/checkSchedule.ts";
import { scheduleCurve } from "../../../physics/heat/firingSegments.ts";
import { useFleeting } from "../../base/state/fleeting.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useUndoing } from "../../base/state/useUndoing.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { WasPutAway } from "../../base/parts/WasPutAway.tsx";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { EnergyFacts } from "./EnergyFacts.tsx";
import { FindingBlock } from "./FindingBlock.tsx";
import { QuantityStepper } from "../../base/forms/QuantityStepper.tsx";
import { RunCautions } from "./RunCautions.tsx";
import { RunPieces } from "./RunPieces.tsx";
import { ScheduleChart } from "./ScheduleChart.tsx";
import { scheduleRefusalText, scheduleFindingText } from "./scheduleWords.ts";
import { SegmentRow } from "./SegmentRow.tsx";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./run.module.css";

/** A plan that waits for its start, or was put away without one. */
export function RunBefore({
  run,
  pieces,
  kiln,
}: {
  readonly run: Run;
  readonly pieces: readonly Piece[];
  readonly kiln: Kiln | null;
}) {
  const { log, logAll } = useShop();
  const undoing = useUndoing();
  const format = useFormat();
  const say = useFleeting((fleeting) => fleeting.say);
  const { startC, purpose, note, basis } = run.plan;
  const [kilnC, setKilnC] = useState<number | null>(null);
  const segments = plannedSegments(run.segments);
  const curve = scheduleCurve(segments, startC);
  const limits = runLimits(run.plan);
  const findings = limits === null ? [] : checkSchedule(segments, { limits, startC });
  const energyKWh = basis === undefined ? null : energyKWhOf(basis, { segments, startC });
  const refused = kilnC === null ? null : startRefusal(run.plan, kilnC);
  const putAway = async (): Promise<void> => {
    const body = { result: "stopped" } as const;
    const done = await log({ do: "log", stream: streamOf("run", run.id), type: "run-ended", body });
    if (done.ok) say("Plan cancelled.");
  };
  const start = async (): Promise<void> => {
    if (kilnC === null) return;
    const begun = await logAll(startRun(run, pieces, { kilnC }));
    if (begun.ok) say("Run started.", "done", undoing(begun));
  };
  return (
    <>
      {run.ended !== null && <WasPutAway stream={streamOf("run", run.id)} ended={run.ended} />}
      {run.ended === null && (
        <p className={styles["caution"]}>
          Dipbook does not control the kiln. Set its controller and its limit before you start.
        </p>
      )}
      <RunPieces run={run} pieces={pieces} isLive={false} />
      <Card title="The plan">
        <ScheduleChart segments={segments} startC={startC} />
        {energyKWh !== null && (
          <EnergyFacts
            totalMin={curve.at(-1)?.endMin ?? 0}
            topC={Math.max(startC, ...curve.map(({ toC }) => toC))}
            energyKWh={energyKWh}
            kiln={kiln}
          />
        )}
        {findings.map((found, i) => (
          <FindingBlock
            key={`${found.code} ${i}`}
            level={found.level}
            text={scheduleFindingText(found, format)}
          />
        ))}
        {note !== undefined && <p>{note}</p>}
        <ol className={styles["steps"]} aria-label="Steps of the plan">
          {segments.map((part, place) => (
            <SegmentRow key={place} part={part} place={place} fromC={curve[place]?.fromC ?? startC} />
          ))}
        </ol>
      </Card>
      {run.ended === null && (
        <>
          <div className={styles["screen"]}>
            <RunCautions purpose={purpose} basis={basis ?? null} />
          </div>
          <div className={`${styles["screen"]} ${sheet["stack"]}`}>
            <QuantityStepper
              label="Kiln now"
              quantity="temp"
              step={5}
              value={kilnC}
              start={startC}
              min={-30}
              max={1400}
              onChange={setKilnC}
            />
            {kilnC === null && (
              <Button onPress={() => setKilnC(startC)}>Same as planned: {format.show("temp", startC)}</Button>
            )}
            {refused !== null && <FindingBlock level="hold" text={scheduleRefusalText(refused, format)} />}
            <Button
              kind="primary"
              size="big"
              onPress={start}
              debounceMs={700}
              disabledReason={kilnC === null ? "Set what the kiln shows now." : null}
            >
              Start the run
            </Button>
            <Button kind="quiet" onPress={putAway} debounceMs={700}>
              Cancel plan
            </Button>
          </div>
        </>
      )}
    </>
  );
}
