import { memo, useMemo } from "react";
import type { WallBand, Wetness } from "./wallBands.ts";
import { bandPath, edgePath, grainPath, roughEdge } from "./wallShape.ts";
import styles from "./WallSection.module.css";

const stepPx = 7;

/** A band as it is drawn. */
export type DrawnBand = Omit<WallBand, "coat"> & {
  readonly coat: Pick<WallBand["coat"], "id" | "number" | "kind">;
};

type DrawingProps = {
  readonly bands: readonly DrawnBand[];
  readonly pxPerMm: number;
  readonly coreWidth: number;
  readonly top: number;
  readonly height: number;
  readonly patternId: string;
};

/** The bands themselves: slurry, grains of their stucco at their own size, rough outer faces, and what is still wet. */
export const WallDrawing = memo(function WallDrawing(props: DrawingProps) {
  const { bands, pxPerMm, coreWidth, top, height, patternId } = props;
  const shapes = useMemo(
    () => wallShapes({ bands, pxPerMm, coreWidth, top, height }),
    [bands, pxPerMm, coreWidth, top, height],
  );
  return shapes.map(({ band, body, face, grains }) => {
    const clip = `${patternId}-clip-${band.coat.number}`;
    const wet = wetFill[band.wetness];
    return (
      <g key={band.coat.id}>
        <clipPath id={clip}>
          <path d={body} />
        </clipPath>
        <path className={styles[band.coat.kind]} d={body} />
        <path className={styles["grains"]} d={grains} clipPath={`url(#${clip})`} />
        {wet !== null && <path d={body} fill={`url(#${patternId}-${wet})`} />}
        <path className={styles["edge"]} d={face} />
      </g>
    );
  });
});

function wallShapes({ bands, pxPerMm, coreWidth, top, height }: Omit<DrawingProps, "patternId">) {
  const edge = (xs: readonly number[]) => ({ xs, stepPx, topPx: top, bottomPx: top + height });
  let inner: readonly number[] = Array.from({ length: Math.ceil(height / stepPx) + 1 }, () => coreWidth);
  return bands.map((band) => {
    const { coat, grainMm } = band;
    const left = coreWidth + band.fromMm * pxPerMm;
    const right = coreWidth + band.toMm * pxPerMm;
    const roughPx = Math.min((grainMm?.coarse ?? 0.1) * pxPerMm * 0.35, (right - left) * 0.3);
    const rough = roughEdge({ seed: coat.number * 7919, heightPx: height, stepPx, roughPx });
    const outer = rough.map((offset) => right - offset);
    const body = bandPath(edge(inner), edge(outer));
    inner = outer;
    const grains =
      grainMm === null
        ? ""
        : grainPath({
            seed: coat.number * 104729,
            leftPx: left,
            widthPx: right - left,
            topPx: top,
            heightPx: height,
            finePx: grainMm.fine * pxPerMm,
            coarsePx: grainMm.coarse * pxPerMm,
          });
    return { band, body, face: edgePath(edge(outer)), grains };
  });
}

const wetFill: Record<Wetness, "wet" | "damp" | null> = {
  wet: "wet",
  maybe: "damp",
  unknown: "damp",
  "covered-damp": "damp",
  "covered-maybe": null,
  "covered-unknown": null,
  dry: null,
};

/** Wet: close drops on a wash. Damp or not certain: drops far apart. */
export function WetPattern({ id }: { readonly id: string }) {
  return (
    <defs>
      <pattern id={`${id}-wet`} width="10" height="12" patternUnits="userSpaceOnUse">
        <rect className={styles["wash"]} width="10" height="12" />
        <path className={styles["drop"]} d={drop(2.5, 1)} />
        <path className={styles["drop"]} d={drop(7.5, 7)} />
      </pattern>
      <pattern id={`${id}-damp`} width="18" height="24" patternUnits="userSpaceOnUse">
        <path className={styles["drop"]} d={drop(5, 3)} />
        <path className={styles["drop"]} d={drop(14, 15)} />
      </pattern>
    </defs>
  );
}

const drop = (x: number, y: number): string =>
  `M${x} ${y}c1.2 1.6 1.9 2.4 1.9 3.4a1.9 1.9 0 0 1-3.8 0c0-1 .7-1.8 1.9-3.4z`;
