import type { WallStanding } from "../../../logbook/piece/standing.ts";
import type { Format } from "../format/units.ts";
import sheet from "../styles/sheet.module.css";
import styles from "./WallSection.module.css";

type NeededProps = {
  readonly judged: NonNullable<WallStanding["judged"]>;
  readonly pxPerMm: number;
  readonly coreWidth: number;
  readonly top: number;
  readonly bottom: number;
  readonly width: number;
  readonly format: Format;
  /** The band goes behind the wall, the line before it. */
  readonly part: "band" | "line";
};

/** Where the head asks the wall to reach: a dashed line, and how far it may lie to either side. */
export function NeededWall({ judged, pxPerMm, coreWidth, top, bottom, width, format, part }: NeededProps) {
  const at = (mm: number): number => coreWidth + mm * pxPerMm;
  const { requiredMm, requiredLowMm, requiredHighMm } = judged;
  const x = at(requiredMm);
  if (part === "band") {
    const left = at(requiredLowMm);
    return (
      <rect
        className={styles["neededBand"]}
        x={left}
        y={top - 12}
        width={at(requiredHighMm) - left}
        height={bottom - top + 24}
      />
    );
  }
  // Where the head asks for less than handling and burnout do, the line stands at the least wall.
  const text = `${requiredMm > judged.floorMm ? "head needs" : "needs at least"} ${format.show("mm", requiredMm)}`;
  const rightOfLine = x < width / 2;
  return (
    <g>
      <path className={styles["neededHalo"]} d={`M${x} ${top - 12}V${bottom + 12}`} />
      <path className={styles["neededLine"]} d={`M${x} ${top - 12}V${bottom + 12}`} />
      <rect
        className={styles["neededRange"]}
        x={at(requiredLowMm)}
        y={top - 12}
        width={at(requiredHighMm) - at(requiredLowMm)}
        height={7}
      />
      <text
        className={sheet["strong"]}
        x={rightOfLine ? x - 4 : x + 4}
        y={16}
        textAnchor={rightOfLine ? "start" : "end"}
      >
        {text}
      </text>
    </g>
  );
}
