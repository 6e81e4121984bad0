import type { ReactNode } from "react";
import type { BucketSegment } from "../../../logbook/bucket/bucketChart.ts";
import { bucketRanges, type RangeChart } from "../../../logbook/bucket/bucketRanges.ts";
import { Plot, PlotFigure } from "../../base/charts/Plot.tsx";
import { PlotLevel, PlotLine } from "../../base/charts/PlotMarks.tsx";
import { PlotTable } from "../../base/charts/PlotTable.tsx";
import { plotFrame } from "../../base/charts/plotFrame.ts";
import { useWidth } from "../../base/charts/useWidth.ts";
import { dayTime } from "../../base/format/time.ts";
import { Card } from "../../base/parts/Card.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { chartGaps, firstShown, secondsTicks } from "./chartScale.ts";
import sheet from "../../base/styles/sheet.module.css";
import css from "./SecondsChart.module.css";

/** How far each reading moved from the one before, with the limit of a usual step. */
export function RangeCard({ segment, now }: { readonly segment: BucketSegment; readonly now: number }) {
  const format = useFormat();
  const chart = bucketRanges(segment);
  if (chart === null) return null;
  const seconds = (value: number): string => format.number(value, 2);
  const wide = chart.points.filter(({ isWide }) => isWide);
  return (
    <Card title="Moving range">
      <RangePicture
        chart={chart}
        title={
          chart.limitS === null
            ? "No limit yet: it takes ten checks"
            : wide.length === 0
              ? `No step is wider than its limit of ${seconds(chart.limitS)} s`
              : `${wide.length === 1 ? "One step is" : `${wide.length} steps are`} wider than the limit of ${seconds(chart.limitS)} s`
        }
        table={
          <PlotTable
            summary="Every step in figures"
            head={["No.", "Checked", "Moving range, s", "Note"]}
            rows={chart.points.map(({ id, at, place, rangeS, isWide }) => ({
              key: id,
              cells: [
                place + 1,
                dayTime(at, now, format.locale),
                rangeS === null ? "–" : seconds(rangeS),
                isWide ? "beyond the limit" : "",
              ],
            }))}
          />
        }
      />
      {wide.length > 0 && <p>Check the cup, the temperature and how it was timed.</p>}
      <details>
        <summary>How the limit is calculated</summary>
        <p className={sheet["pale"]}>
          The step from each check to the next. A step across a top-up is left out. Limit: 3.267 × the mean
          step.
        </p>
      </details>
    </Card>
  );
}

function RangePicture({
  chart: { points, meanS, limitS },
  title,
  table,
}: {
  readonly chart: RangeChart;
  readonly title: string;
  readonly table: ReactNode;
}) {
  const format = useFormat();
  const [box, width] = useWidth<HTMLDivElement>(340);
  const { left, right } = chartGaps;
  const first = firstShown(points.length, width - left - right);
  const shown = points.slice(first);
  const high = Math.max(0.4, limitS ?? 0, ...shown.map(({ rangeS }) => rangeS ?? 0)) * 1.12;
  const x = [-0.5, shown.length - 0.5] as const;
  const frame = plotFrame({ width, left, rightGap: right, height: 150, x, y: [0, high] });
  const every = Math.max(1, Math.ceil(shown.length / ((width - left - right) / 34)));
  const line = shown.flatMap(({ rangeS }, place) => (rangeS === null ? [] : { at: place, value: rangeS }));
  return (
    <PlotFigure
      title={title}
      table={table}
      box={box}
      legend={
        <>
          <span>
            <i className={css["keyRangeLimit"]} /> limit of a usual step
          </span>
          <span>
            <i className={css["keySignal"]} /> beyond it
          </span>
        </>
      }
    >
      <Plot
        frame={frame}
        label="Moving range, check by check; the figures are in the table"
        name="Step from the check before, s"
        axisName="Check"
        levels={secondsTicks({ low: 0, high }, 4).map((value) => ({
          at: value,
          text: format.number(value, Number.isInteger(value) ? 0 : 1),
        }))}
        ticks={shown.flatMap(({ place }, i) => (i % every === 0 ? { at: i, text: `${place + 1}` } : []))}
      >
        {limitS !== null && <PlotLevel frame={frame} at={limitS} look="control" />}
        {limitS !== null && <PlotLevel frame={frame} at={meanS} look="centre" />}
        {limitS !== null && (
          <text className={css["limitName"]} x={frame.right} y={frame.y(limitS) - 7}>
            limit {format.number(limitS, 1)}
          </text>
        )}
        <PlotLine frame={frame} points={line} look="ink" />
        {shown.map(({ id, rangeS, isWide }, place) => {
          if (rangeS === null) return null;
          const [cx, cy] = [frame.x(place), frame.y(rangeS)];
          return isWide ? (
            <rect
              key={id}
              className={css["signal"]}
              x={cx - 6}
              y={cy - 6}
              width={12}
              height={12}
              transform={`rotate(45 ${cx} ${cy})`}
            />
          ) : (
            <circle key={id} className={css["dot"]} cx={cx} cy={cy} r={4} />
          );
        })}
      </Plot>
    </PlotFigure>
  );
}
