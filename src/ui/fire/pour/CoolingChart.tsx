import type { Outside, WallTemperature } from "../../../physics/heat/heat.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { useWidth } from "../../base/charts/useWidth.ts";
import { tempTicks } from "../../base/charts/kilnScale.ts";
import styles from "./pour.module.css";

type Curve = { readonly bed: Outside; readonly rows: readonly WallTemperature[] };

const names: Readonly<Record<string, string>> = {
  air: "free in air",
  "cold-sand": "in cold sand",
  "hot-sand": "in hot sand",
};
const keys: Readonly<Record<string, string>> = {
  air: "keyAir",
  "cold-sand": "keyCold",
  "hot-sand": "keyHot",
};
const top = 30;
const height = 200;
const bottom = top + height;
const left = 50;
const right = 10;
const shownMin = 15;
const tableMin = [0, 0.5, 1, 2, 3, 5, 8, 10, 15];

/** The cavity's face against minutes out of the kiln, in each bed; the planned one with its band. */
export function CoolingChart({
  curves,
  bed,
  leastC,
}: {
  readonly curves: readonly Curve[];
  readonly bed: Outside;
  readonly leastC: number | null;
}) {
  const format = useFormat();
  const [box, width] = useWidth<HTMLDivElement>(340);
  const seen = curves.map((curve) => ({
    ...curve,
    rows: curve.rows.filter(({ minute }) => minute <= shownMin),
  }));
  const highC = Math.max(100, ...seen.map(({ rows }) => rows[0]?.cavityFaceC ?? 0)) * 1.04;
  const x = (minute: number): number => left + (minute / shownMin) * (width - left - right);
  const y = (c: number): number => bottom - (Math.max(0, c) / highC) * height;
  const points = (rows: readonly WallTemperature[], of: (row: WallTemperature) => number): string =>
    rows.map((row) => `${x(row.minute).toFixed(1)} ${y(of(row)).toFixed(1)}`).join("L");
  const planned = seen.find((curve) => curve.bed === bed);
  const temp = (c: number): string => format.number(format.toShown("temp", c), 0);
  return (
    <figure className={styles["figure"]}>
      <div ref={box}>
        <svg
          className={styles["svg"]}
          width={width}
          height={bottom + 40}
          viewBox={`0 0 ${width} ${bottom + 40}`}
          role="img"
          aria-label="Temperature of the cavity's face against minutes out of the kiln; the same as a table below"
        >
          <text x={0} y={14}>
            Face that metal meets, {format.unit("temp")}
          </text>
          {tempTicks(highC, format).map((c) => (
            <g key={c}>
              <path className={styles["rule"]} d={`M${left} ${y(c)}H${width - right}`} />
              <text className={styles["level"]} x={left - 6} y={y(c) + 4}>
                {temp(c)}
              </text>
            </g>
          ))}
          {[0, 3, 6, 9, 12, 15].map((minute) => (
            <text key={minute} className={styles["tick"]} x={Math.min(width - 12, x(minute))} y={bottom + 18}>
              {minute}
            </text>
          ))}
          <text className={styles["axisEnd"]} x={width - right} y={bottom + 36}>
            Minutes out of the kiln
          </text>
          {planned !== undefined && planned.rows.length > 0 && (
            <path
              className={styles["band"]}
              d={`M${points(planned.rows, (row) => row.cavityFaceHighC)}L${points(planned.rows.toReversed(), (row) => row.cavityFaceLowC)}Z`}
            />
          )}
          {leastC !== null && leastC < highC && (
            <>
              <path className={styles["least"]} d={`M${left} ${y(leastC)}H${width - right}`} />
              <text className={styles["leastText"]} x={left + 4} y={y(leastC) + 17}>
                least {format.show("temp", leastC)}
              </text>
            </>
          )}
          {seen.map((curve) => (
            <path
              key={curve.bed}
              className={styles["likely"]}
              data-bed={curve.bed}
              d={`M${points(curve.rows, (row) => row.cavityFaceC)}`}
            />
          ))}
        </svg>
      </div>
      <figcaption className={`${styles["legend"]} ${styles["lines"]}`}>
        {seen.map((curve) => (
          <span key={curve.bed} className={styles[keys[curve.bed] ?? "keyAir"]}>
            {names[curve.bed]}
            {curve.bed === bed ? " (planned)" : ""}
          </span>
        ))}
        <span className={styles["keyBand"]}>how well it is known</span>
        {leastC !== null && <span className={styles["keyLeast"]}>least for this section</span>}
      </figcaption>
      <details>
        <summary>As a table</summary>
        <table className={styles["table"]}>
          <caption>
            Cavity’s face, {format.unit("temp")}: likely, and lowest to highest in the planned bed
          </caption>
          <thead>
            <tr>
              <th scope="col">min</th>
              {seen.map((curve) => (
                <th key={curve.bed} scope="col">
                  {names[curve.bed]}
                </th>
              ))}
              <th scope="col">band</th>
            </tr>
          </thead>
          <tbody>
            {tableMin.map((minute) => {
              const rowOf = (curve: Curve | undefined): WallTemperature | undefined =>
                curve?.rows.find((row) => row.minute === minute);
              const band = rowOf(planned);
              return (
                <tr key={minute}>
                  <td>{format.number(minute, 1)}</td>
                  {seen.map((curve) => {
                    const row = rowOf(curve);
                    return <td key={curve.bed}>{row === undefined ? "" : temp(row.cavityFaceC)}</td>;
                  })}
                  <td>
                    {band === undefined ? "" : `${temp(band.cavityFaceLowC)}–${temp(band.cavityFaceHighC)}`}
                  </td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </details>
    </figure>
  );
}
