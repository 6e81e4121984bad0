import type { LatestPour } from "../../physics/latestPour.ts";
import { useFormat } from "../app/useFormat.ts";
import { useWidth } from "../charts/useWidth.ts";
import styles from "./pour.module.css";

const barY = 22;
const barHeight = 20;

/** Minutes out of the kiln against the latest minute, surely and likely. */
export function LatestGauge({ outMin, latest }: { readonly outMin: number; readonly latest: LatestPour }) {
  const format = useFormat();
  const [box, width] = useWidth<HTMLDivElement>(340);
  const min = (value: number): string => `${format.number(value, 1)} min`;
  const surely = latest.surelyMin ?? latest.reachedMin;
  const likely = latest.likelyMin ?? latest.reachedMin;
  const over = (value: number | null): string =>
    value === null ? `over ${min(latest.reachedMin)}` : min(value);
  const end = Math.max(likely * 1.3, outMin * 1.05, 1);
  const x = (minute: number): number => 4 + (Math.min(minute, end) / end) * (width - 8);
  const words = latest.neverWarmEnough
    ? "It left the kiln too cold: put it back."
    : outMin <= surely
      ? `Metal by ${min(surely)}, ${min(surely - outMin)} left.`
      : outMin <= likely
        ? `Past the sure minute: at the very latest ${over(latest.likelyMin)}.`
        : "Too late by the estimate: put it back in the kiln.";
  return (
    <div ref={box}>
      <svg
        className={styles["gauge"]}
        width={width}
        height={64}
        viewBox={`0 0 ${width} 64`}
        role="img"
        aria-label={words}
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
          surely {over(latest.surelyMin)}
        </text>
        <text className={styles["gaugeText"]} x={width - 4} y={58} textAnchor="end">
          latest {over(latest.likelyMin)}
        </text>
        <path
          className={styles["gaugeNow"]}
          d={`M${x(outMin)} ${barY + barHeight + 5}l-9 -${barHeight + 22}h18z`}
        />
      </svg>
      <p role="status" className={outMin > surely ? styles["stop"] : styles["order"]}>
        {words}
      </p>
    </div>
  );
}
