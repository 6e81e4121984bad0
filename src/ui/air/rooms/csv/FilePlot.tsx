import { dateFormat } from "../../../base/format/formatters.ts";
import { useMemo } from "react";
import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import type { PackedAir } from "../../../../workers/airCsv/packAir.ts";
import { airTitle } from "../airTitle.ts";
import { useFormat } from "../../../base/state/useFormat.ts";
import { PlotFigure } from "../../../base/charts/Plot.tsx";
import { PlotTable } from "../../../base/charts/PlotTable.tsx";
import { useWidth } from "../../../base/charts/useWidth.ts";
import { niceRange } from "../../../../logbook/air/airSeries.ts";
import { Strip } from "../Strip.tsx";
import { fileDays, thinned } from "./fileSeries.ts";

/** Everything that was read from the file, temperature over humidity. */
export function FilePlot({ air }: { readonly air: PackedAir }) {
  const format = useFormat();
  const [box, width] = useWidth<HTMLDivElement>(340);
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
      title: `Temperature, ${format.unit("temp")}`,
      ...niceRange(temps, 5),
      show: (value: number) => format.show("temp", value),
      lines: [{ key: "temp", look: "ink" as const, points: series.temp }],
    },
    {
      title: "Humidity, %",
      low: 0,
      high: 1,
      show: (value: number) => format.show("percent", value),
      lines: [{ key: "rh", look: "ink" as const, points: series.rh }],
    },
  ];
  const day = dateFormat(format.locale, { dateStyle: "medium" });
  const range = (quantity: "temp" | "percent", { low, high }: { low: number; high: number }): string =>
    `${format.show(quantity, low)} to ${format.show(quantity, high)}`;
  return (
    <PlotFigure
      title={airTitle(
        fileDays(air).flatMap(({ temp, rh }) => [
          { airC: temp.low, rh: rh.low },
          { airC: temp.high, rh: rh.high },
        ]),
        format,
      )}
      box={box}
      table={
        <PlotTable
          summary="Day by day, as a table"
          head={["Day", "Readings", "Temperature", "Humidity"]}
          rows={() =>
            fileDays(air).map(({ at, count, temp, rh }) => ({
              key: `${at}`,
              cells: [day.format(at), format.number(count, 0), range("temp", temp), range("percent", rh)],
            }))
          }
        />
      }
    >
      {strips.map((strip) => (
        <Strip key={strip.title} strip={strip} from={from} to={to} width={width} />
      ))}
    </PlotFigure>
  );
}
