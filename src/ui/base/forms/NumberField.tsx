import { useId, useState } from "react";
import { useFormat } from "../state/useFormat.ts";
import { fieldText, parseNumber } from "../format/numberText.ts";
import type { Format, Quantity } from "../format/units.ts";
import styles from "../parts/field.module.css";

type NumberFieldProps = {
  readonly label: string;
  readonly quantity: Quantity;
  /** Canonical units in and out; the person sees and types their own. */
  readonly value: number | null;
  readonly onChange: (value: number | null) => void;
  readonly hint?: string | undefined;
  readonly error?: string | null | undefined;
  readonly min?: number | undefined;
  readonly max?: number | undefined;
};

export function NumberField(props: NumberFieldProps) {
  const { label, quantity, value, onChange, hint, min, max } = props;
  const format = useFormat();
  const id = useId();
  // What was typed stands as it was typed until the value is changed from elsewhere.
  const [typed, setTyped] = useState<{ text: string; gave: number | null } | null>(null);
  const text = typed !== null && typed.gave === value ? typed.text : shownText(format, quantity, value);
  const error = props.error ?? (typed === null ? null : faultOf(text, { format, quantity, min, max }));
  const take = (next: string): void => {
    const shown = parseNumber(next, format.locale);
    const gave = shown === null ? null : format.fromShown(quantity, shown);
    setTyped({ text: next, gave });
    onChange(gave);
  };
  const told = [hint === undefined ? "" : `${id}-hint`, error === null ? "" : `${id}-error`].join(" ").trim();
  const unit = format.unit(quantity);
  return (
    <div className={styles["field"]}>
      <label htmlFor={id} className={styles["label"]}>
        {label}
      </label>
      <span className={styles["withUnit"]}>
        <input
          id={id}
          className={styles["input"]}
          type="text"
          inputMode={min !== undefined && min >= 0 ? "decimal" : "text"}
          autoComplete="off"
          value={text}
          aria-invalid={error !== null}
          aria-describedby={[unit === "" ? "" : `${id}-unit`, told].join(" ").trim() || undefined}
          onChange={(event) => take(event.target.value)}
        />
        <span id={`${id}-unit`} className={styles["unit"]}>
          {unit}
        </span>
      </span>
      {hint !== undefined && (
        <span id={`${id}-hint`} className={styles["hint"]}>
          {hint}
        </span>
      )}
      {error !== null && (
        <span id={`${id}-error`} className={styles["error"]} role="alert">
          {error}
        </span>
      )}
    </div>
  );
}

function shownText(format: Format, quantity: Quantity, value: number | null): string {
  return value === null ? "" : fieldText(format.toShown(quantity, value), format.digits(quantity));
}

type Limits = {
  readonly format: Format;
  readonly quantity: Quantity;
  readonly min: number | undefined;
  readonly max: number | undefined;
};

function faultOf(text: string, { format, quantity, min, max }: Limits): string | null {
  if (text.trim() === "") return null;
  const shown = parseNumber(text, format.locale);
  if (shown === null) return "This is not a number.";
  const canonical = format.fromShown(quantity, shown);
  const slack = 1e-9;
  if (min !== undefined && canonical < min - slack)
    return `The least that makes sense is ${format.show(quantity, min)}.`;
  if (max !== undefined && canonical > max + slack)
    return `The most that makes sense is ${format.show(quantity, max)}.`;
  return null;
}
