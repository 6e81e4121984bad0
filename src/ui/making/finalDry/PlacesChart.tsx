import { millisecondsInHour as hourMs } from "date-fns/constants";
import type { ReactNode } from "react";
import type { FinalDry } from "../../../logbook/piece/standing.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { timeTicks } from "../../base/charts/timeTicks.ts";
import { useWidth } from "../../base/charts/useWidth.ts";
import { weekdayText } from "../../base/format/formatters.ts";
import { clockTime, soonTime } from "../../base/format/time.ts";
import css from "./FinalDry.module.css";
import { placeWords } from "./finalDryWords.ts";

const rowHeight = 54;
const top = 30;
const side = 10;

/** When each place comes to dry, from the last dip on, beside the hours of common practice. */
export function PlacesChart({ dry, now }: { readonly dry: FinalDry; readonly now: number }) {
  const { locale } = useFormat();
  const [box, width] = useWidth<HTMLDivElement>(340);
  const { places, practice, wettedAt } = dry;
  const rows = places.length + 1;
  const ends = places.flatMap(({ drying: { readyAt } }) => [readyAt.late, readyAt.likely, readyAt.early]);
  const to = Math.max(now, practice.until, ...ends.map((at) => at ?? 0)) + hourMs;
  const x = (at: number): number =>
    side + ((Math.min(Math.max(at, wettedAt), to) - wettedAt) / (to - wettedAt)) * (width - 2 * side);
  const floor = top + rows * rowHeight;
  const isLong = to - wettedAt > 60 * hourMs;
  return (
    <figure className={css["figure"]}>
      <div ref={box}>
        <svg
          className={css["svg"]}
          width={width}
          height={floor + 24}
          role="img"
          aria-label="When each place comes to dry; the same as a table below"
        >
          {timeTicks(wettedAt, to, Math.floor(width / 84)).map((at) => (
            <g key={at}>
              <path className={css["rule"]} d={`M${x(at)} ${top}V${floor}`} />
              <text className={css["tick"]} x={Math.min(width - 22, Math.max(22, x(at)))} y={floor + 18}>
                {isLong && new Date(at).getHours() === 0 ? weekdayText(at, locale) : clockTime(at, locale)}
              </text>
            </g>
          ))}
          <path className={css["now"]} d={`M${x(now)} ${top - 8}V${floor}`} />
          <text className={css["nowText"]} x={x(now)} y={top - 12} textAnchor={anchor(x(now), width)}>
            now
          </text>
          {places.map(({ geometry, drying: { readyAt } }, i) => (
            <Row key={geometry} y={top + i * rowHeight} name={placeWords(geometry)} width={width}>
              {readyAt.early === null ? (
                <text className={css["soft"]} x={side} y={44}>
                  no time can be given
                </text>
              ) : (
                <>
                  <path className={css["wet"]} d={`M${side} 38H${x(readyAt.early)}`} />
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
          <Row y={top + places.length * rowHeight} name="hours of common practice" width={width}>
            <path
              className={css["usual"]}
              d={`M${side} 38H${x(practice.until)}M${x(practice.until)} 28V48`}
            />
          </Row>
        </svg>
      </div>
      <figcaption className={css["caption"]}>
        From the last dip, {soonTime(wettedAt, now, locale)}. A line is wet time; the box runs from the early
        to the late guess, the upright in it is the likely one.
      </figcaption>
      <details>
        <summary>The same as a table</summary>
        <PlacesTable dry={dry} now={now} />
      </details>
    </figure>
  );
}

function Row(props: {
  readonly y: number;
  readonly name: string;
  readonly width: number;
  readonly children: ReactNode;
}) {
  const { y, name, width, children } = props;
  return (
    <g transform={`translate(0 ${y})`}>
      <path className={css["base"]} d={`M${side} 0H${width - side}`} />
      <text className={css["place"]} x={side} y={20}>
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
    <table>
      <thead>
        <tr>
          <th scope="col">Place</th>
          <th scope="col">Early</th>
          <th scope="col">Likely</th>
          <th scope="col">Late</th>
        </tr>
      </thead>
      <tbody>
        {dry.places.map(({ geometry, drying: { readyAt } }) => (
          <tr key={geometry}>
            <th scope="row">{placeWords(geometry)}</th>
            <td>{say(readyAt.early)}</td>
            <td>{say(readyAt.likely)}</td>
            <td>{say(readyAt.late)}</td>
          </tr>
        ))}
        <tr>
          <th scope="row">hours of common practice</th>
          <td colSpan={3}>{say(dry.practice.until)}</td>
        </tr>
      </tbody>
    </table>
  );
}

const anchor = (x: number, width: number): "start" | "middle" | "end" =>
  x < side + 16 ? "start" : x > width - side - 16 ? "end" : "middle";
