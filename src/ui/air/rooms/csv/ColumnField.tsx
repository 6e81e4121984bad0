import { SelectField } from "../../../base/forms/SelectField.tsx";
import styles from "./csv.module.css";

type Column<U extends string> = { readonly column: number; readonly unit: U };
type Option = { readonly value: string; readonly label: string };

/** Which column holds a quantity, and in what unit. */
export function ColumnField<U extends string>(props: {
  readonly name: string;
  readonly column: Column<U> | null;
  readonly columns: readonly Option[];
  readonly units: readonly Option[];
  readonly startUnit: U;
  readonly columnHint?: string | undefined;
  readonly unitHint?: string | undefined;
  readonly onChange: (column: Column<U> | null) => void;
}) {
  const { name, column, columns, units, startUnit, columnHint, unitHint, onChange } = props;
  return (
    <div className={styles["column"]}>
      <SelectField
        label={`${name} column`}
        options={columns}
        value={column === null ? null : String(column.column)}
        empty="None"
        {...(columnHint === undefined ? {} : { hint: columnHint })}
        onChange={(value) =>
          onChange(value === null ? null : { column: Number(value), unit: column?.unit ?? startUnit })
        }
      />
      {column !== null && (
        <SelectField
          label={`${name} unit`}
          options={units}
          value={column.unit}
          empty={null}
          {...(unitHint === undefined ? {} : { hint: unitHint })}
          onChange={(value) => value !== null && onChange({ column: column.column, unit: value as U })}
        />
      )}
    </div>
  );
}
