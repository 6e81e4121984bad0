import { ArrowDown, ArrowUp, Trash2 } from "lucide-react";
import type { ReactNode } from "react";
import type { Segment } from "../../../physics/heat/firingSegments.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Button } from "../../base/parts/Button.tsx";
import { instructionWords } from "./instructionWords.ts";
import { QuantityStepper } from "../../base/forms/QuantityStepper.tsx";
import { reasonName, reasonWords } from "./reasonWords.ts";
import { segmentTitle } from "./segmentWords.ts";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./run.module.css";

/** One step of a plan: what, and why so. */
export function SegmentRow(props: {
  readonly part: Segment;
  readonly place: number;
  readonly fromC: number;
  readonly faults?: readonly string[] | undefined;
  /** What stands at the right: a key to change it, or a tick. */
  readonly aside?: ReactNode;
  readonly children?: ReactNode;
}) {
  const { part, place, fromC, faults = [], aside, children } = props;
  const format = useFormat();
  const [first, ...others] = part.reasons;
  const isTold = first !== undefined && Object.keys(first.figures).length > 0;
  return (
    <li className={`${styles["step"]} ${part.kind === "instruction" ? styles["instruction"] : ""}`}>
      <span className={styles["place"]}>{place + 1}</span>
      <div className={`${sheet["lines"]} ${styles["stepBody"]}`}>
        <p className={sheet["firm"]}>{segmentTitle(part, fromC, format)}</p>
        {part.kind === "instruction" && <p className={sheet["soft"]}>{instructionWords[part.code].says}</p>}
        {part.kind !== "instruction" && first !== undefined && (
          <p className={sheet["soft"]}>
            {isTold ? reasonWords(first, format) : `Set by: ${reasonName(first.code) ?? first.code}.`}
          </p>
        )}
        {children !== undefined &&
          children !== false &&
          others.map((reason) => (
            <p key={reason.code} className={sheet["soft"]}>
              {reasonWords(reason, format)}
            </p>
          ))}
        {faults.map((words) => (
          <p key={words} className={styles["fault"]}>
            {words}
          </p>
        ))}
      </div>
      {aside}
      {children}
    </li>
  );
}

/** Big keys for one step: how hot, how fast, how long; where it stands; away with it. */
export function SegmentEditor(props: {
  readonly part: Segment;
  readonly onChange: (part: Segment) => void;
  readonly onMove: (by: 1 | -1) => void;
  readonly onRemove: () => void;
}) {
  const { part, onChange, onMove, onRemove } = props;
  const minutes = part.kind === "ramp" ? null : (part.minutes ?? 0);
  return (
    <div className={styles["editor"]}>
      {part.kind === "ramp" && (
        <>
          <QuantityStepper
            label="Temperature"
            quantity="temp"
            step={10}
            value={part.toC}
            min={-20}
            max={1500}
            onChange={(toC) => onChange({ ...part, toC })}
          />
          <QuantityStepper
            label="Rate"
            quantity="rate"
            step={part.rateKPerH < 30 ? 1 : 10}
            value={part.rateKPerH}
            min={1}
            max={5000}
            onChange={(rateKPerH) => onChange({ ...part, rateKPerH })}
          />
        </>
      )}
      {minutes !== null && part.kind !== "ramp" && (
        <QuantityStepper
          label="Time"
          quantity="min"
          step={5}
          value={minutes}
          min={0}
          max={10_080}
          onChange={(to) => onChange({ ...part, minutes: to })}
        />
      )}
      <div className={`${sheet["row"]} ${sheet["middle"]}`}>
        <Button onPress={() => onMove(-1)} label="Move it up">
          <ArrowUp aria-hidden="true" size={20} /> Up
        </Button>
        <Button onPress={() => onMove(1)} label="Move it down">
          <ArrowDown aria-hidden="true" size={20} /> Down
        </Button>
        <Button kind="danger" onPress={onRemove} label="Take it out">
          <Trash2 aria-hidden="true" size={20} /> Take it out
        </Button>
      </div>
    </div>
  );
}
