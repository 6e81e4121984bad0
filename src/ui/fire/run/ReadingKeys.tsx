import { useFormat } from "../../base/state/useFormat.ts";
import { nextStep } from "../../base/parts/nextStep.ts";
import { useRepeat } from "../../base/parts/useRepeat.ts";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./reading.module.css";

const steps = [-25, -5, 5, 25] as const;

/** A temperature set with four big keys, by 5 and by 25 of the reader's own unit. */
export function ReadingKeys(props: {
  readonly label: string;
  /** °C; null until a key was touched. */
  readonly value: number | null;
  /** Where the keys begin from while there is no value, °C. */
  readonly from: number;
  /** Shown in its place. */
  readonly unset: string;
  readonly onChange: (valueC: number) => void;
  readonly low: number;
  readonly high: number;
}) {
  const { label, value, from, unset, onChange, low, high } = props;
  const format = useFormat();
  const shown = (canonical: number): number => Number(format.toShown("temp", canonical).toFixed(6));
  const move = (step: number): void => {
    const begin = shown(value ?? from);
    // From a whole five on by the step itself, so that 430 and 25 make 455.
    const size = Math.abs(step) === 25 && begin % 5 === 0 ? 5 : Math.abs(step);
    let next = begin;
    for (let i = 0; i < Math.abs(step) / size; i++)
      next = nextStep({ value: next, step: Math.sign(step) * size, min: shown(low), max: shown(high) });
    onChange(Number(format.fromShown("temp", next).toFixed(6)));
  };
  return (
    <div className={sheet["stack3"]} role="group" aria-label={label}>
      <output className={styles["shown"]} data-unset={value === null || undefined}>
        {value === null ? unset : format.show("temp", value)}
      </output>
      <div className={styles["keys"]}>
        {steps.map((step) => (
          <StepKey key={step} label={label} step={step} onStep={() => move(step)} />
        ))}
      </div>
    </div>
  );
}

function StepKey({
  label,
  step,
  onStep,
}: {
  readonly label: string;
  readonly step: number;
  readonly onStep: () => void;
}) {
  const press = useRepeat(onStep);
  return (
    <button type="button" aria-label={`${label}: ${Math.abs(step)} ${step < 0 ? "less" : "more"}`} {...press}>
      {step < 0 ? "−" : "+"}
      {Math.abs(step)}
    </button>
  );
}
