import { useId, type ReactNode, type RefObject } from "react";
import { anchorAt, type PlotFrame, type PlotTick } from "./plotFrame.ts";
import css from "./plot.module.css";

/** A plot under what it says, its key beneath it, and the same numbers as a table. */
export function PlotFigure(props: {
  /** What is to be seen in it, a short sentence without its full stop: "Viscosity steady since Tuesday". */
  readonly title: string;
  /** Measures the width the frame is made for. */
  readonly box: RefObject<HTMLDivElement | null>;
  readonly children: ReactNode;
  readonly caption?: ReactNode;
  /** One span a look. */
  readonly legend?: ReactNode;
  /** A `PlotTable` of the same numbers. */
  readonly table: ReactNode;
}) {
  const { title, box, children, caption, legend, table } = props;
  const id = useId();
  return (
    <figure className={css["figure"]} aria-labelledby={id}>
      <p id={id} className={css["title"]}>
        {title}
      </p>
      <div ref={box} className={css["plots"]}>
        {children}
      </div>
      {caption !== undefined && <figcaption className={css["caption"]}>{caption}</figcaption>}
      {legend !== undefined && <figcaption className={css["legend"]}>{legend}</figcaption>}
      {table}
    </figure>
  );
}

/** Axes with their ticks, in words of the reader's own unit, and "now"; what is plotted comes as children, drawn on the same frame. */
export function Plot(props: {
  readonly frame: PlotFrame;
  /** The picture in words; null where its place on the screen says them already. */
  readonly label: string | null;
  /** What the upright axis counts, with its unit; null where rows stand in its place. */
  readonly name: string | null;
  readonly levels?: readonly PlotTick[];
  readonly ticks: readonly PlotTick[];
  /** Ticks drawn as uprights through the panel. */
  readonly hasUprights?: boolean;
  readonly axisName?: string;
  readonly now?: number | null;
  /** Fields that lie beneath the rules. */
  readonly under?: ReactNode;
  readonly children: ReactNode;
}) {
  const { frame, label, name, levels = [], ticks, hasUprights = false, axisName, now = null } = props;
  const { width, left, right, top, floor, x, y } = frame;
  const height = floor + (axisName === undefined ? 26 : 42);
  return (
    <svg
      className={css["svg"]}
      width={width}
      height={height}
      viewBox={`0 0 ${width} ${height}`}
      {...(label === null ? { "aria-hidden": true } : { role: "img", "aria-label": label })}
    >
      {props.under}
      {name !== null && (
        <text className={css["name"]} x={2} y={14}>
          {name}
        </text>
      )}
      {levels.map(({ at, text }) => (
        <g key={at}>
          <path className={css["rule"]} d={`M${left} ${y(at)}H${right}`} />
          <text className={css["end"]} x={left - 6} y={y(at) + 4}>
            {text}
          </text>
        </g>
      ))}
      {ticks.map(({ at, text }) => (
        <g key={at}>
          {hasUprights && <path className={css["rule"]} d={`M${x(at)} ${top}V${floor}`} />}
          <text className={css["middle"]} x={tickX(x(at), text, width)} y={floor + 19}>
            {text}
          </text>
        </g>
      ))}
      {axisName !== undefined && (
        <text className={css["end"]} x={right} y={floor + 37}>
          {axisName}
        </text>
      )}
      {props.children}
      {now !== null && <PlotNow frame={frame} now={now} />}
    </svg>
  );
}

/** Half a tick's word at 13 px, px: a word at either end of the axis stays in the picture. */
const halfWord = (text: string): number => 3 + text.length * 3.6;

const tickX = (px: number, text: string, width: number): number =>
  Math.min(width - halfWord(text), Math.max(halfWord(text), px));

export function PlotNow({ frame, now }: { readonly frame: PlotFrame; readonly now: number }) {
  const at = frame.x(now);
  return (
    <>
      <path className={css["now"]} d={`M${at} ${frame.top - 6}V${frame.floor}`} />
      <text className={css["strong"]} x={at} y={frame.top - 10} textAnchor={anchorAt(at, frame)}>
        now
      </text>
    </>
  );
}
