import { useState } from "react";
import type { ScheduleFinding } from "../../../physics/heat/checkSchedule.ts";
import type { InstructionCode, Segment } from "../../../physics/heat/firingSegments.ts";
import { scheduleCurve } from "../../../physics/heat/firingSegments.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { SelectField } from "../../base/forms/SelectField.tsx";
import { Button } from "../../base/parts/Button.tsx";
import { instructionWords } from "./instructionWords.ts";
import { scheduleFindingText } from "./scheduleWords.ts";
import { changedAt, insertedAfter, movedBy, without } from "../../../logbook/fire/segmentEdits.ts";
import { SegmentEditor, SegmentRow } from "./SegmentRow.tsx";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./run.module.css";

const codes = (Object.keys(instructionWords) as readonly InstructionCode[]).map((value) => ({
  value,
  label: instructionWords[value].title,
}));

/** The steps of a plan, each open to be changed; what a change breaks is said at once. */
export function PlanSteps(props: {
  readonly segments: readonly Segment[];
  readonly startC: number;
  readonly findings: readonly ScheduleFinding[];
  readonly isChanged: boolean;
  readonly onChange: (segments: readonly Segment[] | null) => void;
}) {
  const { segments, startC, findings, isChanged, onChange } = props;
  const format = useFormat();
  const [open, setOpen] = useState<number | null>(null);
  const curve = scheduleCurve(segments, startC);
  const add = (kind: Segment["kind"], code: InstructionCode = "openings-checked"): void => {
    const place = open ?? segments.length - 1;
    onChange(insertedAfter(segments, { place, kind, code, startC }));
    setOpen(place + 1);
  };
  return (
    <>
      <ol className={styles["steps"]} aria-label="Steps of the plan">
        {segments.map((part, place) => (
          <SegmentRow
            key={place}
            part={part}
            place={place}
            fromC={curve[place]?.fromC ?? startC}
            faults={findings
              .filter(({ segment }) => segment === place)
              .map((found) => {
                const { title, says } = scheduleFindingText(found, format);
                return `${title}. ${says}`;
              })}
            aside={
              <Button
                kind="quiet"
                pressed={open === place}
                label={`Change step ${place + 1}`}
                onPress={() => setOpen(open === place ? null : place)}
              >
                {open === place ? "Done" : "Change"}
              </Button>
            }
          >
            {open === place && (
              <SegmentEditor
                part={part}
                onChange={(next) => onChange(changedAt(segments, place, next))}
                onMove={(by) => {
                  onChange(movedBy(segments, { place, by }));
                  setOpen(Math.min(segments.length - 1, Math.max(0, place + by)));
                }}
                onRemove={() => {
                  onChange(without(segments, place));
                  setOpen(null);
                }}
              />
            )}
          </SegmentRow>
        ))}
      </ol>
      <details className={styles["screen"]}>
        <summary>Add a step</summary>
        <p className={sheet["soft"]}>
          {open === null ? "It goes last" : `It goes after step ${open + 1}`}; move it from there.
        </p>
        <div className={`${sheet["row"]} ${sheet["middle"]}`}>
          <Button onPress={() => add("ramp")}>A ramp</Button>
          <Button onPress={() => add("hold")}>A hold</Button>
        </div>
        <SelectField
          label="Something to do"
          options={codes}
          value={null}
          empty="Choose"
          onChange={(code) => code !== null && add("instruction", code)}
        />
      </details>
      {isChanged && (
        <div className={styles["screen"]}>
          <Button onPress={() => onChange(null)}>Back to the proposal</Button>
        </div>
      )}
    </>
  );
}
