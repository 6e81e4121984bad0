import type { Outside, WallTemperature } from "../../../physics/heat/heat.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Plot, PlotFigure } from "../../base/charts/Plot.tsx";
import { PlotBand, PlotLevel, PlotLine } from "../../base/charts/PlotMarks.tsx";
import { PlotTable } from "../../base/charts/PlotTable.tsx";
import { minSec } from "./stopWords.ts";
import { plotFrame } from "../../base/charts/plotFrame.ts";
import { useWidth } from "../../base/charts/useWidth.ts";
import { tempTicks } from "../../base/charts/kilnScale.ts";

type Bed = Exclude<Outside, "blanket">;
type Curve = { readonly bed: Bed; readonly rows: readonly WallTemperature[] };

const names: Readonly<Record<Bed, string>> = {
  air: "free in air",
  "cold-sand": "in cold sand",
  "hot-sand": "in hot sand",
};
const looks = {
  air: { look: "ember", broken: undefined, key: "ember" },
  "cold-sand": { look: "water", broken: "ahead", key: "waterAhead" },
  "hot-sand": { look: "ink", broken: "dotted", key: "inkDotted" },
} as const;
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
  const planned = seen.find((curve) => curve.bed === bed);
  const band = (planned?.rows ?? []).map((row) => ({
    at: row.minute,
    low: row.cavityFaceLowC,
    high: row.cavityFaceHighC,
  }));
  const starts = seen.map(({ rows }) => rows[0]?.cavityFaceC ?? 0);
  const highC = Math.max(100, ...starts, ...band.map(({ high }) => high)) * 1.04;
  const frame = plotFrame({ width, height: 200, x: [0, shownMin], y: [0, highC] });
  const temp = (c: number): string => format.number(format.toShown("temp", c), 0);
  const cold = leastC === null ? undefined : planned?.rows.find(({ cavityFaceC }) => cavityFaceC < leastC);
  const title =
    leastC === null
      ? "How the face that metal meets cools"
      : cold === undefined
        ? `Warm enough for the first ${shownMin} min ${names[planned?.bed ?? "air"]}`
        : `Too cold after about ${minSec(cold.minute)} ${names[planned?.bed ?? "air"]}`;
  return (
    <PlotFigure
      title={title}
      box={box}
      legend={
        <>
          {seen.map((curve) => (
            <span key={curve.bed} data-key={looks[curve.bed].key}>
              {names[curve.bed]}
              {curve.bed === bed ? " (planned)" : ""}
            </span>
          ))}
          <span data-key="band">uncertainty</span>
          {leastC !== null && <span data-key="least">least for this section</span>}
        </>
      }
      table={
        <PlotTable
          summary="As a table"
          caption={`Inner face, ${format.unit("temp")}: likely, and lowest to highest in the planned bed`}
          head={["min", ...seen.map((curve) => names[curve.bed]), "band"]}
          rows={tableMin.map((minute) => {
            const known = band.find(({ at }) => at === minute);
            return {
              key: `${minute}`,
              cells: [
                format.number(minute, 1),
                ...seen.map(({ rows }) => {
                  const row = rows.find((one) => one.minute === minute);
                  return row === undefined ? "" : temp(row.cavityFaceC);
                }),
                known === undefined ? "" : `${temp(known.low)}–${temp(known.high)}`,
              ],
            };
          })}
        />
      }
    >
      <Plot
        frame={frame}
        label="Temperature of the inner face against minutes out of the kiln; the same as a table below"
        name={`Inner face, ${format.unit("temp")}`}
        levels={tempTicks(highC, format).map((c) => ({ at: c, text: temp(c) }))}
        ticks={[0, 3, 6, 9, 12, 15].map((minute) => ({ at: minute, text: `${minute}` }))}
        axisName="Minutes out of the kiln"
        under={<PlotBand frame={frame} points={band} />}
      >
        {leastC !== null && leastC < highC && (
          <PlotLevel
            frame={frame}
            at={leastC}
            look="least"
            name={`least ${format.show("temp", leastC)}`}
            isNameUnder
          />
        )}
        {seen.map((curve) => (
          <PlotLine
            key={curve.bed}
            frame={frame}
            points={curve.rows.map((row) => ({ at: row.minute, value: row.cavityFaceC }))}
            look={looks[curve.bed].look}
            broken={looks[curve.bed].broken}
          />
        ))}
      </Plot>
    </PlotFigure>
  );
}
