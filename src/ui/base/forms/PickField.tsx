import { Choice, type ChoiceOption } from "./Choice.tsx";
import css from "./PickField.module.css";

/** A choice with what it is for, and its complaint beneath. */
export function PickField<T extends string>({
  hint,
  error,
  ...choice
}: {
  readonly label: string;
  readonly options: readonly ChoiceOption<T>[];
  readonly value: T | null;
  readonly onChange: (value: T) => void;
  readonly hint?: string | undefined;
  readonly error?: string | undefined;
}) {
  return (
    <div className={css["field"]}>
      <Choice {...choice} />
      {hint !== undefined && <span className={css["hint"]}>{hint}</span>}
      {error !== undefined && (
        <span className={css["error"]} role="alert">
          {error}
        </span>
      )}
    </div>
  );
}
