import { Plot } from "../../base/charts/Plot.tsx";
import { PlotBand, PlotLevel, PlotLine, PlotUpright } from "../../base/charts/PlotMarks.tsx";
import {
  plotFrame,
  ticksFor,
  type PlotFrame,
  type PlotPoint,
  type PlotReach,
} from "../../base/charts/plotFrame.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { plotTicks } from "./plotTicks.ts";

export type StripLine = {
  readonly key: string;
  readonly look: "ink" | "second";
  /** Forecast, not read. */
  readonly isAhead?: boolean;
  readonly points: readonly PlotPoint[];
};

export type StripBand = { readonly key: string; readonly points: readonly PlotReach[] };

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

type Stretch = { readonly from: number; readonly to: number; readonly width: number };

/** Every strip of a plot has its time in the same places. */
export const stripFrame = (
  { from, to, width }: Stretch,
  { low, high }: { readonly low: number; readonly high: number } = { low: 0, high: 1 },
): PlotFrame =>
  plotFrame({ width, left: 62, rightGap: 10, top: 40, height: 96, x: [from, to], y: [low, high] });

/** One quantity over time; its plot may have several under one another, all with the same hours. */
export function Strip(
  props: Stretch & {
    readonly strip: StripData;
    readonly now?: number | undefined;
    readonly looked?: number | null | undefined;
  },
) {
  const { strip, from, to, now, looked = null } = props;
  const { locale } = useFormat();
  const { title, low, high, show, lines, bands = [], limit } = strip;
  const frame = stripFrame(props, strip);
  return (
    <Plot
      frame={frame}
      label={`${title}; the figures are in the table`}
      name={title}
      levels={[low, (low + high) / 2, high].map((value) => ({ at: value, text: show(value) }))}
      ticks={plotTicks(from, to, { most: ticksFor(frame, 58), locale })}
      now={now !== undefined && now > from && now < to ? now : null}
      under={bands.map(({ key, points }) => (
        <PlotBand key={key} frame={frame} points={points} />
      ))}
    >
      {limit !== undefined && limit > low && limit < high && (
        <PlotLevel frame={frame} at={limit} look="limit" />
      )}
      {lines.map(({ key, look, isAhead = false, points }) => (
        <PlotLine
          key={key}
          frame={frame}
          points={points}
          look={look}
          broken={isAhead ? "ahead" : undefined}
        />
      ))}
      {looked !== null && <PlotUpright frame={frame} at={looked} look="looked" />}
    </Plot>
  );
}
