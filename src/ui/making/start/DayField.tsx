import { useId } from "react";
import { localText, readLocalText } from "../../base/parts/localTime.ts";
import field from "../../base/parts/field.module.css";
import { useShop } from "../../base/state/shop.tsx";

/** A moment in the past, by the phone's own picker; empty until it is chosen. */
export function DayField(props: {
  readonly label: string;
  readonly hint: string;
  readonly at: number | null;
  readonly onChange: (at: number | null) => void;
  readonly error?: string | undefined;
}) {
  const { label, hint, at, onChange, error } = props;
  const { clock } = useShop();
  const id = useId();
  return (
    <div className={field["field"]}>
      <label htmlFor={id} className={field["label"]}>
        {label}
      </label>
      <input
        id={id}
        className={field["input"]}
        type="datetime-local"
        value={at === null ? "" : localText(at)}
        max={localText(clock())}
        aria-invalid={error !== undefined}
        aria-describedby={`${id}-hint`}
        onChange={(event) => onChange(readLocalText(event.target.value))}
      />
      <span id={`${id}-hint`} className={field["hint"]}>
        {hint}
      </span>
      {error !== undefined && (
        <span className={field["error"]} role="alert">
          {error}
        </span>
      )}
    </div>
  );
}
