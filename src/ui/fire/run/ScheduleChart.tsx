import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import { duration } from "../../base/format/time.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import type { Segment } from "../../../physics/heat/firingSegments.ts";
import { scheduleCurve } from "../../../physics/heat/firingSegments.ts";
import { Plot, PlotFigure } from "../../base/charts/Plot.tsx";
import { PlotDots, PlotLine } from "../../base/charts/PlotMarks.tsx";
import { plotFrame, ticksFor } from "../../base/charts/plotFrame.ts";
import { clockTicks } from "../../base/charts/timeTicks.ts";
import { useWidth } from "../../base/charts/useWidth.ts";
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
  const frame = plotFrame({ width, left: 52, top: 40, height: 210, x: [0, endMin], y: [0, highC] });
  const { x, y } = frame;
  const placed = (points: readonly Point[]) =>
    points.map(({ minute, kilnC }) => ({ at: minute, value: kilnC }));
  const most = ticksFor(frame, 54);
  const topC = Math.max(...plan.map(({ kilnC }) => kilnC), startC);
  const planMin = curve.at(-1)?.endMin ?? 0;
  const lateMin = live === undefined ? 0 : elapsed - live.nowMin;
  return (
    <PlotFigure
      title={
        live === undefined
          ? `Up to ${format.show("temp", topC)} in ${duration(planMin * minuteMs)}`
          : Math.abs(lateMin) < 1
            ? "On plan"
            : `${duration(Math.abs(lateMin) * minuteMs)} ${lateMin > 0 ? "behind" : "ahead of"} the plan`
      }
      box={box}
      legend={
        <>
          <span data-key="plan">plan, steps numbered</span>
          <span data-key="step">something to do</span>
          {read.length > 0 && <span data-key="ember">read</span>}
          {ahead.length > 0 && <span data-key="emberDotted">rest of the plan</span>}
        </>
      }
      table={
        <div className={styles["screen"]}>
          <ScheduleTable segments={segments} curve={curve} live={live} />
        </div>
      }
    >
      <Plot
        frame={frame}
        label={`Kiln temperature against time, ${segments.length} steps${read.length > 0 ? `, ${live?.readings.length} readings` : ""}; the same as a table below`}
        name={`Kiln, ${format.unit("temp")}`}
        levels={tempTicks(highC, format).map((c) => ({
          at: c,
          text: format.number(format.toShown("temp", c), 0),
        }))}
        ticks={
          live === undefined
            ? hourTicks(endMin, most).map((minute) => ({ at: minute, text: format.number(minute / 60, 2) }))
            : clockTicks(live.startedAt, live.startedAt + endMin * minuteMs, {
                most,
                locale: format.locale,
              }).map(({ at, text }) => ({ at: (at - live.startedAt) / minuteMs, text }))
        }
        axisName={live === undefined ? "Hours from the start" : "Time of day"}
        now={live === undefined ? null : elapsed}
      >
        <PlotLine frame={frame} points={placed(plan)} look="plan" />
        <PlotLine frame={frame} points={placed(ahead)} look="ember" broken="dotted" />
        {read.length > 1 && <PlotLine frame={frame} points={placed(read)} look="ember" />}
        {read.length <= 40 && <PlotDots frame={frame} points={placed(read)} />}
        {curve.map(({ segment, startMin, endMin: until, fromC, toC }) => {
          if (segments[segment]?.kind === "instruction")
            return (
              <path
                key={segment}
                className={styles["step"]}
                d={`M${x(startMin)} ${y(fromC) - 6}l6 6l-6 6l-6 -6z`}
              />
            );
          if (x(until) - x(startMin) < 15) return null;
          const middle = (x(startMin) + x(until)) / 2;
          return (
            <text key={segment} className={styles["number"]} x={middle - 10} y={y((fromC + toC) / 2) - 10}>
              {segment + 1}
            </text>
          );
        })}
      </Plot>
    </PlotFigure>
  );
}
