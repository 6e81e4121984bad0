import { useId, type ReactNode } from "react";
import type { BucketSegment, ChartPoint } from "../../../logbook/bucket/bucketChart.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Plot, PlotFigure } from "../../base/charts/Plot.tsx";
import { PlotLevel, PlotLine } from "../../base/charts/PlotMarks.tsx";
import { plotFrame, type PlotFrame } from "../../base/charts/plotFrame.ts";
import { useWidth } from "../../base/charts/useWidth.ts";
import { chartGaps, firstShown, secondsSpan, secondsTicks, type SecondsBand } from "./chartScale.ts";
import { secondsTitle } from "./secondsTitle.ts";
import css from "./SecondsChart.module.css";

const { left, right } = chartGaps;

/**
 * Seconds as found, one step a reading. The band the maker aims at is a field, the limits the bucket draws for itself
 * are lines: the two never say the same thing.
 */
export function SecondsChart({
  segment,
  band,
  now,
  table,
}: {
  readonly segment: BucketSegment;
  readonly band: SecondsBand | null;
  readonly now: number;
  readonly table: ReactNode;
}) {
  const format = useFormat();
  const [box, width] = useWidth<HTMLDivElement>(340);
  const { charted, chart } = segment;
  const room = width - left - right;
  const first = firstShown(segment.points.length, room);
  const points = segment.points.slice(first);
  const { low, high } = secondsSpan({ points, chart }, band);
  // Half a step of air at both ends.
  const along = [-0.5, points.length - 0.5] as const;
  const frame = plotFrame({ width, left, rightGap: right, height: 226, x: along, y: [low, high] });
  const { x, y } = frame;
  const signalled = new Set((chart?.signals ?? []).map(({ index }) => charted[index]?.id));
  const places = new Map(points.map(({ id }, place) => [id, place]));
  const line = charted.flatMap(({ id, seconds }) => {
    const at = places.get(id);
    return at === undefined ? [] : { at, value: seconds };
  });
  const every = Math.max(1, Math.ceil(points.length / (room / 34)));
  const limits = chart === null || chart.basis === "too-few" ? null : chart;
  const ends = limits === null ? [] : [limits.limits.upper, limits.limits.lower];
  return (
    <PlotFigure
      title={secondsTitle(segment, band, { now, locale: format.locale })}
      table={table}
      box={box}
      legend={
        <>
          {first > 0 && (
            <span>
              Readings {first + 1} to {segment.points.length}; the table has them all.
            </span>
          )}
          <span>
            <i className={css["keyBand"]} /> target band
          </span>
          <span>
            <i className={css["keyLimit"]} /> the bucket’s own limits
          </span>
          <span>
            <i className={css["keyHollow"]} /> checked cold or warm, corrected to its temperature
          </span>
          <span>
            <i className={css["keySignal"]} /> a signal
          </span>
          <span>
            <i className={css["keyTop"]} /> topped up before it
          </span>
        </>
      }
    >
      <Plot
        frame={frame}
        label="Viscosity, check by check; the figures are in the table"
        name="Viscosity, s"
        axisName="Check"
        levels={secondsTicks({ low, high }).map((value) => ({
          at: value,
          text: format.number(value, Number.isInteger(value) ? 0 : 1),
        }))}
        ticks={points.flatMap((_, place) =>
          place % every === 0 ? { at: place, text: `${first + place + 1}` } : [],
        )}
        under={band !== null && <Target frame={frame} band={band} />}
      >
        {limits !== null && (
          <>
            {ends.map((value) => (
              <PlotLevel
                key={value}
                frame={frame}
                at={value}
                look={limits.basis === "frozen" ? "control" : "provisional"}
              />
            ))}
            <PlotLevel frame={frame} at={limits.centre} look="centre" />
          </>
        )}
        {/* Beneath the points: neither a band nor a name may hide one. */}
        {ends.map((value, place) => (
          <text
            key={value}
            className={css["limitName"]}
            x={frame.right}
            y={y(value) + (place === 0 ? -7 : 17)}
          >
            limit {format.number(value, 1)}
          </text>
        ))}
        <PlotLine frame={frame} points={line} look="ink" />
        {points.map((point, place) => (
          <Mark
            key={point.id}
            point={point}
            x={x(place)}
            y={y(point.seconds)}
            floor={frame.floor}
            isSignal={signalled.has(point.id)}
          />
        ))}
      </Plot>
    </PlotFigure>
  );
}

/** The band the maker aims at, hatched. */
function Target({ frame, band }: { readonly frame: PlotFrame; readonly band: SecondsBand }) {
  const fill = useId();
  const { left, right, y } = frame;
  return (
    <>
      <defs>
        <pattern id={fill} width={7} height={7} patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <rect width={7} height={7} className={css["bandFill"]} />
          <line y2={7} className={css["bandHatch"]} />
        </pattern>
      </defs>
      <rect
        x={left}
        width={right - left}
        y={y(band.highS)}
        height={Math.max(1, y(band.lowS) - y(band.highS))}
        fill={`url(#${fill})`}
      />
    </>
  );
}

function Mark(props: {
  readonly point: ChartPoint;
  readonly x: number;
  readonly y: number;
  readonly floor: number;
  readonly isSignal: boolean;
}) {
  const { point, x, y, floor, isSignal } = props;
  return (
    <>
      {point.afterCorrection && (
        <path className={css["topped"]} d={`M${x - 4} ${floor}l4 -8l4 8z`}>
          <title>Topped up before this reading</title>
        </path>
      )}
      {isSignal ? (
        <rect
          className={css["signal"]}
          x={x - 6}
          y={y - 6}
          width={12}
          height={12}
          transform={`rotate(45 ${x} ${y})`}
        />
      ) : (
        <circle className={css[point.hollow ? "hollow" : "dot"]} cx={x} cy={y} r={4.5} />
      )}
    </>
  );
}
