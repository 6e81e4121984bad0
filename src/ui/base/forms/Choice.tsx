import { useId } from "react";
import styles from "./Choice.module.css";
import field from "../parts/field.module.css";

export type ChoiceOption<T extends string> = {
  readonly value: T;
  readonly label: string;
  readonly hint?: string | undefined;
};

/** One of a few, as keys side by side; a native radio group beneath. */
export function Choice<T extends string>(props: {
  readonly label: string;
  readonly options: readonly ChoiceOption<T>[];
  readonly value: T | null;
  readonly onChange: (value: T) => void;
}) {
  const { label, options, value, onChange } = props;
  const name = useId();
  return (
    <fieldset className={field["field"]}>
      <legend className={field["label"]}>{label}</legend>
      <div className={styles["options"]}>
        {options.map((option) => (
          <label key={option.value} className={styles["option"]}>
            <input
              type="radio"
              name={name}
              value={option.value}
              checked={option.value === value}
              aria-describedby={option.hint === undefined ? undefined : `${name}-${option.value}`}
              onChange={() => onChange(option.value)}
            />
            <span className={styles["text"]}>
              <span>{option.label}</span>
              {option.hint !== undefined && (
                <small id={`${name}-${option.value}`} aria-hidden="true">
                  {option.hint}
                </small>
              )}
            </span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
