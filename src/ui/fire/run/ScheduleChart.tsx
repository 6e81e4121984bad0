import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import { useFormat } from "../../base/state/useFormat.ts";
import type { Segment } from "../../../physics/heat/firingSegments.ts";
import { scheduleCurve } from "../../../physics/heat/firingSegments.ts";
import { timeTicks } from "../../base/charts/timeTicks.ts";
import { useWidth } from "../../base/charts/useWidth.ts";
import { clockTime } from "../../base/format/time.ts";
import {
  corners,
  hourTicks,
  readPoints,
  shifted,
  tempTicks,
  type Point,
} from "../../base/charts/kilnScale.ts";
import type { Live } from "./scheduleLive.ts";
import { ScheduleTable } from "./ScheduleTable.tsx";
import styles from "./chart.module.css";

const top = 40;
const height = 210;
const bottom = top + height;
const left = 52;
const right = 12;

/** A plan's curve with its numbered steps; in a run with what was read, now, and the way still to go. */
export function ScheduleChart(props: {
  readonly segments: readonly Segment[];
  readonly startC: number;
  readonly live?: Live | undefined;
}) {
  const { segments, startC, live } = props;
  const format = useFormat();
  const [box, width] = useWidth<HTMLDivElement>(340);
  const curve = scheduleCurve(segments, startC);
  const plan = corners(curve);
  const elapsed = live === undefined ? 0 : (live.now - live.startedAt) / minuteMs;
  const read = live === undefined ? [] : readPoints(live.readings, live.startedAt);
  const ahead =
    live === undefined ? [] : shifted(curve, { fromMin: live.nowMin, lateMin: elapsed - live.nowMin });
  const all = [...plan, ...read, ...ahead];
  const endMin = Math.max(30, elapsed, ...all.map(({ minute }) => minute));
  const highC = Math.max(100, ...all.map(({ kilnC }) => kilnC)) * 1.04;
  const x = (minute: number): number => left + (Math.max(0, minute) / endMin) * (width - left - right);
  const y = (kilnC: number): number => bottom - (Math.max(0, kilnC) / highC) * height;
  const line = (points: readonly Point[]): string =>
    points
      .map(({ minute, kilnC }, i) => `${i === 0 ? "M" : "L"}${x(minute).toFixed(1)} ${y(kilnC).toFixed(1)}`)
      .join("");
  const most = Math.max(2, Math.floor((width - left - right) / 54));
  return (
    <figure className={styles["figure"]}>
      <div ref={box}>
        <svg
          className={styles["svg"]}
          width={width}
          height={bottom + 42}
          viewBox={`0 0 ${width} ${bottom + 42}`}
          role="img"
          aria-label={`Kiln temperature against time, ${segments.length} steps${read.length > 0 ? `, ${live?.readings.length} readings` : ""}; the same as a table below`}
        >
          <text className={styles["axis"]} x={left - 46} y={16}>
            Kiln, {format.unit("temp")}
          </text>
          {tempTicks(highC, format).map((kilnC) => (
            <g key={kilnC}>
              <path className={styles["rule"]} d={`M${left} ${y(kilnC)}H${width - right}`} />
              <text className={styles["level"]} x={left - 6} y={y(kilnC) + 4}>
                {format.number(format.toShown("temp", kilnC), 0)}
              </text>
            </g>
          ))}
          {live === undefined
            ? hourTicks(endMin, most).map((minute) => (
                <text key={minute} className={styles["tick"]} x={x(minute)} y={bottom + 18}>
                  {format.number(minute / 60, 2)}
                </text>
              ))
            : timeTicks(live.startedAt, live.startedAt + endMin * minuteMs, most).map((at) => (
                <text
                  key={at}
                  className={styles["tick"]}
                  x={x((at - live.startedAt) / minuteMs)}
                  y={bottom + 18}
                >
                  {clockTime(at, format.locale)}
                </text>
              ))}
          <text className={styles["axisEnd"]} x={width - right} y={bottom + 36}>
            {live === undefined ? "Hours from the start" : "Time of day"}
          </text>
          <path className={styles["plan"]} d={line(plan)} />
          {ahead.length > 0 && <path className={styles["ahead"]} d={line(ahead)} />}
          {read.length > 1 && <path className={styles["read"]} d={line(read)} />}
          {read.length <= 40 &&
            read.map(({ minute, kilnC }, i) => (
              <circle key={`${minute} ${i}`} className={styles["dot"]} cx={x(minute)} cy={y(kilnC)} r="4" />
            ))}
          {curve.map(({ segment, startMin, endMin: until, fromC, toC }) => {
            const part = segments[segment];
            const middle = (x(startMin) + x(until)) / 2;
            if (part?.kind === "instruction")
              return (
                <path
                  key={segment}
                  className={styles["step"]}
                  d={`M${x(startMin)} ${y(fromC) - 6}l6 6l-6 6l-6 -6z`}
                />
              );
            if (x(until) - x(startMin) < 15) return null;
            return (
              <text key={segment} className={styles["number"]} x={middle - 10} y={y((fromC + toC) / 2) - 10}>
                {segment + 1}
              </text>
            );
          })}
          {live !== undefined && (
            <>
              <path className={styles["now"]} d={`M${x(elapsed)} ${top - 8}V${bottom}`} />
              <text
                className={styles["nowText"]}
                x={x(elapsed)}
                y={top - 14}
                textAnchor={x(elapsed) < left + 20 ? "start" : x(elapsed) > width - 40 ? "end" : "middle"}
              >
                now
              </text>
            </>
          )}
        </svg>
      </div>
      <figcaption className={styles["legend"]}>
        <span className={styles["keyPlan"]}>plan, steps numbered</span>
        <span className={styles["keyStep"]}>something to do</span>
        {read.length > 0 && <span className={styles["keyRead"]}>read</span>}
        {ahead.length > 0 && <span className={styles["keyAhead"]}>way to go from here</span>}
      </figcaption>
      <ScheduleTable segments={segments} curve={curve} live={live} />
    </figure>
  );
}
