import { useState } from "react";
import { misrunAdvice, type MisrunStep } from "../../../physics/metal/misrun.ts";
import type { Alloy, MeltFigures } from "../../../trade/metals/alloy.ts";
import { mouldHeat } from "../../../trade/mouldHeat.ts";
import { preheatOf } from "../../../trade/preheat.ts";
import type { PourShell } from "../../../logbook/pour/pourShells.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import type { Format } from "../../base/format/units.ts";
import { NumberField } from "../../base/forms/NumberField.tsx";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./pour.module.css";

/** Beyond this many times the way that is asked for, a length in figures says nothing. */
const farShare = 5;

const verdictWords = {
  runs: "The thinnest section runs full.",
  "may-stop": "The thinnest section may stop short.",
  "will-stop": "The thinnest section will stop short.",
} as const;

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
  const [runMm, setRun] = useState<number | null>(100);
  const superheatK = metalC - alloy.liquidusC.value;
  if (shell.thinnestMm === null)
    return (
      <p className={`${sheet["soft"]} ${styles["soft"]}`}>
        Its thinnest section is not known, so nobody can say whether it runs full. Tell it with the shells.
      </p>
    );
  if (superheatK < 0)
    return (
      <p className={`${sheet["held"]} ${sheet["firm"]} ${sheet["inset"]}`}>
        At {format.show("temp", metalC)} it is not all melted ({format.show("temp", alloy.liquidusC.value)}):
        it does not run.
      </p>
    );
  if (superheatK > 1000 || shell.thinnestMm > 200) return null;
  const isGiven = runMm !== null && runMm > 0 && runMm <= 5000;
  const advice = misrunAdvice({
    run: {
      liquidKgM3: figures.crucibleKgM3.value,
      wallMm: shell.thinnestMm,
      latentJKg: figures.latentJKg.value,
      liquidJKgK: figures.liquidHeatJKgK.value,
      superheatK,
      liquidusC: alloy.liquidusC.value,
      shellC: faceC,
      mould: mouldHeat.shell.value,
    },
    neededMm: isGiven ? runMm : 100,
    speedMS: alloy.stream.gateSpeedMS.value,
    solidusC: alloy.solidusC.value,
    preheat: preheatOf({ alloy, wallMm: shell.thinnestMm })?.value ?? null,
  });
  return (
    <div className={styles["stack"]}>
      <NumberField
        label="Longest way in the thinnest section"
        quantity="mm"
        min={1}
        max={5000}
        value={runMm}
        onChange={setRun}
        hint="From its gate to its far end. Starting value: 100 mm."
      />
      <p className={advice.verdict === "runs" ? undefined : styles["warn"]}>
        <strong>{verdictWords[advice.verdict]}</strong>{" "}
        {advice.planMm === null
          ? "The stream does not stop."
          : advice.planMm > farShare * (isGiven ? runMm : 100)
            ? "By the estimate it runs far past that."
            : `Plan with ${format.show("mm", Math.round(advice.planMm))} in ${format.show("mm", shell.thinnestMm)} thin: half of what is reckoned.`}
      </p>
      {advice.steps.length > 0 && (
        <ul>
          {advice.steps.map((step) => (
            <li key={step.do}>{stepText(step, format)}</li>
          ))}
        </ul>
      )}
    </div>
  );
}

function stepText(step: MisrunStep, format: Format): string {
  const temp = (c: number): string => format.show("temp", Math.round(c / 5) * 5);
  switch (step.do) {
    case "heat-shell":
      return `Heat the shell first: its face wants ${temp(step.toC)} when metal comes. Only then hotter metal.`;
    case "add-gate-or-thicken":
      return `No shell heat is enough (${format.show("mm", Math.round(step.mostPlanMm))} at most): another gate nearer to it, or a thicker section.`;
    case "cool-shell":
      return `The shell is too near to where metal freezes: let it cool to ${temp(step.toC)}.`;
    case "shell-below-usual":
      return `The face is below what is usual for this section, ${temp(step.usualC)} at least.`;
    case "shell-above-usual":
      return `The face is above what is usual for this section, ${temp(step.usualC)} at most.`;
  }
}
