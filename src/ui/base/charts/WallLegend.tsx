import { neededBy } from "../format/wallWords.ts";
import { useId } from "react";
import type { WallStanding } from "../../../logbook/piece/standing.ts";
import { WetPattern } from "./WallDrawing.tsx";
import { wetnessWords, type WallBand, type Wetness } from "./wallBands.ts";
import sheet from "../styles/sheet.module.css";
import styles from "./WallSection.module.css";

const order = ["wet", "maybe", "unknown", "covered-damp"] as const satisfies readonly Wetness[];

/** What the marks in the drawing mean, only those that are in it. */
export function WallLegend({
  bands,
  isComing,
  wall: { judged, floorMm },
}: {
  readonly isComing: boolean;
  readonly bands: readonly WallBand[];
  readonly wall: WallStanding;
}) {
  const id = useId();
  const outer = bands.at(-1);
  const shown = order.filter((wetness) => bands.some((band) => band.wetness === wetness));
  return (
    <ul className={`${sheet["row14"]} ${sheet["list"]} ${styles["legend"]}`}>
      {outer?.wetness === "dry" && <li>Outer coat dry</li>}
      {shown.map((wetness) => (
        <li key={wetness}>
          <svg width="22" height="22" aria-hidden="true">
            <WetPattern id={`${id}-${wetness}`} />
            <rect className={styles["swatch"]} width="22" height="22" />
            <rect
              width="22"
              height="22"
              fill={`url(#${id}-${wetness}-${wetness === "wet" ? "wet" : "damp"})`}
            />
          </svg>
          {legendWords[wetness](outer?.coat.number, bands)}
        </li>
      ))}
      {isComing && (
        <li>
          <svg width="22" height="22" aria-hidden="true">
            <rect
              className={`${styles["backup"]} ${styles["coming"]}`}
              x="0.5"
              y="0.5"
              width="21"
              height="21"
            />
          </svg>
          coats to come by the recipe
        </li>
      )}
      {bands.length > 0 && (
        <li>
          <svg width="22" height="22" aria-hidden="true">
            <rect className={styles["range"]} x="1" y="8" width="20" height="6" />
          </svg>
          how thick it may really be
        </li>
      )}
      {judged !== null && (
        <li>
          <svg width="22" height="22" aria-hidden="true">
            <path className={styles["neededLine"]} d="M11 0V22" />
          </svg>
          needed for {neededBy({ ...judged, floorMm })}
        </li>
      )}
    </ul>
  );
}

type Words = (outer: number | undefined, bands: readonly WallBand[]) => string;

const legendWords: Record<(typeof order)[number], Words> = {
  wet: (outer) => `coat ${outer ?? ""} is wet`,
  maybe: (outer) => `coat ${outer ?? ""} is perhaps dry`,
  unknown: () => wetnessWords.unknown,
  "covered-damp": (_, bands) => {
    const numbers = bands.filter((band) => band.wetness === "covered-damp").map((band) => band.coat.number);
    return `${numbers.length === 1 ? "coat" : "coats"} ${numbers.join(", ")} covered while damp`;
  },
};
