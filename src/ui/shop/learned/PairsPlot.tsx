import type { ShopPair } from "../../../logbook/drying/dryingPairs.ts";
import type { Shop } from "../../../logbook/piece/piece.ts";
import type { ShopLearning } from "../../../physics/evidence/shopLearning.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Plot, PlotFigure } from "../../base/charts/Plot.tsx";
import { PlotTable } from "../../base/charts/PlotTable.tsx";
import { plotFrame } from "../../base/charts/plotFrame.ts";
import { useWidth } from "../../base/charts/useWidth.ts";
import { plotPairs, plotReach, pairTicks } from "./pairPlot.ts";
import styles from "./PairsPlot.module.css";

const left = 46;

/** Hours calculated against hours seen, both by their logarithm; what was seen from one side only is a bar open at the other. */
export function PairsPlot(props: {
  readonly pairs: readonly ShopPair[];
  readonly figures: Shop;
  readonly learning: ShopLearning;
}) {
  const { pairs, figures, learning } = props;
  const format = useFormat();
  const [box, width] = useWidth<HTMLDivElement>(340);
  const side = Math.min(width - left - 14, 420);
  const drawn = plotPairs(pairs, new Set(figures.pairsLeftOut.map(({ coatId }) => coatId)));
  const reach = plotReach(drawn);
  const { lowH, highH } = reach;
  const frame = plotFrame({
    width,
    left,
    rightGap: width - left - side,
    height: side,
    x: [lowH, highH],
    y: [lowH, highH],
    isLog: true,
  });
  const { x, y, top, bottom } = frame;
  const { factor, low, high } = learning.shop;
  // A factor is a line beside the diagonal; it is cut where it leaves the plot.
  const line = (times: number): string => {
    const from = Math.max(lowH, lowH / times);
    const to = Math.min(highH, highH / times);
    return `${x(from)} ${y(from * times)}L${x(to)} ${y(to * times)}`;
  };
  const back = (times: number): string => line(times).split("L").toReversed().join("L");
  const ticks = pairTicks(reach).map((hours) => ({ at: hours, text: format.number(hours, 2) }));
  return (
    <PlotFigure
      title={
        learning.shop.pairs === 0
          ? `${pairs.length} ${pairs.length === 1 ? "coat" : "coats"} compared, nothing learned yet`
          : `Coats dry in ${format.number(factor, 2)} times the hours calculated`
      }
      table={
        <PlotTable
          head={["Coat", "Calculated, h", "Still wet at, h", "Dry at, h"]}
          rows={drawn.map(({ coatId, predictedH, wetH, dryH, isOut }, i) => ({
            key: coatId,
            cells: [
              `${pairs[i]?.coatNumber ?? ""}${isOut ? " (left out)" : ""}`,
              ...[predictedH, wetH, dryH].map((hours) =>
                hours === null ? "not seen" : format.number(hours, 1),
              ),
            ],
          }))}
        />
      }
      box={box}
      caption="Each bar is a coat, from still wet (stroke) to dry (dot). Dashed: one end not seen. Thin line: as calculated; thick: the shop's factor with its band. Pale: left out."
    >
      <Plot
        frame={frame}
        label={`Hours seen against hours calculated, ${pairs.length} ${pairs.length === 1 ? "coat" : "coats"}; the same numbers stand in the list beneath`}
        name="Seen, hours"
        levels={ticks}
        ticks={ticks}
        hasUprights
        axisName="Calculated, hours"
      >
        {learning.shop.pairs > 0 && (
          <>
            <path className={styles["band"]} d={`M${line(low)}L${back(high)}Z`} />
            <path className={styles["learned"]} d={`M${line(factor)}`} />
          </>
        )}
        <path className={styles["same"]} d={`M${line(1)}`} />
        {drawn.map(({ coatId, predictedH, wetH, dryH, weight, isOut }) => {
          const at = x(predictedH);
          const from = wetH === null ? bottom : y(wetH);
          const to = dryH === null ? top : y(dryH);
          return (
            <g key={coatId} className={isOut ? styles["out"] : undefined}>
              <path
                className={styles["bar"]}
                strokeWidth={1.5 + 2.5 * weight}
                strokeDasharray={wetH === null || dryH === null ? "3 3" : undefined}
                d={`M${at} ${from}V${to}`}
              />
              {wetH !== null && <path className={styles["wet"]} d={`M${at - 5} ${from}H${at + 5}`} />}
              {dryH !== null && <circle className={styles["dry"]} cx={at} cy={to} r={4.5} />}
            </g>
          );
        })}
      </Plot>
    </PlotFigure>
  );
}
