import { useId } from "react";
import styles from "../parts/field.module.css";

export function TextField(props: {
  readonly label: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly hint?: string | undefined;
  readonly error?: string | null | undefined;
  readonly multiline?: boolean | undefined;
}) {
  const { label, value, onChange, hint, error = null, multiline = false } = props;
  const id = useId();
  const told = [hint === undefined ? "" : `${id}-hint`, error === null ? "" : `${id}-error`].join(" ").trim();
  const shared = {
    id,
    className: styles["input"],
    value,
    "aria-invalid": error !== null,
    "aria-describedby": told === "" ? undefined : told,
    onChange: (event: { target: { value: string } }) => onChange(event.target.value),
  };
  return (
    <div className={styles["field"]}>
      <label htmlFor={id} className={styles["label"]}>
        {label}
      </label>
      {multiline ? <textarea {...shared} rows={3} /> : <input {...shared} type="text" autoComplete="off" />}
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
