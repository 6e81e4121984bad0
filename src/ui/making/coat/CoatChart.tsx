import { millisecondsInHour as hourMs, millisecondsInMinute as minuteMs } from "date-fns/constants";
import type { KeyboardEvent, PointerEvent } from "react";
import type { CoatPicture } from "../../../logbook/drying/coatPicture.ts";
import type { CoatDrying } from "../../../logbook/piece/standing.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { timeTicks } from "../../base/charts/timeTicks.ts";
import { useWidth } from "../../base/charts/useWidth.ts";
import { weekdayText } from "../../base/format/formatters.ts";
import { clockTime } from "../../base/format/time.ts";
import { AirPanel } from "./AirPanel.tsx";
import styles from "./CoatChart.module.css";
import { marksOf, momentAt, scrubbed } from "./coatScene.ts";
import { sceneFrame } from "./sceneFrame.ts";

/** Water left against time with its band, what was seen, the ready window, and the room's air beneath; scrubbed by finger or keys. */
export function CoatChart(props: {
  readonly picture: CoatPicture;
  readonly drying: CoatDrying;
  readonly now: number;
  readonly at: number;
  readonly onAt: (at: number) => void;
  readonly told: string;
}) {
  const { picture, drying, now, at, onAt, told } = props;
  const format = useFormat();
  const [box, width] = useWidth<HTMLDivElement>(340);
  const frame = sceneFrame(picture, width);
  const { from, to, left, right, water, bottom, x, y } = frame;
  const { early, late, likely } = drying.readyAt;
  const share = (kgM2: number): string => format.show("percent", kgM2 / picture.startKgM2);
  const spread = [
    ...picture.points.map((point) => `${x(point.at).toFixed(1)} ${y(point.high).toFixed(1)}`),
    ...picture.points.toReversed().map((point) => `${x(point.at).toFixed(1)} ${y(point.low).toFixed(1)}`),
  ].join("L");
  const line = (points: CoatPicture["points"]): string =>
    points.map((point) => `${x(point.at).toFixed(1)} ${y(point.median).toFixed(1)}`).join("L");
  const past = picture.points.filter((point) => point.at <= picture.judgedAt);
  const ahead = [...past.slice(-1), ...picture.points.filter((point) => point.at > picture.judgedAt)];
  const moment = momentAt(picture, at);

  const take = (event: PointerEvent<HTMLDivElement>): void => {
    if (event.buttons === 0 && event.type === "pointermove") return;
    const place = event.clientX - event.currentTarget.getBoundingClientRect().left;
    onAt(frame.timeAt(place));
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    const next = scrubbed(at, event.key, { from, to, isBig: event.shiftKey });
    if (next === null) return;
    event.preventDefault();
    onAt(next);
  };

  return (
    <div
      ref={box}
      className={styles["scrub"]}
      role="slider"
      tabIndex={0}
      aria-label={`Along the drying of coat ${drying.coat.number}`}
      aria-valuemin={0}
      aria-valuemax={Math.round((to - from) / minuteMs)}
      aria-valuenow={Math.round((at - from) / minuteMs)}
      aria-valuetext={told}
      onKeyDown={onKeyDown}
      onPointerDown={take}
      onPointerMove={take}
    >
      <svg className={styles["svg"]} width={width} height={bottom + 24} aria-hidden="true">
        {early !== null && (
          <rect
            className={styles["window"]}
            x={x(early)}
            y={water.top}
            width={Math.max(2, x(late ?? to) - x(early))}
            height={water.bottom - water.top}
          />
        )}
        <text x={left - 40} y={14} className={styles["name"]}>
          Water left, % of start
        </text>
        {[0, 0.5, 1].map((level) => (
          <g key={level}>
            <path className={styles["rule"]} d={`M${left} ${y(level * picture.startKgM2)}H${right}`} />
            <text className={styles["level"]} x={left - 6} y={y(level * picture.startKgM2) + 4}>
              {share(level * picture.startKgM2)}
            </text>
          </g>
        ))}
        <path className={styles["ready"]} d={`M${left} ${y(picture.readyKgM2)}H${right}`} />
        <path className={styles["band"]} d={`M${spread}Z`} />
        {past.length > 1 && <path className={styles["past"]} d={`M${line(past)}`} />}
        {ahead.length > 1 && <path className={styles["ahead"]} d={`M${line(ahead)}`} />}
        {likely !== null && likely <= to && (
          <text className={styles["windowName"]} x={Math.min(x(likely), right - 24)} y={water.top + 14}>
            ready
          </text>
        )}
        <path className={styles["at"]} d={`M${x(at)} ${water.top - 4}V${bottom}`} />
        <circle className={styles["atDot"]} cx={x(at)} cy={y(moment.median)} r={6} />
        {marksOf(picture).map((mark) => (
          <g key={mark.key}>
            {mark.sdKgM2 !== null && (
              <path
                className={styles["whisker"]}
                d={`M${x(mark.at)} ${y(mark.waterKgM2 + mark.sdKgM2)}V${y(Math.max(0, mark.waterKgM2 - mark.sdKgM2))}`}
              />
            )}
            <circle
              className={mark.isOwn ? styles["own"] : styles["mark"]}
              cx={x(mark.at)}
              cy={y(mark.waterKgM2)}
              r={9}
            />
            <text
              className={mark.isOwn ? styles["ownLetter"] : styles["letter"]}
              x={x(mark.at)}
              y={y(mark.waterKgM2) + 4}
            >
              {mark.letter}
            </text>
          </g>
        ))}
        <AirPanel picture={picture} frame={frame} />
        {timeTicks(from, to, Math.floor((right - left) / 78)).map((tick) => (
          <text key={tick} className={styles["tick"]} x={x(tick)} y={bottom + 18}>
            {to - from > 40 * hourMs && new Date(tick).getHours() === 0
              ? weekdayText(tick, format.locale)
              : clockTime(tick, format.locale)}
          </text>
        ))}
        {now >= from && now <= to && (
          <path className={styles["now"]} d={`M${x(now)} ${water.top}V${bottom}`} />
        )}
      </svg>
    </div>
  );
}
