import { useId } from "react";
import type { Standing } from "../../../logbook/piece/standing.ts";
import { useFormat } from "../state/useFormat.ts";
import type { Format } from "../format/units.ts";
import { sentence } from "../format/sentence.ts";
import { neededText, wallRange } from "../format/wallWords.ts";
import { NeededWall, WallRange } from "./NeededWall.tsx";
import { scaleBar } from "./scaleBar.ts";
import { useWidth } from "./useWidth.ts";
import { comingBands, coreOf, wallBands, wetnessWords, type WallBand } from "./wallBands.ts";
import { WallDrawing, WetPattern } from "./WallDrawing.tsx";
import { WallLegend } from "./WallLegend.tsx";
import sheet from "../styles/sheet.module.css";
import styles from "./WallSection.module.css";
import { WallTable } from "./WallTable.tsx";

const top = 40;
const height = 168;
const bottom = top + height;
const coreWidth = 44;
const rightSpace = 16;

/** The wall cut through: each coat a band to scale from the pattern outward, and the line the head asks for. */
export function WallSection({ standing }: { readonly standing: Standing }) {
  const format = useFormat();
  const [box, width] = useWidth<HTMLDivElement>(340);
  const id = useId();
  const bands = wallBands(standing);
  const coming = comingBands(standing);
  const { wall } = standing;
  const { judged, floorMm } = wall;
  const farMm = Math.max(wall.highMm, coming.at(-1)?.toMm ?? 0, judged?.neededMm ?? 0, 2) * 1.06;
  const pxPerMm = (width - coreWidth - rightSpace) / farMm;
  const bar = scaleBar(format, farMm / 3);
  const core = coreOf(standing);
  const drawnTo = bands.at(-1)?.toMm ?? 0;
  if (bands.length === 0 && judged === null)
    return <p>No coat yet. The shell is drawn here to scale, coat by coat.</p>;
  return (
    <figure className={sheet["stack2"]}>
      <div ref={box}>
        <svg
          className={styles["svg"]}
          width={width}
          height={bottom + 58}
          viewBox={`0 0 ${width} ${bottom + 58}`}
          role="img"
          aria-label={wallSummary(standing, bands, format)}
        >
          <WetPattern id={id} />
          {coming.map(({ step, kind, fromMm, toMm }) => (
            <rect
              key={step}
              className={`${styles[kind]} ${styles["coming"]}`}
              x={coreWidth + fromMm * pxPerMm}
              y={top}
              width={(toMm - fromMm) * pxPerMm}
              height={height}
            />
          ))}
          <rect className={styles[core]} x={0} y={top} width={coreWidth} height={height} />
          <text
            className={styles["coreName"]}
            transform={`translate(${coreWidth / 2 + 4} ${bottom - 10}) rotate(-90)`}
          >
            {core}
          </text>
          <WallDrawing bands={bands} patternId={id} {...{ pxPerMm, coreWidth, top, height }} />
          <BandNumbers bands={bands} pxPerMm={pxPerMm} />
          {judged !== null && (
            <NeededWall
              neededMm={judged.neededMm}
              {...{ floorMm, pxPerMm, coreWidth, top, bottom, width, format }}
            />
          )}
          {bands.length > 0 && (
            <g className={styles["measure"]}>
              <WallRange {...{ wall, pxPerMm, coreWidth }} y={bottom + 23} />
              <path d={`M${coreWidth} ${bottom + 26}v8h${drawnTo * pxPerMm}v-8`} />
              <text x={coreWidth + (drawnTo * pxPerMm) / 2} y={bottom + 50}>
                {format.show("mm", wall.likelyMm)} shell
              </text>
            </g>
          )}
        </svg>
      </div>
      <figcaption className={`${sheet["row24"]} ${styles["caption"]}`}>
        <WallLegend bands={bands} isComing={coming.length > 0} wall={wall} />
        <span className={`${sheet["line2"]} ${sheet["pale"]}`}>
          <span className={styles["bar"]} style={{ width: bar.mm * pxPerMm }} />
          {bar.text}
        </span>
      </figcaption>
      <details>
        <summary>The same as a table</summary>
        <WallTable bands={bands} standing={standing} />
      </details>
    </figure>
  );
}

/** Numbers under their bands, the outermost first to get its place where bands are too thin for all. */
function BandNumbers({ bands, pxPerMm }: { readonly bands: readonly WallBand[]; readonly pxPerMm: number }) {
  const middle = ({ fromMm, toMm }: WallBand): number => coreWidth + ((fromMm + toMm) / 2) * pxPerMm;
  const placed = bands.reduceRight<readonly WallBand[]>((shown, band) => {
    const last = shown.at(-1);
    const room = band.coat.number > 8 ? 20 : 12;
    return last !== undefined && middle(last) - middle(band) < room ? shown : [...shown, band];
  }, []);
  return placed.map((band) => (
    <text key={band.coat.id} className={styles["number"]} x={middle(band)} y={bottom + 18}>
      {band.coat.number}
    </text>
  ));
}

function wallSummary({ wall }: Standing, bands: readonly WallBand[], format: Format): string {
  const outer = bands.at(-1);
  const said = [
    `Shell in section: ${bands.length === 1 ? "1 coat" : `${bands.length} coats`}, ${wallRange(wall, format)}.`,
  ];
  const { judged, floorMm } = wall;
  if (judged !== null) said.push(`${sentence(neededText({ neededMm: judged.neededMm, floorMm }, format))}.`);
  if (outer !== undefined) said.push(`Outer coat ${wetnessWords[outer.wetness]}.`);
  return said.join(" ");
}
