import type { ShopPair } from "../../../logbook/drying/dryingPairs.ts";
import type { Shop } from "../../../logbook/piece/piece.ts";
import type { ShopLearning } from "../../../physics/evidence/shopLearning.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { useWidth } from "../../base/charts/useWidth.ts";
import { logScale, plotPairs, plotReach, plotTicks } from "./pairPlot.ts";
import styles from "./PairsPlot.module.css";

const top = 24;
const left = 46;
const rightGap = 14;

/** Hours calculated against hours seen, both by their logarithm; what was seen from one side only is a bar open at the other. */
export function PairsPlot(props: {
  readonly pairs: readonly ShopPair[];
  readonly figures: Shop;
  readonly learning: ShopLearning;
}) {
  const { pairs, figures, learning } = props;
  const format = useFormat();
  const [box, width] = useWidth<HTMLDivElement>(340);
  const side = Math.min(width - left - rightGap, 420);
  const bottom = top + side;
  const right = left + side;
  const drawn = plotPairs(pairs, new Set(figures.pairsLeftOut.map(({ coatId }) => coatId)));
  const reach = plotReach(drawn);
  const x = logScale(reach, { from: left, to: right });
  const y = logScale(reach, { from: bottom, to: top });
  const { lowH, highH } = reach;
  const { factor, low, high } = learning.shop;
  // A factor is a line beside the diagonal; it is cut where it leaves the plot.
  const line = (times: number): string => {
    const from = Math.max(lowH, lowH / times);
    const to = Math.min(highH, highH / times);
    return `${x(from)} ${y(from * times)}L${x(to)} ${y(to * times)}`;
  };
  const back = (times: number): string => line(times).split("L").toReversed().join("L");
  return (
    <figure className={styles["figure"]}>
      <div ref={box}>
        <svg
          className={styles["svg"]}
          width={width}
          height={bottom + 44}
          role="img"
          aria-label={`Hours seen against hours calculated, ${pairs.length} ${pairs.length === 1 ? "coat" : "coats"}; the same numbers stand in the list beneath`}
        >
          <text x={4} y={14} className={styles["name"]}>
            Seen, hours
          </text>
          {plotTicks(reach).map((hours) => (
            <g key={hours}>
              <path
                className={styles["rule"]}
                d={`M${left} ${y(hours)}H${right}M${x(hours)} ${top}V${bottom}`}
              />
              <text className={styles["level"]} x={left - 6} y={y(hours) + 4}>
                {format.number(hours, 2)}
              </text>
              <text className={styles["tick"]} x={x(hours)} y={bottom + 18}>
                {format.number(hours, 2)}
              </text>
            </g>
          ))}
          <text x={right} y={bottom + 38} className={styles["level"]}>
            Calculated, hours
          </text>
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
              <g key={coatId} className={isOut ? styles["out"] : styles["pair"]}>
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
        </svg>
      </div>
      <figcaption className={styles["caption"]}>
        A coat a bar, from still wet (stroke) to dry (dot); dashed where one end was not seen. Thin line: as
        calculated; thick: the shop's factor with its band. Pale: left out.
      </figcaption>
    </figure>
  );
}
