import type { WallStanding } from "../../../logbook/piece/standing.ts";
import type { Format } from "../format/units.ts";
import { neededText } from "../format/wallWords.ts";
import sheet from "../styles/sheet.module.css";
import styles from "./WallSection.module.css";

type NeededProps = {
  readonly neededMm: number;
  readonly floorMm: number;
  readonly pxPerMm: number;
  readonly coreWidth: number;
  readonly top: number;
  readonly bottom: number;
  readonly width: number;
  readonly format: Format;
};

/** Room for the longest of its words, px. */
const labelPx = 168;

/** Where the pour asks the shell to reach: a dashed line. */
export function NeededWall(props: NeededProps) {
  const { neededMm, floorMm, pxPerMm, coreWidth, top, bottom, width, format } = props;
  const x = coreWidth + neededMm * pxPerMm;
  const isLeft = x < width / 2;
  const isWhole = isLeft ? x + labelPx <= width : x >= labelPx;
  // Where neither side of the line has room the words begin, or end, at the frame.
  const wordsX = isWhole ? (isLeft ? x - 4 : x + 4) : isLeft ? width : 0;
  return (
    <g>
      <path className={styles["neededHalo"]} d={`M${x} ${top - 12}V${bottom + 12}`} />
      <path className={styles["neededLine"]} d={`M${x} ${top - 12}V${bottom + 12}`} />
      <text className={sheet["strong"]} x={wordsX} y={16} textAnchor={isLeft === isWhole ? "start" : "end"}>
        {neededText({ neededMm, floorMm }, format)}
      </text>
    </g>
  );
}

type RangeProps = {
  readonly wall: Pick<WallStanding, "lowMm" | "highMm">;
  readonly pxPerMm: number;
  readonly coreWidth: number;
  readonly y: number;
};

/** How thick the shell may really be: a bar from the low to the high end. */
export const WallRange = ({ wall: { lowMm, highMm }, pxPerMm, coreWidth, y }: RangeProps) => (
  <rect
    className={styles["range"]}
    x={coreWidth + lowMm * pxPerMm}
    y={y}
    width={(highMm - lowMm) * pxPerMm}
    height={6}
  />
);
