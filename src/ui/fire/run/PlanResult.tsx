import { Printer } from "lucide-react";
import type { RunBasis } from "../../../logbook/entries/fireBodies.ts";
import type { Kiln } from "../../../logbook/shop/shopThings.ts";
import { checkSchedule } from "../../../physics/heat/checkSchedule.ts";
import type { FiringPlan } from "../../../physics/heat/firingSchedule.ts";
import type { Segment } from "../../../physics/heat/firingSegments.ts";
import { scheduleCurve } from "../../../physics/heat/firingSegments.ts";
import { kilnEnergy } from "../../../physics/heat/kilnPower.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { TextField } from "../../base/forms/TextField.tsx";
import { EnergyFacts } from "./EnergyFacts.tsx";
import { FindingBlock } from "./FindingBlock.tsx";
import { PlanAir } from "./PlanAir.tsx";
import { RunCautions } from "./RunCautions.tsx";
import { PlanSteps } from "./PlanSteps.tsx";
import type { PlanDraft } from "../../../logbook/fire/planDraft.ts";
import { ScheduleChart } from "./ScheduleChart.tsx";
import { noteText, scheduleFindingText } from "./scheduleWords.ts";
import styles from "./run.module.css";

const purposeNames = { burnout: "Burnout", firing: "Firing", preheat: "Preheat" } as const;

/** The plan made for these pieces: curve, steps with their reasons, what to know, and the key that keeps it. */
export function PlanResult(props: {
  readonly plan: FiringPlan;
  readonly draft: PlanDraft;
  readonly set: (changes: Partial<PlanDraft>) => void;
  readonly basis: RunBasis;
  readonly kiln: Kiln | null;
  readonly names: readonly string[];
  readonly onSave: (segments: readonly Segment[]) => Promise<void>;
}) {
  const { plan, draft, set, basis, kiln, names, onSave } = props;
  const format = useFormat();
  const { startC, purpose, note } = draft;
  const segments = draft.segments ?? plan.segments;
  const curve = scheduleCurve(segments, startC);
  const findings = checkSchedule(segments, { limits: plan.limits, startC });
  const ofAll = findings.filter(({ segment }) => segment === null);
  const energy = kilnEnergy({ segments, startC, kiln: basis.kiln, loadKg: basis.shellKg });
  const holds = findings.filter(({ level }) => level === "hold").length;
  return (
    <>
      <Card title="The plan">
        <p className={styles["printOnly"]}>
          {purposeNames[purpose]}: {names.join(", ")}. Shell {format.show("mm", basis.wallMm)}, kiln{" "}
          {kiln?.name ?? "not listed"} to {format.show("temp", basis.kiln.maxC)}.
        </p>
        <ScheduleChart segments={segments} startC={startC} />
        <EnergyFacts
          totalMin={curve.at(-1)?.endMin ?? 0}
          topC={Math.max(startC, ...curve.map(({ toC }) => toC))}
          energyKWh={energy.energyKWh}
          kiln={kiln}
        />
        {ofAll.map((found) => (
          <FindingBlock key={found.code} level={found.level} text={scheduleFindingText(found, format)} />
        ))}
        <PlanSteps
          segments={segments}
          startC={startC}
          findings={findings}
          isChanged={draft.segments !== null}
          onChange={(next) => set({ segments: next })}
        />
      </Card>
      {plan.notes.length > 0 && (
        <Card title="Before you start" tone="watch">
          <ul className={styles["know"]}>
            {plan.notes.map((one) => (
              <li key={one.code}>{noteText(one, format)}</li>
            ))}
          </ul>
        </Card>
      )}
      {plan.air !== null && basis.pattern !== null && (
        <div className={styles["screen"]}>
          <PlanAir
            air={plan.air}
            material={basis.pattern.material}
            massKg={basis.pattern.massKg}
            staysKg={basis.pattern.massKg * (plan.limits.pattern?.staysShare ?? 1)}
          />
        </div>
      )}
      <div className={styles["screen"]}>
        <RunCautions purpose={purpose} basis={basis} />
      </div>
      <div className={styles["screen"]}>
        <TextField
          label="Note"
          value={note}
          onChange={(next) => set({ note: next })}
          hint="Shelf, position, who watches."
        />
      </div>
      {holds > 0 && (
        <p role="status" className={styles["screen"]}>
          The plan exceeds {holds === 1 ? "a limit" : `${holds} limits`}. You can save it anyway; the run
          repeats the warning.
        </p>
      )}
      <div className={styles["screen"]}>
        <Button
          kind="primary"
          size="big"
          disabledReason={
            findings.some(({ code }) => code === "tray-in-too-hot")
              ? "The tray of wax is still in the kiln when it goes hotter. Restore its step first."
              : null
          }
          onPress={() => onSave(segments)}
          debounceMs={700}
        >
          Save this plan
        </Button>
      </div>
      <div className={styles["screen"]}>
        <Button onPress={() => window.print()}>
          <Printer aria-hidden="true" size={20} /> Print it
        </Button>
      </div>
    </>
  );
}
