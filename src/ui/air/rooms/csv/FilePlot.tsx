import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import { useMemo, useState } from "react";
import type { PackedAir } from "../../../../workers/airCsv/packAir.ts";
import { useFormat } from "../../../base/state/useFormat.ts";
import { useWidth } from "../../../base/charts/useWidth.ts";
import { niceRange } from "../airSeries.ts";
import { Strip } from "../Strip.tsx";
import styles from "./csv.module.css";
import { fileDays, thinned } from "./fileSeries.ts";
import { dateFormat } from "../../../base/format/formatters.ts";

/** Everything that was read from the file, temperature over humidity. */
export function FilePlot({ air }: { readonly air: PackedAir }) {
  const format = useFormat();
  const [box, width] = useWidth<HTMLElement>(340);
  const [open, setOpen] = useState(false);
  const places = Math.max(100, Math.round(width));
  const series = useMemo(
    () => ({ temp: thinned(air, air.airC, places), rh: thinned(air, air.rh, places) }),
    [air, places],
  );
  const from = (air.atS[0] ?? 0) * 1000;
  const to = Math.max(from + minuteMs, (air.atS.at(-1) ?? 0) * 1000);
  const temps = series.temp.flatMap((point) => (point === null ? [] : [point.value]));
  const strips = [
    {
      title: "Temperature",
      ...niceRange(temps, 5),
      show: (value: number) => format.show("temp", value),
      lines: [{ key: "temp", look: "main" as const, points: series.temp }],
    },
    {
      title: "Humidity",
      low: 0,
      high: 1,
      show: (value: number) => format.show("percent", value),
      lines: [{ key: "rh", look: "main" as const, points: series.rh }],
    },
  ];
  return (
    <figure ref={box} className={styles["plot"]}>
      {strips.map((strip) => (
        <Strip key={strip.title} strip={strip} from={from} to={to} width={width} />
      ))}
      <details onToggle={(event) => setOpen(event.currentTarget.open)}>
        <summary>Day by day, as a table</summary>
        {open && <Days air={air} />}
      </details>
    </figure>
  );
}

function Days({ air }: { readonly air: PackedAir }) {
  const format = useFormat();
  const day = dateFormat(format.locale, { dateStyle: "medium" });
  const range = (quantity: "temp" | "percent", { low, high }: { low: number; high: number }): string =>
    `${format.show(quantity, low)} to ${format.show(quantity, high)}`;
  return (
    <div className={styles["scroll"]}>
      <table>
        <thead>
          <tr>
            <th scope="col">Day</th>
            <th scope="col">Readings</th>
            <th scope="col">Temperature</th>
            <th scope="col">Humidity</th>
          </tr>
        </thead>
        <tbody>
          {fileDays(air).map(({ at, count, temp, rh }) => (
            <tr key={at}>
              <td>{day.format(at)}</td>
              <td>{format.number(count, 0)}</td>
              <td>{range("temp", temp)}</td>
              <td>{range("percent", rh)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
