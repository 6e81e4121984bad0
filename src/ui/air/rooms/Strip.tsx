import { useFormat } from "../../base/state/useFormat.ts";
import { plotTicks } from "./plotTicks.ts";
import styles from "./Strip.module.css";

/** Drawn as a line; null leaves a hole. */
export type StripPoint = { readonly at: number; readonly value: number } | null;

export type StripLine = {
  readonly key: string;
  /** "main" and "second" are read, the other two foretold: dashed. */
  readonly look: "main" | "second" | "main-ahead" | "second-ahead";
  readonly points: readonly StripPoint[];
};

export type StripBandPoint = { readonly at: number; readonly low: number; readonly high: number };
export type StripBand = { readonly key: string; readonly points: readonly StripBandPoint[] };

export type StripData = {
  readonly title: string;
  readonly low: number;
  readonly high: number;
  readonly show: (value: number) => string;
  readonly lines: readonly StripLine[];
  readonly bands?: readonly StripBand[] | undefined;
  /** A level that matters; the title names it. */
  readonly limit?: number | undefined;
};

const height = 156;
const top = 36;
const floor = height - 24;
const left = 62;
const right = 10;

/** Where a time lies on every strip of a plot, px, and back. */
export function stripScale({ from, to, width }: { from: number; to: number; width: number }) {
  const span = width - left - right;
  return {
    x: (at: number): number => left + ((at - from) / (to - from)) * span,
    at: (x: number): number => from + Math.min(1, Math.max(0, (x - left) / span)) * (to - from),
  };
}

/** One quantity over time; its plot may have several under one another, all with the same hours. */
export function Strip(props: {
  readonly strip: StripData;
  readonly from: number;
  readonly to: number;
  readonly width: number;
  readonly now?: number | undefined;
  readonly looked?: number | null | undefined;
  readonly dots?: boolean | undefined;
}) {
  const { strip, from, to, width, now, looked = null, dots = false } = props;
  const { locale } = useFormat();
  const { title, low, high, show, lines, bands = [], limit } = strip;
  const { x } = stripScale({ from, to, width });
  const y = (value: number): number =>
    floor - ((Math.min(high, Math.max(low, value)) - low) / (high - low)) * (floor - top);
  const ticks = plotTicks(from, to, { most: Math.max(2, Math.floor((width - left - right) / 58)), locale });
  return (
    <svg
      viewBox={`0 0 ${width} ${height}`}
      className={styles["strip"]}
      role="img"
      aria-label={`${title}; the figures are in the table`}
    >
      <text className={styles["name"]} x={0} y={14}>
        {title}
      </text>
      {[low, (low + high) / 2, high].map((value) => (
        <g key={value}>
          <path className={styles["rule"]} d={`M${left} ${y(value)}H${width - right}`} />
          <text className={styles["scale"]} x={left - 6} y={y(value) + 4} textAnchor="end">
            {show(value)}
          </text>
        </g>
      ))}
      {ticks.map(({ at, label }) => (
        <text
          key={at}
          className={styles["scale"]}
          x={Math.min(width - 18, x(at))}
          y={height - 5}
          textAnchor="middle"
        >
          {label}
        </text>
      ))}
      {bands.map((band) => (
        <path key={band.key} className={styles["band"]} d={bandPath(band.points, { x, y })} />
      ))}
      {limit !== undefined && limit > low && limit < high && (
        <path className={styles["limit"]} d={`M${left} ${y(limit)}H${width - right}`} />
      )}
      {lines.map((line) => (
        <g key={line.key}>
          <path className={styles[line.look]} d={linePath(line.points, { x, y })} />
          {dots &&
            line.points
              .filter((point) => point !== null && point.at >= from)
              .map(
                (point) =>
                  point && (
                    <circle
                      key={point.at}
                      className={styles["dot"]}
                      cx={x(point.at)}
                      cy={y(point.value)}
                      r={3.5}
                    />
                  ),
              )}
        </g>
      ))}
      {now !== undefined && now > from && now < to && (
        <g>
          <path className={styles["now"]} d={`M${x(now)} ${top - 4}V${floor}`} />
          <text className={styles["nowName"]} x={x(now)} y={top - 8} textAnchor="middle">
            now
          </text>
        </g>
      )}
      {looked !== null && <path className={styles["looked"]} d={`M${x(looked)} ${top}V${floor}`} />}
    </svg>
  );
}

type Scales = { readonly x: (at: number) => number; readonly y: (value: number) => number };

/** A lone point between two holes is drawn as a short stroke, or it would not be seen. */
export function linePath(points: readonly StripPoint[], { x, y }: Scales): string {
  let path = "";
  for (const [i, point] of points.entries()) {
    if (point === null) continue;
    const place = `${x(point.at).toFixed(1)} ${y(point.value).toFixed(1)}`;
    const isFirst = (points[i - 1] ?? null) === null;
    path += `${isFirst ? "M" : "L"}${place}`;
    if (isFirst && (points[i + 1] ?? null) === null) path += "h1";
  }
  return path;
}

function bandPath(band: readonly StripBandPoint[], { x, y }: Scales): string {
  const upper = band.map(({ at, high }) => `${x(at).toFixed(1)} ${y(high).toFixed(1)}`);
  const lower = band.toReversed().map(({ at, low }) => `${x(at).toFixed(1)} ${y(low).toFixed(1)}`);
  return band.length === 0 ? "" : `M${[...upper, ...lower].join("L")}Z`;
}
