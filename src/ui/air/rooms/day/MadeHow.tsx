import { practice } from "../../../../trade/practice.ts";

/** The sums behind the day's picture, and where they are from. */
export function MadeHow() {
  return (
    <details>
      <summary>How this is calculated</summary>
      <p>
        Between two readings temperature and vapour pressure follow a straight line. The dew point is where
        the air’s vapour would saturate. The saturation deficit is the vapour it holds when saturated less
        what it holds now: Δρ = (p<sub>sat</sub> − p) / (461.5 J/kg K · T). Saturation pressure: IAPWS SR1-86
        (1992) over water, IAPWS R14-08 (2011) over ice. In frost the humidity here is over ice, a little more
        than a sensor shows.
      </p>
      <p>
        The forecast repeats yesterday’s air, shifted by today’s difference. That shift fades with a time
        constant of 6 h (an estimate). Its error comes from the same forecast made on each of the last 28
        days.
      </p>
      <p>Limits of damp air: {practice.rhFinalDry.source}.</p>
    </details>
  );
}
