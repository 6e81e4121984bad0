import { useId } from "react";
import field from "../parts/field.module.css";
import css from "./TickList.module.css";

/** Any number out of a list. */
export function TickList<T extends string>({
  label,
  options,
  ticked,
  onChange,
  error,
}: {
  readonly label: string;
  readonly options: readonly { readonly value: T; readonly label: string; readonly hint?: string }[];
  readonly ticked: readonly T[];
  readonly onChange: (ticked: readonly T[]) => void;
  readonly error?: string | undefined;
}) {
  const id = useId();
  return (
    <fieldset className={css["list"]} aria-describedby={error === undefined ? undefined : id}>
      <legend>{label}</legend>
      {options.map(({ value, label: name, hint }) => (
        <label key={value} className={css["tick"]}>
          <input
            type="checkbox"
            checked={ticked.includes(value)}
            onChange={(event) =>
              onChange(event.target.checked ? [...ticked, value] : ticked.filter((one) => one !== value))
            }
          />
          <span>
            {name}
            {hint !== undefined && <small>{hint}</small>}
          </span>
        </label>
      ))}
      {error !== undefined && (
        <span id={id} className={field["error"]} role="alert">
          {error}
        </span>
      )}
    </fieldset>
  );
}
