import type { DampSpell } from "../../../logbook/air/airAhead.ts";
import type { Span } from "../../../logbook/dip/dipProposal.ts";
import plot from "../../base/charts/plot.module.css";
import css from "./Timeline.module.css";
import type { TimelineRow } from "./timelineRows.ts";
import type { TimelineScale } from "./timelineScale.ts";

const height = 22;
const middle = height / 2;

/** One piece's window over the damp stretches of its room. All it says is in the words beside it too. */
export function TimelineStrip(props: {
  readonly row: TimelineRow;
  readonly scale: TimelineScale;
  readonly now: number;
  readonly damp: readonly DampSpell[];
  readonly hours: readonly Span[];
  /** When it is proposed to be dipped. */
  readonly dipAt: number | null;
}) {
  const { row, scale, now, damp, hours, dipAt } = props;
  const { x, width, to } = scale;
  return (
    <svg className={plot["svg"]} width={width} height={height} aria-hidden="true">
      <rect className={css["track"]} width={width} height={height} />
      {damp.map((spell) => (
        <g key={spell.from}>
          <rect
            className={css["damp"]}
            x={x(spell.from)}
            width={x(spell.to) - x(spell.from)}
            height={height}
          />
          {spell.isTooDamp && (
            <rect
              fill="url(#timeline-damp)"
              x={x(spell.from)}
              width={x(spell.to) - x(spell.from)}
              height={height}
            />
          )}
        </g>
      ))}
      {hours.map((span) => (
        <path
          key={span.from}
          className={css["hoursLine"]}
          d={`M${x(span.from)} ${height - 1}H${x(span.to)}`}
        />
      ))}
      <path className={plot["now"]} d={`M${x(now)} 0V${height}`} />
      <Bar row={row} x={x} now={now} to={to} width={width} />
      {dipAt !== null && dipAt <= to && (
        <path className={css["dip"]} d={`M${x(dipAt) - 6} 0H${x(dipAt) + 6}L${x(dipAt)} 9Z`} />
      )}
    </svg>
  );
}

function Bar(props: {
  readonly row: TimelineRow;
  readonly x: (at: number) => number;
  readonly now: number;
  readonly to: number;
  readonly width: number;
}) {
  const {
    row: { isReady, window },
    x,
    now,
    to,
    width,
  } = props;
  const { from, late } = window;
  if (isReady)
    return (
      <g>
        <circle className={css["ready"]} cx={x(now)} cy={middle} r={8} />
        <path className={css["sign"]} d={`M${x(now) - 4} ${middle}l3 3 5 -6`} />
      </g>
    );
  const begin = from ?? late;
  if (begin === null) return <path className={css["never"]} d={`M${x(now) + 4} ${middle}H${width - 2}`} />;
  if (begin > to)
    return (
      <path
        className={css["beyond"]}
        d={`M${width - 12} ${middle - 6}L${width - 2} ${middle}L${width - 12} ${middle + 6}Z`}
      />
    );
  const end = late ?? to;
  const endX = Math.max(x(begin) + 4, x(end));
  // A window with no end, or one past the picture, is left open on its right.
  const isOpen = late === null || late > to;
  // A moment rather than a window is its mark alone.
  const isMoment = from !== null && !isOpen && endX - x(begin) < 7;
  const box = isMoment ? "" : `M${endX} 5H${x(begin)}V${height - 5}H${endX}`;
  return (
    <g>
      <path className={css["window"]} d={isOpen || isMoment ? box : `${box}Z`} />
      {from !== null && (
        <path
          className={css["likely"]}
          d={`M${x(from) - 6} ${middle}L${x(from)} ${middle - 6}L${x(from) + 6} ${middle}L${x(from)} ${middle + 6}Z`}
        />
      )}
    </g>
  );
}
