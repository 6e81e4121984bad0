import { useId } from "react";
import field from "../parts/field.module.css";
import css from "./SelectField.module.css";

/** A long list as the phone's own picker; an empty choice says "not known". */
export function SelectField<T extends string>({
  label,
  options,
  value,
  onChange,
  hint,
  error,
  empty = "Not known yet",
}: {
  readonly label: string;
  readonly options: readonly { readonly value: T; readonly label: string }[];
  readonly value: T | null;
  readonly onChange: (value: T | null) => void;
  readonly hint?: string | undefined;
  readonly error?: string | undefined;
  readonly empty?: string | null | undefined;
}) {
  const id = useId();
  const told = [hint === undefined ? "" : `${id}-hint`, error === undefined ? "" : `${id}-error`]
    .join(" ")
    .trim();
  return (
    <div className={css["field"]}>
      <label htmlFor={id}>{label}</label>
      <select
        id={id}
        value={value ?? ""}
        aria-invalid={error === undefined ? undefined : true}
        aria-describedby={told === "" ? undefined : told}
        onChange={(event) =>
          onChange(options.find(({ value: one }) => one === event.target.value)?.value ?? null)
        }
      >
        {empty !== null && <option value="">{empty}</option>}
        {options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.label}
          </option>
        ))}
      </select>
      {hint !== undefined && (
        <p id={`${id}-hint`} className={css["hint"]}>
          {hint}
        </p>
      )}
      {error !== undefined && (
        <span id={`${id}-error`} className={field["error"]} role="alert">
          {error}
        </span>
      )}
    </div>
  );
}
