import { useState } from "react";
import { Button } from "../../base/parts/Button.tsx";
import { QuantityStepper } from "../../base/forms/QuantityStepper.tsx";
import type { Quantity } from "../../base/format/units.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import styles from "./pour.module.css";

/** A figure that may be skipped: nothing is logged of it until it was set by hand, or taken as planned by its own key. */
export function SkipStepper(props: {
  readonly label: string;
  /** What its key says while nothing was read. */
  readonly unread: string;
  readonly quantity: Quantity;
  /** What the plan says: where the keys begin. */
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
  const [isOpen, setOpen] = useState(false);
  if (value === null && !isOpen) return <Button onPress={() => setOpen(true)}>{unread}</Button>;
  const planned = round(start);
  return (
    <div className={styles["stack"]}>
      <QuantityStepper
        label={label}
        quantity={quantity}
        value={value}
        start={planned}
        onChange={onChange}
        step={step}
        min={low}
        max={high}
      />
      {value === null && (
        <div>
          <Button onPress={() => onChange(planned)} label={`${label}: same as planned`}>
            Same as planned: {format.show(quantity, planned)}
          </Button>
        </div>
      )}
      <div>
        <Button
          kind="quiet"
          onPress={() => {
            setOpen(false);
            onChange(null);
          }}
          label={`${label}: not measured`}
        >
          Not measured
        </Button>
      </div>
    </div>
  );
}
