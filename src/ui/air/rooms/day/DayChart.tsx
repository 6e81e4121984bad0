import type { PointerEvent } from "react";
import type { AirPoint } from "../../../../physics/drying/dayView.ts";
import type { ForecastError } from "../../../../physics/drying/forecastError.ts";
import { practice } from "../../../../trade/practice.ts";
import { useFormat } from "../../../base/state/useFormat.ts";
import type { PlotPoint, PlotReach } from "../../../base/charts/plotFrame.ts";
import { PlotFigure } from "../../../base/charts/Plot.tsx";
import { airTitle } from "../airTitle.ts";
import { DayTable } from "./DayTable.tsx";
import { useWidth } from "../../../base/charts/useWidth.ts";
import { dayTime } from "../../../base/format/time.ts";
import type { Format } from "../../../base/format/units.ts";
import { niceRange } from "../../../../logbook/air/airSeries.ts";
import { Strip, stripFrame, type StripData, type StripLine } from "../Strip.tsx";
import type { Day } from "../../../../logbook/air/dayAir.ts";
import { dayPointAt } from "../../../../logbook/air/dayAir.ts";
import sheet from "../../../base/styles/sheet.module.css";
import styles from "./day.module.css";
import { pointWords } from "./dayWords.ts";

const stepMs = 600_000;

/** A day of a room in three strips, a line to move along them, and what stands at that line. */
export function DayChart(props: {
  readonly day: Day;
  readonly error: ForecastError;
  readonly now: number;
  /** Where the line stands, epoch ms; null before it was moved. */
  readonly looked: number | null;
  readonly onLook: (at: number) => void;
}) {
  const { day, error, now, looked, onLook } = props;
  const format = useFormat();
  const [box, width] = useWidth<HTMLDivElement>(340);
  const { from, to } = day;
  const scale = stripFrame({ from, to, width });
  const look = ({ currentTarget, clientX, buttons, pointerType, type }: PointerEvent): void => {
    if (type === "pointermove" && pointerType !== "mouse" && buttons === 0) return;
    const at = scale.at(clientX - currentTarget.getBoundingClientRect().left);
    onLook(Math.round(at / stepMs) * stepMs);
  };
  const at = Math.min(to, Math.max(from, looked ?? Math.min(now, to)));
  const found = dayPointAt(day, at);
  const words =
    found === null
      ? "no reading"
      : `${pointWords(found.point, format)}${found.isForetold ? " (forecast)" : ""}`;
  return (
    <>
      <p className={`${sheet["lines"]} ${styles["readout"]}`} role="status">
        <strong>{dayTime(at, now, format.locale)}</strong>
        <span>{words}</span>
      </p>
      <PlotFigure
        title={airTitle(
          [...day.view.points.filter((point) => point !== null), ...(day.ahead?.points ?? [])].map(
            ({ tempC, rh }) => ({ airC: tempC, rh }),
          ),
          format,
        )}
        box={box}
        table={<DayTable day={day} />}
      >
        <div className={`${sheet["stack3"]} ${styles["strips"]}`} onPointerDown={look} onPointerMove={look}>
          {stripsOf(day, error, format).map((strip) => (
            <Strip
              key={strip.title}
              strip={strip}
              from={from}
              to={to}
              width={width}
              now={now}
              looked={looked === null ? null : at}
            />
          ))}
        </div>
      </PlotFigure>
      <input
        className={styles["slider"]}
        type="range"
        aria-label="Look at a time"
        aria-valuetext={`${dayTime(at, now, format.locale)}: ${words}`}
        min={from}
        max={to}
        step={stepMs}
        value={at}
        onChange={(event) => onLook(Number(event.target.value))}
      />
    </>
  );
}

type Pick = (point: AirPoint) => number | null;

function stripsOf({ view, ahead }: Day, error: ForecastError, format: Format): readonly StripData[] {
  const foretold = ahead?.points ?? [];
  const drawn = (points: readonly (AirPoint | null)[], pick: Pick): readonly PlotPoint[] =>
    points.map((point) => {
      const value = point && pick(point);
      return point === null || value === null ? null : { at: point.atMs, value };
    });
  const lines = (look: StripLine["look"], pick: Pick): readonly StripLine[] => [
    { key: look, look, points: drawn(view.points, pick) },
    { key: `${look}-ahead`, look, isAhead: true, points: drawn(foretold, pick) },
  ];
  // A forecast that holds the last reading has no error that was ever looked at.
  const isKnown = error.ok && ahead?.basis === "repeat-yesterday";
  const band = (pick: Pick, off: number): readonly PlotReach[] =>
    isKnown
      ? foretold.flatMap((point) => {
          const value = pick(point);
          return value === null ? [] : [{ at: point.atMs, low: value - off, high: value + off }];
        })
      : [];
  const all = [...view.points.filter((point) => point !== null), ...foretold];
  const valuesOf = (pick: Pick): readonly number[] => all.map(pick).filter((value) => value !== null);
  const { tempC, dewC, rh, deficit } = picks;
  const limit = practice.rhFinalDry.value;
  return [
    {
      title: `Temperature, and dew point (thin), ${format.unit("temp")}`,
      ...niceRange([...valuesOf(tempC), ...valuesOf(dewC)], 5),
      show: (value) => format.show("temp", value),
      lines: [...lines("second", dewC), ...lines("ink", tempC)],
      bands: error.ok
        ? [
            { key: "dew", points: band(dewC, error.dewK) },
            { key: "temp", points: band(tempC, error.tempK) },
          ]
        : [],
    },
    {
      title: `Humidity, % (dotted: damp, over ${format.show("percent", limit)})`,
      low: 0,
      high: 1,
      show: (value) => format.show("percent", value),
      lines: lines("ink", rh),
      bands: error.ok ? [{ key: "rh", points: band(rh, error.rh) }] : [],
      limit,
    },
    {
      title: `Water it can take up, ${format.unit("gM3")}`,
      ...niceRange([0, ...valuesOf(deficit)], 4),
      show: (value) => format.show("gM3", value),
      lines: lines("ink", deficit),
      bands: error.ok ? [{ key: "deficit", points: band(deficit, error.deficitGM3) }] : [],
    },
  ];
}

const picks = {
  tempC: ({ tempC }: AirPoint) => tempC,
  dewC: ({ dewC }: AirPoint) => dewC,
  rh: ({ rh }: AirPoint) => rh,
  deficit: ({ deficitGM3 }: AirPoint) => deficitGM3,
} as const;
