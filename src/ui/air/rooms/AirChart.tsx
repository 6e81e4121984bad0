import { millisecondsInHour as hourMs } from "date-fns/constants";
import { useState } from "react";
import type { AirReading } from "../../../logbook/piece/piece.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { useNow } from "../../base/state/useNow.ts";
import { timeTicks } from "../../base/charts/timeTicks.ts";
import { useWidth } from "../../base/charts/useWidth.ts";
import { clockTime, dayTime } from "../../base/format/time.ts";
import { chartHours, fromStart, niceRange, recentReadings } from "./airSeries.ts";
import styles from "./AirChart.module.css";

const height = 132;
const left = 58;
const right = 8;
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
  const [box, width] = useWidth<HTMLElement>(340);
  const [open, setOpen] = useState(false);
  const recent = recentReadings(readings, now);
  const from = now - chartHours * hourMs;
  const strips: readonly Strip[] = [
    {
      title: "Temperature",
      ...niceRange(
        recent.map(({ airC }) => airC),
        5,
      ),
      show: (value) => format.show("temp", value),
      points: recent.map(({ at, airC }) => ({ at, value: airC })),
    },
    {
      title: "Humidity",
      low: 0,
      high: 1,
      show: (value) => format.show("percent", value),
      points: recent.map(({ at, rh }) => ({ at, value: rh })),
    },
  ];
  return (
    <figure ref={box} className={styles["chart"]}>
      {strips.map((strip) => (
        <AirStrip key={strip.title} strip={strip} from={from} now={now} width={width} />
      ))}
      <details onToggle={(event) => setOpen(event.currentTarget.open)}>
        <summary>As a table</summary>
        {open && (
          <table>
            <thead>
              <tr>
                <th scope="col">Read</th>
                <th scope="col">Temperature</th>
                <th scope="col">Humidity</th>
              </tr>
            </thead>
            <tbody>
              {recent.toReversed().map((reading) => (
                <tr key={reading.id}>
                  <td>{dayTime(reading.at, now, format.locale)}</td>
                  <td>{format.show("temp", reading.airC)}</td>
                  <td>{format.show("percent", reading.rh)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        )}
      </details>
    </figure>
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
  const top = 26;
  const floor = height - 24;
  const x = (at: number): number =>
    left + ((Math.max(at, from) - from) / (now - from)) * (width - left - right);
  const y = (value: number): number => floor - ((value - low) / (high - low)) * (floor - top);
  // Straight from reading to reading and held after the last, as the sums take it.
  const path = fromStart(points, from)
    .map(({ at, value }, i) => `${i === 0 ? "M" : "L"}${x(at)} ${y(value)}`)
    .join("");
  const last = points.at(-1);
  const ticks = timeTicks(from, now, width < 480 ? 4 : 8).filter((at) => x(at) < width - 40);
  return (
    <svg
      viewBox={`0 0 ${width} ${height}`}
      className={styles["strip"]}
      role="img"
      aria-label={`${title} over the last two days; the figures are in the table`}
    >
      <text className={styles["name"]} x={0} y={14}>
        {title}
      </text>
      {[low, (low + high) / 2, high].map((value) => (
        <g key={value}>
          <line className={styles["rule"]} x1={left} x2={width - right} y1={y(value)} y2={y(value)} />
          <text className={styles["scale"]} x={left - 6} y={y(value) + 4} textAnchor="end">
            {show(value)}
          </text>
        </g>
      ))}
      {ticks.map((at) => (
        <text key={at} className={styles["scale"]} x={x(at)} y={height - 5} textAnchor="middle">
          {clockTime(at, locale)}
        </text>
      ))}
      <path className={styles["line"]} d={path} />
      {last !== undefined && (
        <path className={styles["held"]} d={`M${x(last.at)} ${y(last.value)}H${x(now)}`} />
      )}
      {(points.length > mostDots ? [] : points)
        .filter(({ at }) => at >= from)
        .map(({ at, value }) => (
          <circle key={at} className={styles["dot"]} cx={x(at)} cy={y(value)} r={3.5} />
        ))}
    </svg>
  );
}
