import { useId, useMemo } from "react";
import { tableMm } from "../../../logbook/drying/coatMm.ts";
import { startingRecipeOf } from "../../../trade/startingRecipes.ts";
import { stuccoOf } from "../../../trade/stuccos.ts";
import { WallDrawing, WetPattern, type DrawnBand } from "../../base/charts/WallDrawing.tsx";
import wall from "../../base/charts/WallSection.module.css";
import css from "./FirstScreen.module.css";

const width = 358;
const height = 132;
const coreWidth = 56;

/** The coats of a whole shell from the pattern outward, the last one still wet. */
function wholeShell(): readonly DrawnBand[] {
  let fromMm = 0;
  const coats = (startingRecipeOf("start-general")?.coats ?? []).slice(0, 8);
  return coats.map((coat, place) => {
    const stucco = coat.stuccoId === null ? null : stuccoOf(coat.stuccoId);
    const band: DrawnBand = {
      coat: { id: `first-${place}`, number: place + 1, kind: coat.kind },
      fromMm,
      toMm: fromMm + tableMm(coat),
      wetness: place === coats.length - 1 ? "wet" : "dry",
      grainMm: stucco === null ? null : { fine: stucco.fineMm, coarse: stucco.coarseMm },
    };
    fromMm = band.toMm;
    return band;
  });
}

/** A shell cut through: pattern, eight coats, water in the last. */
export function ShellPicture() {
  const id = useId();
  const bands = useMemo(() => wholeShell(), []);
  const pxPerMm = (width - coreWidth - 10) / (bands.at(-1)?.toMm ?? 1);
  return (
    <figure className={css["picture"]}>
      <svg
        viewBox={`0 0 ${width} ${height}`}
        role="img"
        aria-label="A shell cut through: the pattern, then eight coats from fine to coarse, the last one still wet"
      >
        <WetPattern id={id} />
        <rect className={wall["pattern"]} width={coreWidth} height={height} />
        <WallDrawing bands={bands} patternId={id} {...{ pxPerMm, coreWidth, top: 0, height }} />
      </svg>
    </figure>
  );
}

/** Water leaving a coat, down to dry. */
export function DryPicture() {
  return (
    <figure className={css["picture"]}>
      <svg viewBox="0 0 170 100" aria-hidden="true">
        <path className={css["water"]} d="M8 14C48 20 68 64 112 78L112 92L8 92Z" />
        <path className={css["curve"]} d="M8 14C48 20 68 64 112 78" />
        <path className={css["dry"]} d="M112 78C128 82 146 83 162 83" />
        <path className={css["dry"]} d="M121 58l8 9l16-19" />
        <path className={css["ground"]} d="M8 92H162" />
      </svg>
      <figcaption>Check from 16:20, in your own air.</figcaption>
    </figure>
  );
}

/** Metal in the cup and down the sprue, and the shell around it with its thickness. */
export function PourPicture() {
  return (
    <figure className={css["picture"]}>
      <svg viewBox="0 0 170 100" aria-hidden="true">
        <path
          className={css["shell"]}
          d="M46 4L60 30L60 52L26 52L26 96L118 96L118 52L84 52L84 30L98 4L90 4L78 26L66 26L54 4Z"
        />
        <path className={css["metal"]} d="M56 8H88L78 29V59H111V89H33V59H66V29Z" />
        <path className={css["measure"]} d="M140 8V89M134 8H146M134 89H146" />
      </svg>
      <figcaption>Strong enough for the metal above it.</figcaption>
    </figure>
  );
}
