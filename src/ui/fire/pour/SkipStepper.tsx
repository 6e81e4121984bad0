import { Button } from "../../base/parts/Button.tsx";
import { QuantityStepper } from "../../base/forms/QuantityStepper.tsx";
import type { Quantity } from "../../base/format/units.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import styles from "./pour.module.css";

/** A figure that may be skipped: nothing is logged of it until it was set by hand. */
export function SkipStepper(props: {
  readonly label: string;
  /** What its key says while nothing was read. */
  readonly unread: string;
  readonly quantity: Quantity;
  readonly start: number;
  /** In the unit that is shown. */
  readonly step: number;
  readonly low: number;
  readonly high: number;
  readonly value: number | null;
  readonly onChange: (value: number | null) => void;
}) {
  const { label, unread, quantity, start, step, low, high, value, onChange } = props;
  const format = useFormat();
  // A round figure of the reader's own unit to begin with.
  const round = (canonical: number): number =>
    format.fromShown(quantity, Math.round(format.toShown(quantity, canonical) / step) * step);
  if (value === null) return <Button onPress={() => onChange(round(start))}>{unread}</Button>;
  return (
    <div className={styles["stack"]}>
      <QuantityStepper
        label={label}
        quantity={quantity}
        value={value}
        onChange={onChange}
        step={step}
        min={low}
        max={high}
      />
      <div>
        <Button kind="quiet" onPress={() => onChange(null)} label={`${label}: not measured`}>
          Not measured
        </Button>
      </div>
    </div>
  );
}
