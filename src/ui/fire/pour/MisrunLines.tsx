import { useState } from "react";
import type { Alloy, MeltFigures } from "../../../trade/metals/alloy.ts";
import { runFull } from "../../../logbook/casting/runSum.ts";
import type { PourShell } from "../../../logbook/pour/pourShells.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { NumberField } from "../../base/forms/NumberField.tsx";
import { RunVerdictText } from "../metal/RunVerdictText.tsx";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./pour.module.css";

/** Whether metal runs to the end of the thinnest section, and what to change: the shell first, the metal second. */
export function MisrunLines({
  alloy,
  figures,
  shell,
  metalC,
  faceC,
}: {
  readonly alloy: Alloy;
  readonly figures: MeltFigures;
  readonly shell: PourShell;
  readonly metalC: number;
  readonly faceC: number;
}) {
  const format = useFormat();
  const [wayMm, setWay] = useState<number | null>(100);
  const [widthMm, setWidth] = useState<number | null>(null);
  const superheatK = metalC - alloy.liquidusC.value;
  if (shell.thinnestMm === null)
    return (
      <p className={`${sheet["soft"]} ${styles["soft"]}`}>
        Its thinnest section is not set, so filling can’t be checked. Enter it with the shells.
      </p>
    );
  if (superheatK < 0)
    return (
      <p className={`${sheet["held"]} ${sheet["firm"]} ${sheet["inset"]}`}>
        At {format.show("temp", metalC)} it is not fully melted ({format.show("temp", alloy.liquidusC.value)}
        ).
      </p>
    );
  if (superheatK > 1000 || shell.thinnestMm > 200) return null;
  if (shell.metalKg === null || !(shell.metalKg > 0))
    return (
      <p className={`${sheet["soft"]} ${styles["soft"]}`}>
        Its metal mass is not set, so the filling speed is not known.
      </p>
    );
  const isGiven = wayMm !== null && wayMm > 0 && wayMm <= 5000;
  const advice = runFull({
    alloy,
    figures,
    hot: { metalC, shellC: faceC, wallMm: shell.thinnestMm },
    massKg: Math.min(440, shell.metalKg),
    wayMm: isGiven ? wayMm : 100,
    widthMm: widthMm !== null && widthMm > 0 && widthMm <= 5000 ? widthMm : null,
    gate: "bottom",
    fillS: null,
  });
  return (
    <div className={styles["stack"]}>
      <NumberField
        label="Longest run in the thinnest section"
        quantity="mm"
        min={1}
        max={5000}
        value={wayMm}
        onChange={setWay}
        hint={`From its gate to its far end. Starting value: ${format.show("mm", 100)}.`}
      />
      <NumberField
        label="Width of that section"
        quantity="mm"
        min={1}
        max={5000}
        value={widthMm}
        onChange={setWidth}
        hint="Across the flow. Empty: the whole casting is this thin."
      />
      <RunVerdictText advice={advice} className={advice.verdict === "runs" ? undefined : styles["warn"]} />
    </div>
  );
}
