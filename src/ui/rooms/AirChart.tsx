import type { AirReading } from "../../logbook/piece.ts";
import { useFormat } from "../app/useFormat.ts";
import { useNow } from "../app/useNow.ts";
import { dayTime } from "../format/time.ts";
import { chartHours, fromStart, niceRange, recentReadings } from "./airSeries.ts";
import styles from "./AirChart.module.css";

const width = 640;
const height = 150;
const left = 52;
const hourMs = 60 * 60_000;

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
    <figure className={styles["chart"]}>
      {strips.map((strip) => (
        <AirStrip key={strip.title} strip={strip} from={from} now={now} />
      ))}
      <details>
        <summary>As a table</summary>
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
      </details>
    </figure>
  );
}

function AirStrip({
  strip,
  from,
  now,
}: {
  readonly strip: Strip;
  readonly from: number;
  readonly now: number;
}) {
  const { title, low, high, show, points } = strip;
  const top = 10;
  const floor = height - 24;
  const x = (at: number): number => left + ((Math.max(at, from) - from) / (now - from)) * (width - left - 8);
  const y = (value: number): number => floor - ((value - low) / (high - low)) * (floor - top);
  // Straight from reading to reading and held after the last, as the sums take it.
  const path = fromStart(points, from)
    .map(({ at, value }, i) => `${i === 0 ? "M" : "L"}${x(at)} ${y(value)}`)
    .join("");
  const last = points.at(-1);
  const marks = [0, 12, 24, 36, 48].map((hours) => ({ hours, at: now - hours * hourMs }));
  return (
    <svg
      viewBox={`0 0 ${width} ${height}`}
      className={styles["strip"]}
      role="img"
      aria-label={`${title} over the last two days; the figures are in the table`}
    >
      {[low, (low + high) / 2, high].map((value) => (
        <g key={value}>
          <line className={styles["rule"]} x1={left} x2={width - 8} y1={y(value)} y2={y(value)} />
          <text className={styles["scale"]} x={left - 6} y={y(value) + 5} textAnchor="end">
            {show(value)}
          </text>
        </g>
      ))}
      {marks.map(({ hours, at }) => (
        <text
          key={hours}
          className={styles["scale"]}
          x={x(at)}
          y={height - 4}
          textAnchor={hours === 0 ? "end" : hours === 48 ? "start" : "middle"}
        >
          {hours === 0 ? "now" : `${hours} h ago`}
        </text>
      ))}
      <path className={styles["line"]} d={path} />
      {last !== undefined && (
        <path className={styles["held"]} d={`M${x(last.at)} ${y(last.value)}H${x(now)}`} />
      )}
      {points
        .filter(({ at }) => at >= from)
        .map(({ at, value }) => (
          <circle key={at} className={styles["dot"]} cx={x(at)} cy={y(value)} r={4} />
        ))}
      <text className={styles["name"]} x={left + 4} y={top + 12}>
        {title}
      </text>
    </svg>
  );
}
