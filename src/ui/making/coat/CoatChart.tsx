import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import type { KeyboardEvent, PointerEvent, ReactNode } from "react";
import type { CoatPicture } from "../../../logbook/drying/coatPicture.ts";
import { waterAtShare } from "../../../logbook/drying/waterToGo.ts";
import type { CoatDrying } from "../../../logbook/piece/standing.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Plot, PlotFigure } from "../../base/charts/Plot.tsx";
import { PlotBand, PlotLevel, PlotLine, PlotSpan, PlotUpright } from "../../base/charts/PlotMarks.tsx";
import { dryTitle } from "../../base/charts/dryTitle.ts";
import { ticksFor } from "../../base/charts/plotFrame.ts";
import { clockTicks } from "../../base/charts/timeTicks.ts";
import { useWidth } from "../../base/charts/useWidth.ts";
import { AirPanel } from "./AirPanel.tsx";
import plot from "../../base/charts/plot.module.css";
import styles from "./CoatChart.module.css";
import { marksOf, momentAt, scrubbed } from "./coatScene.ts";
import { coatFrame } from "./coatFrame.ts";

/** Water left against time with its band, what was seen, the ready window, and the room's air beneath; scrubbed by finger or keys. */
export function CoatChart(props: {
  readonly picture: CoatPicture;
  readonly drying: CoatDrying;
  readonly now: number;
  readonly at: number;
  readonly onAt: (at: number) => void;
  readonly told: string;
  readonly table: ReactNode;
}) {
  const { picture, drying, now, at, onAt, told, table } = props;
  const format = useFormat();
  const [box, width] = useWidth<HTMLDivElement>(340);
  const frame = coatFrame(picture, width);
  const { x, y } = frame;
  const [from, to] = [frame.at(frame.left), frame.at(frame.right)];
  const { early, late, likely } = drying.readyAt;
  const points = picture.points.map(({ at, median }) => ({ at, value: median }));
  const past = points.filter((point) => point.at <= picture.judgedAt);
  const ahead = [...past.slice(-1), ...points.filter((point) => point.at > picture.judgedAt)];
  const moment = momentAt(picture, at);

  const take = (event: PointerEvent<HTMLDivElement>): void => {
    if (event.buttons === 0 && event.type === "pointermove") return;
    const place = event.clientX - event.currentTarget.getBoundingClientRect().left;
    onAt(frame.at(place));
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    const next = scrubbed(at, event.key, { from, to, isBig: event.shiftKey });
    if (next === null) return;
    event.preventDefault();
    onAt(next);
  };

  return (
    <PlotFigure title={dryTitle(drying, now, format.locale)} box={box} table={table}>
      <div
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
        <Plot
          frame={frame}
          label={null}
          name="Water left, %: at 0% dry enough"
          levels={[0, 0.5, 1].map((share) => ({
            at: waterAtShare(share, picture),
            text: format.show("percent", share),
          }))}
          ticks={clockTicks(from, to, { most: ticksFor(frame, 78), locale: format.locale, daysFromH: 40 })}
          under={early !== null && <PlotSpan frame={frame} from={early} to={late ?? to} />}
        >
          <PlotLevel frame={frame} at={picture.readyKgM2} look="ready" />
          <PlotBand frame={frame} points={picture.points} look="waterBand" />
          <PlotLine frame={frame} points={past} look="water" />
          <PlotLine frame={frame} points={ahead} look="water" broken="ahead" />
          {likely !== null && likely <= to && (
            <text className={plot["middle"]} x={Math.min(x(likely), frame.right - 24)} y={frame.top + 14}>
              dry
            </text>
          )}
          <PlotUpright frame={frame} at={at} look="scrub" />
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
          {now >= from && now <= to && <PlotUpright frame={frame} at={now} look="now" />}
        </Plot>
      </div>
    </PlotFigure>
  );
}
