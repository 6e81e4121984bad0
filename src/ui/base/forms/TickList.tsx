import css from "./TickList.module.css";

/** Any number out of a list. */
export function TickList({
  label,
  options,
  ticked,
  onChange,
}: {
  readonly label: string;
  readonly options: readonly { readonly value: string; readonly label: string; readonly hint?: string }[];
  readonly ticked: readonly string[];
  readonly onChange: (ticked: readonly string[]) => void;
}) {
  return (
    <fieldset className={css["list"]}>
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
    </fieldset>
  );
}
