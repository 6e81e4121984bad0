import type { LatestPour } from "../../../physics/metal/latestPour.ts";
import { useWidth } from "../../base/charts/useWidth.ts";
import { minSec, stopRule } from "./stopWords.ts";
import styles from "./pour.module.css";

const barY = 22;
const barHeight = 20;

/** Minutes out of the kiln against the latest minute, surely and likely. */
export function LatestGauge({ outMin, latest }: { readonly outMin: number; readonly latest: LatestPour }) {
  const [box, width] = useWidth<HTMLDivElement>(340);
  const surely = latest.surelyMin ?? latest.reachedMin;
  const likely = latest.likelyMin ?? latest.reachedMin;
  const over = (value: number | null): string =>
    value === null ? `over ${minSec(latest.reachedMin)}` : minSec(value);
  const end = Math.max(likely * 1.3, outMin * 1.05, 1);
  const x = (minute: number): number => 4 + (Math.min(minute, end) / end) * (width - 8);
  const rule = stopRule(latest, outMin);
  return (
    <div ref={box}>
      <svg
        className={styles["gauge"]}
        width={width}
        height={64}
        viewBox={`0 0 ${width} 64`}
        role="img"
        aria-label={rule.text}
      >
        <rect
          className={styles["gaugeSure"]}
          x={x(0)}
          y={barY}
          width={Math.max(0, x(surely) - x(0))}
          height={barHeight}
        />
        <rect
          className={styles["gaugeLikely"]}
          x={x(surely)}
          y={barY}
          width={Math.max(0, x(likely) - x(surely))}
          height={barHeight}
        />
        <rect
          className={styles["gaugeLate"]}
          x={x(likely)}
          y={barY}
          width={Math.max(0, x(end) - x(likely))}
          height={barHeight}
        />
        <text className={styles["gaugeText"]} x={4} y={58}>
          pour within {over(latest.surelyMin)}
        </text>
        <text className={styles["gaugeText"]} x={width - 4} y={58} textAnchor="end">
          stop at {over(latest.likelyMin)}
        </text>
        <path
          className={styles["gaugeNow"]}
          d={`M${x(outMin)} ${barY + barHeight + 5}l-9 -${barHeight + 22}h18z`}
        />
      </svg>
    </div>
  );
}
