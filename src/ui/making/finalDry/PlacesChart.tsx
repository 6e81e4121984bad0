import { millisecondsInHour as hourMs } from "date-fns/constants";
import type { ReactNode } from "react";
import type { FinalDry } from "../../../logbook/piece/standing.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Plot, PlotFigure, PlotNow } from "../../base/charts/Plot.tsx";
import { PlotTable } from "../../base/charts/PlotTable.tsx";
import { plotFrame, type PlotFrame } from "../../base/charts/plotFrame.ts";
import { clockTicks } from "../../base/charts/timeTicks.ts";
import { useWidth } from "../../base/charts/useWidth.ts";
import { soonTime } from "../../base/format/time.ts";
import plot from "../../base/charts/plot.module.css";
import css from "./FinalDry.module.css";
import { placeWords } from "./finalDryWords.ts";

const rowHeight = 54;
const sides = { left: 10, rightGap: 10 };

/** When each place is dry, from the last dip on, beside the usual minimum hours. */
export function PlacesChart({ dry, now }: { readonly dry: FinalDry; readonly now: number }) {
  const { locale } = useFormat();
  const [box, width] = useWidth<HTMLDivElement>(340);
  const { places, practice, wettedAt } = dry;
  const ends = places.flatMap(({ drying: { readyAt } }) => [readyAt.late, readyAt.likely, readyAt.early]);
  const to = Math.max(now, practice.until, ...ends.map((at) => at ?? 0)) + hourMs;
  const height = (places.length + 1) * rowHeight;
  const frame = plotFrame({ ...sides, width, height, x: [wettedAt, to], y: [0, 1] });
  const { x, top } = frame;
  const ticks = clockTicks(wettedAt, to, { most: Math.floor(width / 84), locale, daysFromH: 60 });
  return (
    <PlotFigure
      title={placesTitle(dry, now, locale)}
      box={box}
      caption={`From the last dip, ${soonTime(wettedAt, now, locale)}. Line: wet. Box: from the early to the late estimate. Upright: the likely one.`}
      table={<PlacesTable dry={dry} now={now} />}
    >
      <Plot
        frame={frame}
        name={null}
        label="When each place is dry; the same as a table below"
        ticks={ticks}
        hasUprights
        under={<PlotNow frame={frame} now={now} />}
      >
        {places.map(({ geometry, drying: { readyAt } }, i) => (
          <Row key={geometry} y={top + i * rowHeight} name={placeWords(geometry)} frame={frame}>
            {readyAt.early === null ? (
              <text x={frame.left} y={44}>
                no time can be given
              </text>
            ) : (
              <>
                <path className={css["wet"]} d={`M${frame.left} 38H${x(readyAt.early)}`} />
                <rect
                  className={css["window"]}
                  x={x(readyAt.early)}
                  y={30}
                  width={Math.max(3, x(readyAt.late ?? to) - x(readyAt.early))}
                  height={16}
                />
                {readyAt.likely !== null && (
                  <path className={css["likely"]} d={`M${x(readyAt.likely)} 26V50`} />
                )}
              </>
            )}
          </Row>
        ))}
        <Row y={top + places.length * rowHeight} name="usual minimum hours" frame={frame}>
          <path
            className={css["usual"]}
            d={`M${frame.left} 38H${x(practice.until)}M${x(practice.until)} 28V48`}
          />
        </Row>
      </Plot>
    </PlotFigure>
  );
}

/** Which place is dry last, and when. */
function placesTitle({ places }: FinalDry, now: number, locale: string): string {
  const open = places.find(({ drying: { readyAt } }) => readyAt.likely === null);
  if (open !== undefined) return `No time yet for the ${placeWords(open.geometry)}`;
  const last = places.reduce<FinalDry["places"][number] | null>(
    (a, b) => (a === null || (b.drying.readyAt.likely ?? 0) > (a.drying.readyAt.likely ?? 0) ? b : a),
    null,
  );
  const at = last?.drying.readyAt.likely ?? null;
  if (last === null || at === null) return "When each place is dry";
  return at <= now
    ? `All places probably dry since ${soonTime(at, now, locale)}`
    : `The ${placeWords(last.geometry)} dries last, probably ${soonTime(at, now, locale)}`;
}

function Row(props: {
  readonly y: number;
  readonly name: string;
  readonly frame: PlotFrame;
  readonly children: ReactNode;
}) {
  const { y, name, frame, children } = props;
  return (
    <g transform={`translate(0 ${y})`}>
      <path className={plot["rule"]} d={`M${frame.left} 0H${frame.right}`} />
      <text className={css["place"]} x={frame.left} y={20}>
        {name}
      </text>
      {children}
    </g>
  );
}

function PlacesTable({ dry, now }: { readonly dry: FinalDry; readonly now: number }) {
  const { locale } = useFormat();
  const say = (at: number | null): string => (at === null ? "no time" : soonTime(at, now, locale));
  return (
    <PlotTable
      head={["Place", "Early", "Likely", "Late"]}
      hasRowHeads
      rows={[
        ...dry.places.map(({ geometry, drying: { readyAt } }) => ({
          key: geometry,
          cells: [placeWords(geometry), say(readyAt.early), say(readyAt.likely), say(readyAt.late)],
        })),
        { key: "practice", cells: ["usual minimum hours", say(dry.practice.until)] },
      ]}
    />
  );
}
