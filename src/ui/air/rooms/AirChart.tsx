import { millisecondsInHour as hourMs } from "date-fns/constants";
import type { AirReading } from "../../../logbook/piece/piece.ts";
import { airTitle } from "./airTitle.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { useNow } from "../../base/state/useNow.ts";
import { Plot, PlotFigure } from "../../base/charts/Plot.tsx";
import { PlotDots, PlotLine } from "../../base/charts/PlotMarks.tsx";
import { PlotTable } from "../../base/charts/PlotTable.tsx";
import { plotFrame, ticksFor } from "../../base/charts/plotFrame.ts";
import { clockTicks } from "../../base/charts/timeTicks.ts";
import { useWidth } from "../../base/charts/useWidth.ts";
import { dayTime } from "../../base/format/time.ts";
import { chartHours, fromStart, niceRange, recentReadings } from "../../../logbook/air/airSeries.ts";

/** A sensor's readings lie too close for a dot each. */
const mostDots = 60;

type Strip = {
  readonly title: string;
  readonly low: number;
  readonly high: number;
  readonly show: (value: number) => string;
  readonly points: readonly { readonly at: number; readonly value: number }[];
};

/** Two days of the room's air, temperature over humidity on the same hours, and the same figures as a table. */
export function AirChart({ readings }: { readonly readings: readonly AirReading[] }) {
  const format = useFormat();
  const now = useNow();
  const [box, width] = useWidth<HTMLDivElement>(340);
  const recent = recentReadings(readings, now);
  const from = now - chartHours * hourMs;
  const strips: readonly Strip[] = [
    {
      title: `Temperature, ${format.unit("temp")}`,
      ...niceRange(
        recent.map(({ airC }) => airC),
        5,
      ),
      show: (value) => format.show("temp", value),
      points: recent.map(({ at, airC }) => ({ at, value: airC })),
    },
    {
      title: "Humidity, %",
      low: 0,
      high: 1,
      show: (value) => format.show("percent", value),
      points: recent.map(({ at, rh }) => ({ at, value: rh })),
    },
  ];
  return (
    <PlotFigure
      title={airTitle(recent, format)}
      box={box}
      table={
        <PlotTable
          summary="As a table"
          head={["Read", "Temperature", "Humidity"]}
          rows={() =>
            recent.toReversed().map((reading) => ({
              key: reading.id,
              cells: [
                dayTime(reading.at, now, format.locale),
                format.show("temp", reading.airC),
                format.show("percent", reading.rh),
              ],
            }))
          }
        />
      }
    >
      {strips.map((strip) => (
        <AirStrip key={strip.title} strip={strip} from={from} now={now} width={width} />
      ))}
    </PlotFigure>
  );
}

function AirStrip(props: {
  readonly strip: Strip;
  readonly from: number;
  readonly now: number;
  readonly width: number;
}) {
  const { strip, from, now, width } = props;
  const { locale } = useFormat();
  const { title, low, high, show, points } = strip;
  const frame = plotFrame({ width, left: 58, rightGap: 8, height: 84, x: [from, now], y: [low, high] });
  // Straight from reading to reading and held after the last, as the sums take it.
  const last = points.at(-1);
  const held = last === undefined ? [] : [last, { at: now, value: last.value }];
  return (
    <Plot
      frame={frame}
      label={`${title} over the last two days; the figures are in the table`}
      name={title}
      levels={[low, (low + high) / 2, high].map((value) => ({ at: value, text: show(value) }))}
      ticks={clockTicks(from, now, { most: ticksFor(frame, 72), locale }).filter(
        ({ at }) => frame.x(at) < width - 40,
      )}
    >
      <PlotLine frame={frame} points={fromStart(points, from)} look="ink" />
      <PlotLine frame={frame} points={held} look="ink" broken="dotted" />
      {points.length <= mostDots && <PlotDots frame={frame} points={points.filter(({ at }) => at >= from)} />}
    </Plot>
  );
}
