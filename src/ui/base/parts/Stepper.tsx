import { Minus, Plus } from "lucide-react";
import { useId, type KeyboardEvent } from "react";
import sheet from "../styles/sheet.module.css";
import styles from "./Stepper.module.css";
import { nextStep } from "./nextStep.ts";
import { useRepeat } from "./useRepeat.ts";

type StepperProps = {
  readonly label: string;
  /** Null while nothing is set: the first press sets `start`. */
  readonly value: number | null;
  readonly start?: number | undefined;
  readonly onChange: (value: number) => void;
  readonly step: number;
  readonly min: number;
  readonly max: number;
  readonly show: (value: number) => string;
};

/** A number set with two big keys and no keyboard; a key held down goes on stepping. */
export function Stepper({ label, value, start, onChange, step, min, max, show }: StepperProps) {
  const labelId = useId();
  const shown = value === null ? "not set" : show(value);
  const move = (direction: 1 | -1): void => {
    if (value === null) return onChange(start ?? min);
    const next = nextStep({ value, step: step * direction, min, max });
    if (next !== value) onChange(next);
  };
  const less = useRepeat(() => move(-1));
  const more = useRepeat(() => move(1));
  const onKeyDown = (event: KeyboardEvent): void => {
    const go = stepKeys[event.key];
    if (go === undefined) return;
    event.preventDefault();
    if (go === "min") onChange(min);
    else if (go === "max") onChange(max);
    else move(go);
  };
  return (
    <div className={sheet["stack1"]} role="group" aria-labelledby={labelId}>
      <span id={labelId} className={sheet["firm"]}>
        {label}
      </span>
      <div className={`${sheet["frame"]} ${styles["row"]}`}>
        <button
          type="button"
          aria-label={`${label}: less`}
          aria-disabled={(value !== null && value <= min) || undefined}
          {...less}
        >
          <Minus aria-hidden="true" />
        </button>
        <span
          className={styles["value"]}
          role="spinbutton"
          tabIndex={0}
          aria-labelledby={labelId}
          aria-valuenow={value ?? undefined}
          aria-valuemin={min}
          aria-valuemax={max}
          aria-valuetext={shown}
          onKeyDown={onKeyDown}
        >
          {shown}
        </span>
        <button
          type="button"
          aria-label={`${label}: more`}
          aria-disabled={(value !== null && value >= max) || undefined}
          {...more}
        >
          <Plus aria-hidden="true" />
        </button>
      </div>
    </div>
  );
}

const stepKeys: Readonly<Record<string, 1 | -1 | "min" | "max" | undefined>> = {
  ArrowUp: 1,
  ArrowRight: 1,
  ArrowDown: -1,
  ArrowLeft: -1,
  Home: "min",
  End: "max",
};
