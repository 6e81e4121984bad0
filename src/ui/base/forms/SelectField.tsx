import { useId } from "react";
import css from "./SelectField.module.css";

/** A long list as the phone's own picker; an empty choice says "not known". */
export function SelectField({
  label,
  options,
  value,
  onChange,
  hint,
  empty = "Not known yet",
}: {
  readonly label: string;
  readonly options: readonly { readonly value: string; readonly label: string }[];
  readonly value: string | null;
  readonly onChange: (value: string | null) => void;
  readonly hint?: string;
  readonly empty?: string | null;
}) {
  const id = useId();
  return (
    <div className={css["field"]}>
      <label htmlFor={id}>{label}</label>
      <select
        id={id}
        value={value ?? ""}
        aria-describedby={hint === undefined ? undefined : `${id}-hint`}
        onChange={(event) => onChange(event.target.value === "" ? null : event.target.value)}
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
    </div>
  );
}
