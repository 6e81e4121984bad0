import type { CoatPicture } from "../../../logbook/drying/coatPicture.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { PlotDots, PlotLine } from "../../base/charts/PlotMarks.tsx";
import { plotFrame, type PlotFrame } from "../../base/charts/plotFrame.ts";
import plot from "../../base/charts/plot.module.css";
import { airHeight } from "./coatFrame.ts";

/** The room's readings beneath the water: temperature by the left scale, humidity by the right one. */
export function AirPanel({ picture, frame }: { readonly picture: CoatPicture; readonly frame: PlotFrame }) {
  const format = useFormat();
  const { air: readings } = picture;
  const { left, right } = frame;
  const temps = readings.map(({ airC }) => airC);
  const low = Math.floor((Math.min(...temps, 20) - 1) / 2) * 2;
  const high = Math.ceil((Math.max(...temps, 20) + 1) / 2) * 2;
  const span = [frame.at(left), frame.at(right)] as const;
  const panel = { width: frame.width, left, rightGap: frame.width - right, height: airHeight, x: span };
  const byTemp = plotFrame({ ...panel, top: frame.floor - airHeight, y: [low, high] });
  const byRh = plotFrame({ ...panel, top: frame.floor - airHeight, y: [0, 1] });
  const { top, bottom } = byTemp;
  const shown = readings.filter(({ at }) => at >= span[0] && at <= span[1]);
  const every = Math.ceil(shown.length / 300);
  const drawn = shown.filter((_, i) => i % every === 0 || i === shown.length - 1);
  return (
    <g>
      <text x={2} y={top - 10} className={plot["name"]}>
        Air: {format.unit("temp")} solid, humidity dashed
      </text>
      {[0, 1].map((end) => (
        <g key={end}>
          <path className={plot["rule"]} d={`M${left} ${end === 0 ? bottom : top}H${right}`} />
          <text className={plot["end"]} x={left - 6} y={(end === 0 ? bottom : top) + 4}>
            {format.number(format.toShown("temp", end === 0 ? low : high), 0)}°
          </text>
          <text x={right + 6} y={(end === 0 ? bottom : top) + 4}>
            {end === 0 ? "0%" : "100%"}
          </text>
        </g>
      ))}
      {drawn.length > 1 && (
        <>
          <PlotLine
            frame={byTemp}
            points={drawn.map(({ at, airC }) => ({ at, value: airC }))}
            look="emberThin"
          />
          <PlotLine
            frame={byRh}
            points={drawn.map(({ at, rh }) => ({ at, value: rh }))}
            look="second"
            broken="ahead"
          />
        </>
      )}
      {drawn.length === 1 && (
        <PlotDots frame={byTemp} points={drawn.map(({ at, airC }) => ({ at, value: airC }))} />
      )}
      {drawn.length === 0 && (
        <text x={(left + right) / 2} y={(top + bottom) / 2 + 4} className={plot["middle"]}>
          no reading of the room
        </text>
      )}
    </g>
  );
}
