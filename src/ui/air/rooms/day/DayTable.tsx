import { weekdayText } from "../../../base/format/formatters.ts";
import { millisecondsInHour as hourMs } from "date-fns/constants";
import { useFormat } from "../../../base/state/useFormat.ts";
import { PlotTable } from "../../../base/charts/PlotTable.tsx";
import { clockTime } from "../../../base/format/time.ts";
import { type Day, dayPointAt } from "../../../../logbook/air/dayAir.ts";

/** The chart's figures hour by hour; made when it is opened. */
export function DayTable({ day }: { readonly day: Day }) {
  const format = useFormat();
  const hours = Array.from(
    { length: Math.floor((day.to - day.from) / hourMs) + 1 },
    (_, hour) => day.from + hour * hourMs,
  );
  return (
    <PlotTable
      summary="As a table"
      head={["When", "Temp.", "Hum.", "Dew point", "Takes up"]}
      rows={() =>
        hours.map((at) => {
          const found = dayPointAt(day, at);
          const when = `${weekdayText(at, format.locale)} ${clockTime(at, format.locale)}${found?.isForetold === true ? " (forecast)" : ""}`;
          if (found === null) return { key: `${at}`, cells: [when, "no reading"] };
          const { tempC, rh, dewC, deficitGM3 } = found.point;
          return {
            key: `${at}`,
            cells: [
              when,
              format.show("temp", tempC),
              format.show("percent", rh),
              dewC === null ? "none" : format.show("temp", dewC),
              format.show("gM3", deficitGM3),
            ],
          };
        })
      }
    />
  );
}
