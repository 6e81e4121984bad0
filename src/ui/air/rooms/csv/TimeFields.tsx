import { useMemo } from "react";
import type { AirCsvPlan } from "../../../../workers/airCsv/airCsvPlan.ts";
import { SelectField } from "../../../base/forms/SelectField.tsx";
import styles from "./csv.module.css";
import type { ChangePlan } from "./changePlan.ts";
import { orders, timeKindOf, timeKinds, withTimeColumn, withTimeKind, zoneOptions } from "./planChoices.ts";
import { deviceZone } from "../../../base/format/formatters.ts";

type Option = { readonly value: string; readonly label: string };

const labels = ["Time column", "Time of day in another column", "am and pm in a third"] as const;

/** Where a line tells its time, how the date is written, and by which clock. */
export function TimeFields({
  plan,
  columns,
  change,
}: {
  readonly plan: AirCsvPlan;
  readonly columns: readonly Option[];
  readonly change: ChangePlan;
}) {
  const { time } = plan;
  const own = deviceZone();
  const chosenZone = time?.kind === "text" ? time.zone : own;
  const zones = useMemo(() => zoneOptions(own, chosenZone), [own, chosenZone]);
  const kindField = (
    <SelectField
      label="Time format"
      options={timeKinds}
      value={timeKindOf(time)}
      empty={null}
      onChange={(kind) => kind !== null && change({ time: withTimeKind(time, kind, own) })}
    />
  );
  if (time?.kind === "epoch")
    return (
      <div className={styles["pairs"]}>
        {kindField}
        <SelectField
          label="Time column"
          options={columns}
          value={String(time.column)}
          empty={null}
          onChange={(value) => value !== null && change({ time: { ...time, column: Number(value) } })}
        />
      </div>
    );
  const held = time?.columns ?? [];
  const text = time ?? { kind: "text" as const, columns: [], order: "ymd" as const, zone: own };
  // A column more can be named only once the one before it is.
  const asked = labels.slice(0, Math.min(labels.length, Math.max(2, held.length + 1)));
  return (
    <div className={styles["pairs"]}>
      {kindField}
      {asked.map((label, place) => (
        <SelectField
          key={label}
          label={label}
          options={columns}
          value={held[place] === undefined ? null : String(held[place])}
          empty={place === 0 ? "Not known yet" : "No"}
          onChange={(value) =>
            change({
              time: {
                ...text,
                columns: withTimeColumn(held, place, value === null ? null : Number(value)),
              },
            })
          }
        />
      ))}
      <SelectField
        label="Date order"
        options={orders}
        value={text.order}
        empty={null}
        onChange={(value) =>
          value !== null && change({ time: { ...text, order: value } }, { saysOrder: true })
        }
      />
      <SelectField
        label="The logger’s clock"
        options={zones}
        value={text.zone}
        empty={null}
        hint="Many loggers stay on winter time. Then choose their UTC offset."
        onChange={(value) => value !== null && change({ time: { ...text, zone: value } })}
      />
    </div>
  );
}
