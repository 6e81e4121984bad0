import { bandPath, linePath, type PlotFrame, type PlotPoint, type PlotReach } from "./plotFrame.ts";
import css from "./plot.module.css";

/** The strokes of a line, by colour, and how it is broken. */
type LineLook = "ink" | "water" | "second" | "ember" | "emberThin" | "soft" | "plan";
type Broken = "ahead" | "dotted";

export function PlotLine(props: {
  readonly frame: PlotFrame;
  readonly points: readonly PlotPoint[];
  readonly look: LineLook;
  readonly broken?: Broken | undefined;
}) {
  const { frame, points, look, broken } = props;
  const path = linePath(points, frame);
  if (path === "") return null;
  const strokes = ["line", look, broken].filter((one) => one !== undefined).map((one) => css[one]);
  return <path className={strokes.join(" ")} d={path} />;
}

/** Between low and high along the bottom. */
export function PlotBand(props: {
  readonly frame: PlotFrame;
  readonly points: readonly PlotReach[];
  readonly look?: "band" | "waterBand";
}) {
  const { frame, points, look = "band" } = props;
  return <path className={css[look]} d={bandPath(points, frame)} />;
}

/** A field between corners. */
export function PlotField(props: { readonly frame: PlotFrame; readonly corners: readonly PlotPoint[] }) {
  return <path className={css["band"]} d={`${linePath(props.corners, props.frame)}Z`} />;
}

/** A stretch of the bottom axis, shaded through the panel; never thinner than can be seen. */
export function PlotSpan(props: { readonly frame: PlotFrame; readonly from: number; readonly to: number }) {
  const { frame, from, to } = props;
  const { x, top, bottom } = frame;
  return (
    <rect
      className={css["band"]}
      x={x(from)}
      y={top}
      width={Math.max(2, x(to) - x(from))}
      height={bottom - top}
    />
  );
}

/** A level that matters, across the panel, and its name over or under its beginning. */
export function PlotLevel(props: {
  readonly frame: PlotFrame;
  readonly at: number;
  readonly look: "limit" | "ready" | "least" | "mark" | "control" | "provisional" | "centre" | "axis";
  readonly name?: string;
  readonly isNameUnder?: boolean;
}) {
  const { frame, at, look, name, isNameUnder = false } = props;
  const y = frame.y(at);
  return (
    <>
      <path className={css[look]} d={`M${frame.left} ${y}H${frame.right}`} />
      {name !== undefined && (
        <text className={css[`${look}Name`]} x={frame.left + 6} y={y + (isNameUnder ? 17 : -5)}>
          {name}
        </text>
      )}
    </>
  );
}

/** A moment that matters, through the whole picture, and its name beside its upper end. */
export function PlotUpright(props: {
  readonly frame: PlotFrame;
  readonly at: number;
  readonly look: "now" | "likely" | "looked" | "scrub";
  readonly name?: string;
}) {
  const { frame, at, look, name } = props;
  const x = frame.x(at);
  const isNearEnd = x > frame.right - 58;
  return (
    <>
      <path className={css[look]} d={`M${x} ${frame.top}V${frame.floor}`} />
      {name !== undefined && (
        <text x={x + (isNearEnd ? -6 : 6)} y={frame.top + 16} textAnchor={isNearEnd ? "end" : "start"}>
          {name}
        </text>
      )}
    </>
  );
}

/** What was read, point by point. */
export function PlotDots(props: { readonly frame: PlotFrame; readonly points: readonly PlotPoint[] }) {
  const { frame, points } = props;
  return points.map(
    (point, place) =>
      point !== null && (
        <circle
          key={`${point.at} ${place}`}
          className={css["dot"]}
          cx={frame.x(point.at)}
          cy={frame.y(point.value)}
          r={4.5}
        />
      ),
  );
}
