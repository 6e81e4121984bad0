import type { AirCsvPlan } from "../../../../workers/airCsv/airCsvPlan.ts";
import { useFormat } from "../../../base/state/useFormat.ts";
import { Button } from "../../../base/parts/Button.tsx";
import { Card } from "../../../base/parts/Card.tsx";
import sheet from "../../../base/styles/sheet.module.css";
import styles from "./csv.module.css";
import type { ChangePlan } from "./changePlan.ts";
import { orders } from "./planChoices.ts";
import type { Guessed } from "./useAirFile.ts";
import { dateFormat } from "../../../base/format/formatters.ts";

/** The same line read both ways: only the person knows which it is. */
export function OpenDateCard(props: {
  readonly openDate: NonNullable<Guessed["openDate"]>;
  readonly plan: AirCsvPlan;
  readonly change: ChangePlan;
}) {
  const { openDate, plan, change } = props;
  const { locale } = useFormat();
  const { time } = plan;
  if (time?.kind !== "text") return null;
  const zone = /^[+-]/.test(time.zone) ? undefined : time.zone;
  const write = (atS: number): string =>
    dateFormat(locale, { dateStyle: "long", timeStyle: "short", timeZone: zone }).format(atS * 1000);
  return (
    <Card title={`Which day is “${openDate.text}”?`} tone="watch">
      <p>Day and month can’t be told apart in this file. Choose the order to go on.</p>
      <div className={`${sheet["row23"]} ${sheet["top"]}`}>
        {openDate.readings.map(({ order, atS }) => (
          <Button key={order} onPress={() => change({ time: { ...time, order } }, { saysOrder: true })}>
            <span className={`${sheet["lines"]} ${styles["answer"]}`}>
              {write(atS)}
              <small>{orders.find(({ value }) => value === order)?.label.toLowerCase()}</small>
            </span>
          </Button>
        ))}
      </div>
    </Card>
  );
}
