import type { BurnAir } from "../../../physics/drying/burnAir.ts";
import { limitsOfGases } from "../../../trade/fumeLimits.ts";
import type { BurnoutMaterial } from "../../../trade/patternBurnout.ts";
import { patternBurnout } from "../../../trade/patternBurnout.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Card } from "../../base/parts/Card.tsx";
import styles from "./run.module.css";

/** What burns, the air it takes and what comes off it, with the limits of what is breathed. */
export function PlanAir({
  air,
  material,
  massKg,
  staysKg,
}: {
  readonly air: BurnAir;
  readonly material: BurnoutMaterial;
  readonly massKg: number;
  /** What does not run out, and burns. */
  readonly staysKg: number;
}) {
  const format = useFormat();
  const burnout = patternBurnout[material];
  if (burnout === null) return null;
  const { heatKW, limitKW, airKg, airM3H, isTooMuch } = air;
  return (
    <Card title="Air and fume" tone={isTooMuch ? "watch" : "plain"}>
      <dl className={styles["facts"]}>
        <div>
          <dt>Heat of the pattern</dt>
          <dd>
            {format.show("kW", heatKW)} <small>limit for this kiln size: {format.show("kW", limitKW)}</small>
          </dd>
        </div>
        <div>
          <dt>Air while it burns</dt>
          <dd>
            {format.number(airM3H, 1)} m³/h <small>{format.show("kg", airKg)} in all, at least</small>
          </dd>
        </div>
      </dl>
      {staysKg < massKg && (
        <p>
          Of {format.show("kg", massKg)} of {burnout.label.toLowerCase()} about {format.show("kg", staysKg)}{" "}
          stays as a film and burns (estimate). The rest runs out of the kiln.
        </p>
      )}
      <p>
        Open vents, extraction on, outdoors or under a hood: never breathe over the kiln from{" "}
        {format.show("temp", 200)} to {format.show("temp", 550)}. Gives off{" "}
        {burnout.gases.map((gas) => gas.replaceAll("-", " ")).join(", ")}.
      </p>
      <details>
        <summary>How it is calculated, and the limits</summary>
        <p>
          Heat = mass × heating value ÷ time in the smoke: {format.show("kg", staysKg)} of{" "}
          {burnout.label.toLowerCase()} at {format.number(burnout.heatMJKg.value, 0)} MJ/kg (
          {burnout.heatMJKg.source}). Air = mass × {format.number(burnout.airKgKg.value, 1)} (
          {burnout.airKgKg.source}); no spare counted. The kiln’s limit: 150 kW a cubic metre, 30 kW at most;
          judgement, starting value.
        </p>
        <ul>
          {limitsOfGases(burnout.gases).map(({ label, limit, unit, kind }) => (
            <li key={label}>
              {label}: {format.number(limit.value, 3)} {unit},{" "}
              {kind === "ceiling" ? "never above" : "mean over 8 h"} ({limit.source})
            </li>
          ))}
        </ul>
        <p>Below a limit is not the same as safe. Local limits come first.</p>
      </details>
    </Card>
  );
}
