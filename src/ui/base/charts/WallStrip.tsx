import type { Standing } from "../../../logbook/piece/standing.ts";
import { wallBands } from "./wallBands.ts";
import styles from "./WallStrip.module.css";

const width = 64;
const height = 44;
const fullMm = 12;

/** The wall small, for a row of the rack: bands to one scale for all pieces, drops where the outer coat is wet. */
export function WallStrip({ standing }: { readonly standing: Standing }) {
  const bands = wallBands(standing);
  const { judged, reachedMm } = standing.wall;
  const pxPerMm = (width - 8) / Math.max(fullMm, reachedMm, judged?.neededMm ?? 0);
  const outer = bands.at(-1);
  const x = (mm: number): number => 8 + mm * pxPerMm;
  return (
    <svg
      className={styles["strip"]}
      viewBox={`0 0 ${width} ${height}`}
      width={width}
      height={height}
      aria-hidden="true"
    >
      <rect className={styles["core"]} width="7" height={height} />
      {bands.map(({ coat, fromMm, toMm }) => (
        <rect
          key={coat.id}
          className={styles[coat.kind]}
          x={x(fromMm)}
          width={Math.max(1, (toMm - fromMm) * pxPerMm)}
          height={height}
        />
      ))}
      {outer !== undefined && (outer.wetness === "wet" || outer.wetness === "maybe") && (
        <rect
          className={outer.wetness === "wet" ? styles["wet"] : styles["damp"]}
          x={x(outer.fromMm)}
          width={Math.max(4, (outer.toMm - outer.fromMm) * pxPerMm)}
          height={height}
        />
      )}
      {judged !== null && <path className={styles["needed"]} d={`M${x(judged.neededMm)} 0V${height}`} />}
    </svg>
  );
}
