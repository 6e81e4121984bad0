import { useFormat } from "../state/useFormat.ts";
import type { Quantity } from "../format/units.ts";
import { Stepper } from "../parts/Stepper.tsx";

/** A stepper that goes by round steps of the reader's own unit; canonical units in and out. */
export function QuantityStepper(props: {
  readonly label: string;
  readonly quantity: Quantity;
  /** Null until somebody set it: the first press then sets `start`. */
  readonly value: number | null;
  readonly start?: number | undefined;
  readonly onChange: (value: number) => void;
  /** In the unit that is shown. */
  readonly step: number;
  readonly min: number;
  readonly max: number;
}) {
  const { label, quantity, value, start, onChange, step, min, max } = props;
  const format = useFormat();
  const shown = (canonical: number): number => Number(format.toShown(quantity, canonical).toFixed(6));
  return (
    <Stepper
      label={label}
      value={value === null ? null : shown(value)}
      start={start === undefined ? undefined : shown(start)}
      onChange={(next) => onChange(Number(format.fromShown(quantity, next).toFixed(6)))}
      step={step}
      min={shown(min)}
      max={shown(max)}
      show={(one) => format.show(quantity, format.fromShown(quantity, one))}
    />
  );
}
