import type { CoatDrying } from "../../../logbook/piece/standing.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./DryingCard.module.css";

/** The sum behind the ready time, with its numbers and where it comes from. */
export function DoseDetails({ drying }: { readonly drying: CoatDrying }) {
  const format = useFormat();
  const { doseNeededGHM3, doseSuppliedGHM3, startKgM2, depthM, targetDryness } = drying;
  const dose = (value: number): string => `${format.number(value, 1)}\u00a0g·h/m³`;
  return (
    <div className={`${sheet["stack2"]} ${styles["dose"]}`}>
      <p>
        The room has given it {dose(doseSuppliedGHM3)} of dry air
        {doseNeededGHM3 === null
          ? "; what it needs is not known."
          : `, of the ${dose(doseNeededGHM3)} it needs.`}
      </p>
      <p className={`${sheet["sunk"]} ${sheet["scroll"]} ${sheet["inset"]}`}>dW/dt = −Δρ / (A + G + B·δ)</p>
      <p>
        Δρ is how much more water the room’s air could hold; summed over the hours it is the dose. A is the
        resistance of the air, G of pockets in the shape, B·δ of the dried layer. It started with{" "}
        {format.number(startKgM2 * 1000, 0)} g/m² of water in {format.show("mm", depthM * 1000)} of shell. It
        counts as dry with {format.show("percent", targetDryness)} of the critical water gone.
      </p>
      <p>
        Source: vapour and heat resistances in series, derived for this app; saturation by IAPWS SR1-86(1992).
        Starting values are estimates, good to about a factor of two until your checks correct them.
      </p>
    </div>
  );
}
