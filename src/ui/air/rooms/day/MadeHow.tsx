import { practice } from "../../../../trade/practice.ts";

/** The sums behind the day's picture, and where they are from. */
export function MadeHow() {
  return (
    <details>
      <summary>How this is worked out</summary>
      <p>
        Between two readings temperature and vapour pressure go in a straight line. The dew point is where the
        air’s vapour would be saturated; the saturation deficit is the vapour it holds when saturated less
        what it holds now: Δρ = (p<sub>sat</sub> − p) / (461.5 J/kg K · T). Saturation pressure: IAPWS SR1-86
        (1992) over water, IAPWS R14-08 (2011) over ice. In frost the humidity here is over ice, a little more
        than the sensor tells: sensors refer it to water.
      </p>
      <p>
        The forecast takes the air of the same clock time a day earlier, moved by today’s difference in
        temperature and dew point, which fades with a time constant of 6 h (an estimate). Its error is found
        by making the same forecast at this hour of each of the last 28 days and comparing it with what was
        then read.
      </p>
      <p>Limits of damp air: {practice.rhFinalDry.source}.</p>
    </details>
  );
}
