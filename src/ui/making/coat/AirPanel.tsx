import type { CoatPicture } from "../../../logbook/drying/coatPicture.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import styles from "./CoatChart.module.css";
import type { SceneFrame } from "./sceneFrame.ts";

/** The room's readings beneath the water: temperature by the left scale, humidity by the right one. */
export function AirPanel({ picture, frame }: { readonly picture: CoatPicture; readonly frame: SceneFrame }) {
  const format = useFormat();
  const { air: readings } = picture;
  const { left, right, x } = frame;
  const { top, bottom } = frame.air;
  const temps = readings.map(({ airC }) => airC);
  const low = Math.floor((Math.min(...temps, 20) - 1) / 2) * 2;
  const high = Math.ceil((Math.max(...temps, 20) + 1) / 2) * 2;
  const yTemp = (airC: number): number => bottom - ((airC - low) / (high - low)) * (bottom - top);
  const yRh = (rh: number): number => bottom - rh * (bottom - top);
  const shown = readings.filter(({ at }) => at >= frame.from && at <= frame.to);
  const every = Math.ceil(shown.length / 300);
  const drawn = shown.filter((_, i) => i % every === 0 || i === shown.length - 1);
  const line = (y: (one: (typeof drawn)[number]) => number): string =>
    `M${drawn.map((one) => `${x(one.at).toFixed(1)} ${y(one).toFixed(1)}`).join("L")}`;
  return (
    <g>
      <text x={left - 40} y={top - 10} className={styles["name"]}>
        Air: {format.unit("temp")} solid, humidity dashed
      </text>
      {[0, 1].map((end) => (
        <g key={end}>
          <path className={styles["rule"]} d={`M${left} ${end === 0 ? bottom : top}H${right}`} />
          <text className={styles["level"]} x={left - 6} y={(end === 0 ? bottom : top) + 4}>
            {format.number(format.toShown("temp", end === 0 ? low : high), 0)}°
          </text>
          <text className={styles["rightLevel"]} x={right + 6} y={(end === 0 ? bottom : top) + 4}>
            {end === 0 ? "0%" : "100%"}
          </text>
        </g>
      ))}
      {drawn.length > 1 && (
        <>
          <path className={styles["temp"]} d={line(({ airC }) => yTemp(airC))} />
          <path className={styles["rh"]} d={line(({ rh }) => yRh(rh))} />
        </>
      )}
      {drawn.length === 1 && drawn[0] !== undefined && (
        <circle className={styles["reading"]} cx={x(drawn[0].at)} cy={yTemp(drawn[0].airC)} r={4} />
      )}
      {drawn.length === 0 && (
        <text x={(left + right) / 2} y={(top + bottom) / 2 + 4} className={styles["tick"]}>
          no reading of the room
        </text>
      )}
    </g>
  );
}
