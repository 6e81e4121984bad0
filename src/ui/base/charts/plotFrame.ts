/** Where values lie on a plot, px. What is past an axis is held at its end. */
export type PlotFrame = {
  readonly width: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  /** Where the upright axis ends; `floor` is where the picture ends and the ticks of the other axis begin. */
  readonly bottom: number;
  readonly floor: number;
  readonly x: (value: number) => number;
  readonly y: (value: number) => number;
  /** The value of the axis along the bottom that lies at a place, px from the left. */
  readonly at: (px: number) => number;
};

type Span = readonly [from: number, to: number];

/** A plot's frame: both axes in canonical units, the rest in px. Logarithmic axes want spans above zero. */
export function plotFrame(spec: {
  readonly width: number;
  readonly x: Span;
  readonly y: Span;
  readonly left?: number;
  readonly rightGap?: number;
  readonly top?: number;
  readonly height: number;
  /** Room between the panel and the ticks, for a second panel on the same axis. */
  readonly beneath?: number;
  readonly isLog?: boolean;
}): PlotFrame {
  const { width, left = 50, rightGap = 12, top = 28, height, beneath = 0, isLog = false } = spec;
  const right = Math.max(left + 60, width - rightGap);
  const bottom = top + height;
  const share = (value: number, [from, to]: Span): number => {
    const held = Math.min(to, Math.max(from, value));
    if (to <= from) return 0;
    return isLog ? Math.log(held / from) / Math.log(to / from) : (held - from) / (to - from);
  };
  const [from, to] = spec.x;
  return {
    width,
    left,
    right,
    top,
    bottom,
    floor: bottom + beneath,
    x: (value) => left + share(value, spec.x) * (right - left),
    y: (value) => bottom - share(value, spec.y) * height,
    at: (px) => {
      const along = Math.min(1, Math.max(0, (px - left) / (right - left)));
      return isLog ? from * (to / from) ** along : from + along * (to - from);
    },
  };
}

/** As many ticks as have room along the bottom, `eachPx` apart. */
export const ticksFor = ({ left, right }: PlotFrame, eachPx: number): number =>
  Math.max(2, Math.floor((right - left) / eachPx));

/** A place on an axis, and what stands there. */
export type PlotTick = { readonly at: number; readonly text: string };

/** Drawn as a line; null leaves a hole. */
export type PlotPoint = { readonly at: number; readonly value: number } | null;
export type PlotReach = { readonly at: number; readonly low: number; readonly high: number };

type Scales = Pick<PlotFrame, "x" | "y">;

/** A lone point between two holes is drawn as a short stroke, or it would not be seen. */
export function linePath(points: readonly PlotPoint[], { x, y }: Scales): string {
  let path = "";
  for (const [i, point] of points.entries()) {
    if (point === null) continue;
    const isFirst = (points[i - 1] ?? null) === null;
    path += `${isFirst ? "M" : "L"}${x(point.at).toFixed(1)} ${y(point.value).toFixed(1)}`;
    if (isFirst && (points[i + 1] ?? null) === null) path += "h1";
  }
  return path;
}

/** Along the upper ends and back along the lower ones. */
export function bandPath(band: readonly PlotReach[], { x, y }: Scales): string {
  const upper = band.map(({ at, high }) => `${x(at).toFixed(1)} ${y(high).toFixed(1)}`);
  const lower = band.toReversed().map(({ at, low }) => `${x(at).toFixed(1)} ${y(low).toFixed(1)}`);
  return band.length === 0 ? "" : `M${[...upper, ...lower].join("L")}Z`;
}

/** How a word over an upright is set so that it stays in the picture. */
export const anchorAt = (px: number, { left, right }: PlotFrame): "start" | "middle" | "end" =>
  px < left + 16 ? "start" : px > right - 16 ? "end" : "middle";
