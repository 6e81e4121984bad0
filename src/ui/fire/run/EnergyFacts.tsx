import { useFormat } from "../../base/state/useFormat.ts";
import type { Kiln } from "../../../logbook/shop/shopThings.ts";
import { minutesWords } from "./segmentWords.ts";
import styles from "./run.module.css";

/** How long, how much energy and what it costs at the shop's own price. */
export function EnergyFacts({
  totalMin,
  topC,
  energyKWh,
  isGiven = false,
  kiln,
  took = "Takes",
}: {
  readonly totalMin: number;
  /** Null where it was neither read nor given. */
  readonly topC: number | null;
  readonly energyKWh: number | null;
  /** The energy was written down by a person, and is no estimate. */
  readonly isGiven?: boolean | undefined;
  readonly kiln: Kiln | null;
  readonly took?: string | undefined;
}) {
  const format = useFormat();
  const price = kiln?.pricePerKWh;
  return (
    <>
      <dl className={styles["facts"]}>
        <div>
          <dt>{took}</dt>
          <dd>{minutesWords(totalMin)}</dd>
        </div>
        <div>
          <dt>Hottest</dt>
          <dd>{topC === null ? <small>not read</small> : format.show("temp", topC)}</dd>
        </div>
        <div>
          <dt>{isGiven ? "Energy, as entered" : "Energy, estimate"}</dt>
          <dd>{energyKWh === null ? <small>not known</small> : `${format.number(energyKWh, 0)} kWh`}</dd>
        </div>
        <div>
          <dt>Cost, estimate</dt>
          <dd>
            {price === undefined || energyKWh === null ? (
              <small>{price === undefined ? "the kiln has no price yet" : "not known"}</small>
            ) : (
              `${format.number(energyKWh * price, 2)} ${kiln?.currency ?? ""}`.trim()
            )}
          </dd>
        </div>
      </dl>
      <details className={styles["screen"]}>
        <summary>How the energy is estimated</summary>
        <p>
          Heat into lining and shells, and the loss through the walls: none when cold, six tenths of the power
          at the kiln’s hottest. The lining is taken as 0.5 kJ a kelvin and litre; estimate, off by a third
          and more. Cost = energy × the kiln’s own price.
        </p>
      </details>
    </>
  );
}
