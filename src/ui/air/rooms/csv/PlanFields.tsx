import type { Decimal, Delimiter, Encoding } from "../../../../workers/airCsv/airCsvPlan.ts";
import { SelectField } from "../../../base/forms/SelectField.tsx";
import { planGaps } from "../../../../workers/airCsv/airCsvPlan.ts";
import { Card } from "../../../base/parts/Card.tsx";
import { ColumnField } from "./ColumnField.tsx";
import {
  columnOptions,
  planFacts,
  decimals,
  delimiters,
  encodings,
  pressureUnits,
  rhUnits,
  tempUnits,
} from "./planChoices.ts";
import sheet from "../../../base/styles/sheet.module.css";
import styles from "./csv.module.css";
import type { ChangePlan } from "./changePlan.ts";
import { TimeFields } from "./TimeFields.tsx";
import type { AirFileState } from "./useAirFile.ts";

/** How the file is read: all of it guessed, any of it changed here. */
export function PlanFields(props: {
  readonly state: AirFileState;
  readonly change: ChangePlan;
  readonly onDelimiter: (delimiter: Delimiter) => void;
}) {
  const { state, change, onDelimiter } = props;
  const { plan, guess, rows } = state;
  const sample = rows.find(({ line }) => line >= plan.firstLine)?.cells ?? [];
  const columns = columnOptions(plan, sample);
  const unsure = (doubt: (typeof guess.doubts)[number]): string | undefined =>
    guess.doubts.includes(doubt) ? "Guessed from the numbers: please check." : undefined;
  const isOpen = guess.doubts.length > 0 || planGaps(guess.plan).length > 0;
  return (
    <Card title="How it is read">
      <ul className={`${sheet["stack1"]} ${sheet["list"]}`}>
        {planFacts(plan).map((fact) => (
          <li key={fact}>{fact}</li>
        ))}
      </ul>
      <details open={isOpen}>
        <summary>Change how it is read</summary>
        <div className={`${sheet["stack"]} ${styles["fields"]}`}>
          <TimeFields plan={plan} columns={columns} change={change} />
          <div className={styles["pairs"]}>
            <ColumnField
              name="Temperature"
              column={plan.temp}
              columns={columns}
              units={tempUnits}
              startUnit="C"
              columnHint={unsure("temp-column")}
              unitHint={unsure("temp-unit")}
              onChange={(temp) => change({ temp })}
            />
            <ColumnField
              name="Humidity"
              column={plan.rh}
              columns={columns}
              units={rhUnits}
              startUnit="percent"
              columnHint={unsure("rh-column")}
              unitHint={unsure("rh-unit")}
              onChange={(rh) => change({ rh })}
            />
          </div>
          <div className={styles["pairs"]}>
            <ColumnField
              name="Dew point"
              column={plan.dew}
              columns={columns}
              units={tempUnits}
              startUnit="C"
              columnHint="Used where there is no humidity."
              onChange={(dew) => change({ dew })}
            />
            <ColumnField
              name="Pressure"
              column={plan.pressure}
              columns={columns}
              units={pressureUnits}
              startUnit="hPa"
              unitHint={unsure("pressure-unit")}
              onChange={(pressure) => change({ pressure })}
            />
          </div>
          <div className={styles["pairs"]}>
            <SelectField
              label="Between the columns"
              options={delimiters}
              value={plan.delimiter}
              empty={null}
              onChange={(value) => value !== null && onDelimiter(value as Delimiter)}
            />
            <SelectField
              label="Decimal mark"
              options={decimals}
              value={plan.decimal}
              empty={null}
              onChange={(value) => value !== null && change({ decimal: value as Decimal })}
            />
            <SelectField
              label="First line with readings"
              options={rows.map(({ line, cells }) => ({
                value: String(line),
                label: `${line}: ${cells.join(" ").slice(0, 40)}`,
              }))}
              value={String(plan.firstLine)}
              empty={null}
              onChange={(value) => value !== null && change({ firstLine: Number(value) })}
            />
            <SelectField
              label="Encoding"
              options={encodings}
              value={plan.encoding}
              empty={null}
              onChange={(value) => value !== null && change({ encoding: value as Encoding })}
            />
          </div>
        </div>
      </details>
    </Card>
  );
}
