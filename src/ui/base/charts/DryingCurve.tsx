import { millisecondsInHour as hourMs } from "date-fns/constants";
import type { CoatDrying } from "../../../logbook/piece/standing.ts";
import { useFormat } from "../state/useFormat.ts";
import { clockTime, dayTime, soonTime } from "../format/time.ts";
import { CurveTable } from "./CurveTable.tsx";
import styles from "./DryingCurve.module.css";
import { timeTicks } from "./timeTicks.ts";
import { useWidth } from "./useWidth.ts";
import { weekdayText } from "../format/formatters.ts";

const top = 28;
const height = 132;
const bottom = top + height;
const left = 48;
const right = 12;

/** Water left in the outer coat against time, with the hours in which it comes to ready. */
export function DryingCurve({ drying, now }: { readonly drying: CoatDrying; readonly now: number }) {
  const format = useFormat();
  const [box, width] = useWidth<HTMLDivElement>(340);
  const { curve, readyAt, startKgM2 } = drying;
  const first = curve[0];
  const last = curve.at(-1);
  if (first === undefined || last === undefined || curve.length < 2 || startKgM2 <= 0) return null;
  const most = Math.max(startKgM2, ...curve.map((point) => point.waterKgM2));
  const from = first.at;
  const to = Math.max(now + hourMs, Math.min(last.at, (readyAt.late ?? readyAt.likely ?? last.at) + hourMs));
  const x = (at: number): number =>
    left + ((Math.min(Math.max(at, from), to) - from) / (to - from)) * (width - left - right);
  const y = (waterKgM2: number): number => bottom - (waterKgM2 / most) * height;
  const shown = curve.filter((point) => point.at <= to);
  const line = (points: typeof shown): string =>
    points
      .map(
        (point, place) =>
          `${place === 0 ? "M" : "L"}${x(point.at).toFixed(1)} ${y(point.waterKgM2).toFixed(1)}`,
      )
      .join("");
  const past = shown.filter((point) => point.at <= now);
  const ahead = [...past.slice(-1), ...shown.filter((point) => point.at > now)];
  const { early, likely, late } = readyAt;
  return (
    <figure className={styles["figure"]}>
      <div ref={box}>
        <svg
          className={styles["svg"]}
          width={width}
          height={bottom + 26}
          role="img"
          aria-label={`Water left in coat ${drying.coat.number} against time${likely === null ? "" : `; ready likely ${dayTime(likely, now, format.locale)}`}`}
        >
          {early !== null && (
            <rect
              className={styles["window"]}
              x={x(early)}
              y={top}
              width={Math.max(2, x(late ?? to) - x(early))}
              height={height}
            />
          )}
          {[0, 0.5, 1].map((share) => (
            <g key={share}>
              <path className={styles["rule"]} d={`M${left} ${y(share * most)}H${width - right}`} />
              <text className={styles["level"]} x={left - 6} y={y(share * most) + 4}>
                {format.show("percent", (share * most) / startKgM2)}
              </text>
            </g>
          ))}
          {timeTicks(from, to, Math.floor((width - left - right) / 78)).map((at) => (
            <text key={at} className={styles["tick"]} x={x(at)} y={bottom + 20}>
              {to - from > 40 * hourMs && new Date(at).getHours() === 0
                ? weekdayText(at, format.locale)
                : clockTime(at, format.locale)}
            </text>
          ))}
          {likely !== null && likely <= to && (
            <g>
              <path className={styles["likely"]} d={`M${x(likely)} ${top}V${bottom}`} />
              <text
                x={x(likely) + (x(likely) > width - 70 ? -6 : 6)}
                y={top + 16}
                textAnchor={x(likely) > width - 70 ? "end" : "start"}
              >
                likely
              </text>
            </g>
          )}
          <path className={styles["past"]} d={line(past)} />
          <path className={styles["ahead"]} d={line(ahead)} />
          <path className={styles["now"]} d={`M${x(now)} ${top - 6}V${bottom}`} />
          <text className={styles["nowText"]} x={x(now)} y={top - 12} textAnchor={nowAnchor(x(now), width)}>
            now
          </text>
        </svg>
      </div>
      <figcaption className={styles["caption"]}>
        Water left in the coat, of what it held wet.
        {early !== null &&
          ` Shaded: comes to ready between ${soonTime(early, now, format.locale)} and ${late === null ? "some time beyond the forecast" : soonTime(late, now, format.locale)}.`}
      </figcaption>
      <details>
        <summary>The same as a table</summary>
        <CurveTable points={shown} startKgM2={startKgM2} now={now} />
      </details>
    </figure>
  );
}

const nowAnchor = (x: number, width: number): "start" | "middle" | "end" =>
  x < left + 16 ? "start" : x > width - right - 16 ? "end" : "middle";
