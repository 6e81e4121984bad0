import { millisecondsInHour as hourMs } from "date-fns/constants";
import { useState } from "react";
import { useFormat } from "../../../base/state/useFormat.ts";
import { weekdayText } from "../../../base/format/formatters.ts";
import { clockTime } from "../../../base/format/time.ts";
import type { Day } from "./dayAir.ts";
import { pointAt } from "./dayAir.ts";
import styles from "./day.module.css";

/** The chart's figures hour by hour; made when it is opened. */
export function DayTable({ day }: { readonly day: Day }) {
  const [open, setOpen] = useState(false);
  return (
    <details onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>As a table</summary>
      {open && <Hours day={day} />}
    </details>
  );
}

function Hours({ day }: { readonly day: Day }) {
  const format = useFormat();
  const hours = Array.from(
    { length: Math.floor((day.to - day.from) / hourMs) + 1 },
    (_, hour) => day.from + hour * hourMs,
  );
  return (
    <div className={styles["scroll"]}>
      <table>
        <thead>
          <tr>
            <th scope="col">When</th>
            <th scope="col">Temp.</th>
            <th scope="col">Hum.</th>
            <th scope="col">Dew point</th>
            <th scope="col">Takes up</th>
          </tr>
        </thead>
        <tbody>
          {hours.map((at) => {
            const found = pointAt(day, at);
            return (
              <tr key={at}>
                <td>
                  {weekdayText(at, format.locale)} {clockTime(at, format.locale)}
                  {found?.isForetold === true && " (foretold)"}
                </td>
                {found === null ? (
                  <td colSpan={4}>not read</td>
                ) : (
                  <>
                    <td>{format.show("temp", found.point.tempC)}</td>
                    <td>{format.show("percent", found.point.rh)}</td>
                    <td>{found.point.dewC === null ? "none" : format.show("temp", found.point.dewC)}</td>
                    <td>{format.show("gM3", found.point.deficitGM3)}</td>
                  </>
                )}
              </tr>
            );
          })}
        </tbody>
      </table>
    </div>
  );
}
