import { useId } from "react";
import type { BucketSegment, ChartPoint } from "../../../logbook/bucket/bucketChart.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { useWidth } from "../../base/charts/useWidth.ts";
import { secondsSpan, secondsTicks, type SecondsBand } from "./chartScale.ts";
import css from "./SecondsChart.module.css";

const height = 268;
const top = 16;
const foot = 26;
const left = 44;
const right = 12;
/** Marks nearer than this run into each other; a picture too narrow for all shows the newest. */
const closest = 9;
const fewest = 12;

/**
 * Seconds as found, one step a reading. The band the maker aims at is a field, the limits the bucket draws for itself
 * are lines: the two never say the same thing.
 */
export function SecondsChart({
  segment,
  band,
}: {
  readonly segment: BucketSegment;
  readonly band: SecondsBand | null;
}) {
  const format = useFormat();
  const fill = useId();
  const [box, width] = useWidth<HTMLElement>(340);
  const { charted, chart } = segment;
  const floor = height - foot;
  const room = width - left - right;
  const first = Math.max(0, segment.points.length - Math.max(fewest, Math.floor(room / closest)));
  const points = segment.points.slice(first);
  const span = secondsSpan({ points, chart }, band);
  const x = (place: number): number => left + ((place + 0.5) / points.length) * room;
  const y = (seconds: number): number =>
    floor - ((seconds - span.low) / (span.high - span.low)) * (floor - top);
  const seconds = (value: number): string => format.number(value, 1);
  const signalled = new Set((chart?.signals ?? []).map(({ index }) => charted[index]?.id));
  const places = new Map(points.map(({ id }, place) => [id, place]));
  const path = charted
    .filter(({ id }) => places.has(id))
    .map(
      ({ id, seconds: value }, i) => `${i === 0 ? "M" : "L"}${x(places.get(id) ?? 0).toFixed(1)} ${y(value)}`,
    )
    .join("");
  const every = Math.max(1, Math.ceil(points.length / (room / 34)));
  const limits = chart === null || chart.basis === "too-few" ? null : chart;
  return (
    <figure ref={box} className={css["chart"]}>
      <svg
        viewBox={`0 0 ${width} ${height}`}
        role="img"
        aria-label="Cup seconds, reading by reading; the figures are in the table"
      >
        <defs>
          <pattern id={fill} width={7} height={7} patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
            <rect width={7} height={7} className={css["bandFill"]} />
            <line y2={7} className={css["bandHatch"]} />
          </pattern>
        </defs>
        {band !== null && (
          <rect
            x={left}
            width={room}
            y={y(band.highS)}
            height={Math.max(1, y(band.lowS) - y(band.highS))}
            fill={`url(#${fill})`}
          />
        )}
        {secondsTicks(span).map((value) => (
          <g key={value}>
            <line className={css["rule"]} x1={left} x2={left + room} y1={y(value)} y2={y(value)} />
            <text className={css["scale"]} x={left - 6} y={y(value) + 4} textAnchor="end">
              {format.number(value, Number.isInteger(value) ? 0 : 1)}
            </text>
          </g>
        ))}
        <text className={css["scale"]} x={0} y={11}>
          s
        </text>
        {limits !== null && (
          <g className={css[limits.basis === "frozen" ? "frozen" : "provisional"]}>
            {[limits.limits.upper, limits.limits.lower].map((value) => (
              <line key={value} x1={left} x2={left + room} y1={y(value)} y2={y(value)} />
            ))}
          </g>
        )}
        {limits !== null && (
          <line
            className={css["centre"]}
            x1={left}
            x2={left + room}
            y1={y(limits.centre)}
            y2={y(limits.centre)}
          />
        )}
        <path className={css["line"]} d={path} />
        {points.map((point, place) => (
          <Mark
            key={point.id}
            point={point}
            x={x(place)}
            y={y(point.seconds)}
            floor={floor}
            isSignal={signalled.has(point.id)}
          />
        ))}
        {limits !== null && (
          <g className={css["limitName"]}>
            {[limits.limits.upper, limits.limits.lower].map((value) => (
              <text
                key={value}
                x={left + room}
                y={y(value) + (value === limits.limits.upper ? -7 : 17)}
                textAnchor="end"
              >
                limit {seconds(value)}
              </text>
            ))}
          </g>
        )}
        {points.map(({ id }, place) =>
          place % every === 0 ? (
            <text key={id} className={css["scale"]} x={x(place)} y={height - 6} textAnchor="middle">
              {first + place + 1}
            </text>
          ) : null,
        )}
      </svg>
      <figcaption className={css["legend"]}>
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
          <i className={css["keyHollow"]} /> read cold or warm, shown as at its temperature
        </span>
        <span>
          <i className={css["keySignal"]} /> a signal
        </span>
        <span>
          <i className={css["keyTop"]} /> topped up before it
        </span>
      </figcaption>
    </figure>
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
