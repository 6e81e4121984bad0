import type { Span } from "../../../logbook/dip/dipProposal.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { clockTicks } from "../../base/charts/timeTicks.ts";
import plot from "../../base/charts/plot.module.css";
import css from "./Timeline.module.css";
import type { TimelineScale } from "./timelineScale.ts";

const height = 46;

/** Clock and days over all rows, and beneath them the hours at the bucket. */
export function TimelineAxis(props: {
  readonly scale: TimelineScale;
  readonly now: number;
  readonly hours: readonly Span[];
}) {
  const { scale, now, hours } = props;
  const { locale } = useFormat();
  const { from, to, width, x } = scale;
  const nowX = x(now);
  const ticks = clockTicks(from, to, {
    most: Math.max(4, Math.floor(width / 64)),
    locale,
    daysFromH: 0,
  }).filter(({ at }) => x(at) > nowX + 52 && x(at) < width - 20);
  return (
    <svg className={plot["svg"]} width={width} height={height} aria-hidden="true">
      <defs>
        <pattern id="timeline-damp" width="6" height="6" patternUnits="userSpaceOnUse">
          <path className={css["hatch"]} d="M-1 7L7 -1M-1 1L1 -1M5 7L7 5" />
        </pattern>
      </defs>
      <text className={plot["strong"]} x={nowX - 2} y={18}>
        now
      </text>
      {ticks.map(({ at, text }) => {
        const isMidnight = new Date(at).getHours() === 0;
        return (
          <text key={at} className={`${plot["middle"]} ${isMidnight ? plot["strong"] : ""}`} x={x(at)} y={18}>
            {text}
          </text>
        );
      })}
      {ticks.map(({ at }) => (
        <path key={at} className={plot["rule"]} d={`M${x(at)} 24V${height}`} />
      ))}
      {hours.map((span) => (
        <rect
          key={span.from}
          className={css["hours"]}
          x={x(span.from)}
          y={30}
          width={Math.max(2, x(span.to) - x(span.from))}
          height={10}
        />
      ))}
      <path className={plot["now"]} d={`M${nowX} 24V${height}`} />
    </svg>
  );
}
