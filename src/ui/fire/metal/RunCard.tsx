import type { MisrunStep } from "../../../physics/metal/misrun.ts";
import type { Alloy } from "../../../trade/metals/alloy.ts";
import { leanDeg } from "../../../trade/gatingFigures.ts";
import { metalToShellWM2K, mouldHeat } from "../../../trade/mouldHeat.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import type { Format } from "../../base/format/units.ts";
import { Card } from "../../base/parts/Card.tsx";
import { LevelMark } from "../../base/parts/LevelMark.tsx";
import type { SumForm } from "../../base/forms/bound.ts";
import { type GatingDraft } from "../../../logbook/casting/gatingDraft.ts";
import { shortSpan } from "./heatWords.ts";
import { Reckoned, Rows, type Given } from "../../base/parts/Reckoned.tsx";
import { leanSum, type MetalHot, type RunSum } from "../../../logbook/casting/runSum.ts";
import sheet from "../../base/styles/sheet.module.css";
import { NumberOf } from "../../base/forms/BoundFields.tsx";
import css from "./metal.module.css";

const verdicts = {
  runs: { level: "clear", says: "It runs full: half the length it could run is enough." },
  "may-stop": {
    level: "watch",
    says: "It may stop: only the whole length it could run is enough, and walls run shorter.",
  },
  "will-stop": { level: "hold", says: "It stops before it is full." },
} as const;

/** Will the thinnest wall run full, what head it asks, and how far the mould may lean. */
export function RunCard({
  form,
  hot,
  run,
  alloy,
  limitMS,
}: {
  readonly form: SumForm<GatingDraft>;
  readonly hot: MetalHot | null;
  readonly run: RunSum | null;
  readonly alloy: Alloy;
  readonly limitMS: number;
}) {
  const format = useFormat();
  const hint = (c: number | undefined): string | undefined =>
    c === undefined ? undefined : `Empty: ${format.show("temp", c)}, the middle of what is usual.`;
  return (
    <Card title="Will the thinnest wall run full?">
      <div className={css["fields"]}>
        <NumberOf form={form} at="wallMm" label="Thinnest metal" quantity="mm" />
        <NumberOf
          form={form}
          at="runMm"
          label="How far it must run"
          quantity="mm"
          hint="From the gate along the thin wall to its far end."
        />
        <NumberOf
          form={form}
          at="shellC"
          label="Shell at the pour"
          quantity="temp"
          hint={hint(hot?.shellC)}
        />
        <NumberOf form={form} at="metalC" label="Metal" quantity="temp" hint={hint(hot?.metalC)} />
        <NumberOf
          form={form}
          at="wallHeadMm"
          label="Metal standing over it"
          quantity="mm"
          hint="From that wall up to the cup."
        />
      </div>
      {run === null ? (
        <p>
          {form.draft.wallMm === null
            ? "Give the thinnest metal and it is reckoned."
            : `That is below the ${format.show("temp", alloy.liquidusC.value)} where ${alloy.name} is all melted.`}
        </p>
      ) : (
        <RunSays run={run} wallMm={hot?.wallMm ?? 0} />
      )}
      <Lean form={form} limitMS={limitMS} />
      <Reckoned
        formula="heat to stop E = ρ·(s/2)·(f·L + c·ΔT) a face; time = the longer of (E·√π/2e·θ)² through the shell and E/(h·θ) at its skin; run = time × speed, half of it to plan with; slot: head = 2γ/(ρ·g·s), doubled by an oxide skin"
        given={[
          ["Shell k, ρ, c", "1.0 W/m·K, 1900 kg/m³, 1100 J/kg·K"],
          ["Metal to shell", `${metalToShellWM2K.value.low} to ${metalToShellWM2K.value.high} W/m²K`],
          ["Solid that stops it", "0.2 to 0.35"],
        ]}
        source={`M. C. Flemings, Solidification Processing (1974), ch. 7 (from memory); shell: ${mouldHeat.shell.source}; half to plan with: common practice, no source; slot: Laplace`}
      />
    </Card>
  );
}

function RunSays({ run, wallMm }: { readonly run: RunSum; readonly wallMm: number }) {
  const format = useFormat();
  const { time, length, speedMS, capillary, advice, preheat } = run;
  const mm = (value: number): string => format.show("mm", roundedMm(value));
  return (
    <>
      <Rows
        rows={[
          [
            "It runs for",
            time === null
              ? "as long as it likes: the shell is about as hot as the liquidus"
              : `${shortSpan(time.lowS)} to ${shortSpan(time.highS)}, likely ${shortSpan(time.likelyS)}`,
          ],
          ...(length === null
            ? []
            : ([
                [`At ${format.show("speed", speedMS)} it gets`, mm(length.mostMm)],
                ["To plan with, half of it", mm(length.planMm)],
              ] satisfies readonly Given[])),
          ...(preheat === null
            ? []
            : ([
                [
                  "Shell, usual for this wall",
                  `${format.show("temp", preheat.value.lowC)} to ${format.show("temp", preheat.value.highC)}`,
                ],
              ] satisfies readonly Given[])),
          [`Head to enter a slot of ${format.show("mm", wallMm)}`, mm(capillary.needMm)],
        ]}
      />
      {capillary.isShort && (
        <p role="alert" className={css["warn"]}>
          Less than twice the head such a slot asks stands over it ({mm(capillary.hasMm ?? 0)} of{" "}
          {mm(2 * capillary.needMm)}): edges come out round. Raise the cup, or thicken the edge.
        </p>
      )}
      {advice !== null && (
        <div>
          <p>
            <LevelMark level={verdicts[advice.verdict].level} />{" "}
            <strong>{verdicts[advice.verdict].says}</strong>
          </p>
          {advice.steps.length > 0 && (
            <ul>
              {advice.steps.map((step) => (
                <li key={step.do}>{stepWords(step, format)}</li>
              ))}
            </ul>
          )}
        </div>
      )}
    </>
  );
}

function stepWords(step: MisrunStep, format: Format): string {
  const temp = (c: number): string => format.show("temp", Math.round(c / 10) * 10);
  switch (step.do) {
    case "heat-shell":
      return `Heat the shell to ${temp(step.toC)} first; the metal second.`;
    case "add-gate-or-thicken":
      return `No shell heat that is allowed is enough: at most ${format.show("mm", roundedMm(Math.min(step.mostPlanMm, 99_999)))}. Add a gate nearer to it, or thicken the wall.`;
    case "cool-shell":
      return `Keep the shell below ${temp(step.toC)}, ${format.show("tempDiff", 50)} under where the metal begins to melt: hotter, grain coarsens and gas is drawn.`;
    case "shell-below-usual":
      return `The shell is colder than usual for this wall, which begins at ${temp(step.usualC)}.`;
    case "shell-above-usual":
      return `The shell is hotter than usual for this wall, which ends at ${temp(step.usualC)}.`;
  }
}

function Lean({ form, limitMS }: { readonly form: SumForm<GatingDraft>; readonly limitMS: number }) {
  const format = useFormat();
  const lean = leanSum(form.draft, limitMS);
  return (
    <details>
      <summary>Leaning the mould</summary>
      <div className={sheet["stack3"]}>
        <p>
          In its sand, {format.show("deg", leanDeg.value.low)} to {format.show("deg", leanDeg.value.high)} off
          upright for the first second lets metal run down the sprue's wall and gas go out beside it (
          {leanDeg.source}). Begun almost level and raised as it fills, it never falls at all.
        </p>
        <div className={css["fields"]}>
          <NumberOf form={form} at="leanMm" label="Length it runs down" quantity="mm" />
          <NumberOf form={form} at="leanDeg" label="Angle from level" quantity="deg" />
        </div>
        {lean !== null && (
          <p>
            Up to {format.number(lean.limitDeg, 1)}° from level it stays below {format.show("speed", limitMS)}
            {lean.speedMS === null
              ? "."
              : `; at that angle it reaches ${format.show("speed", lean.speedMS)}.`}{" "}
            Without friction, so on the safe side.
          </p>
        )}
      </div>
    </details>
  );
}

/** Two figures: a run is no better known. */
const roundedMm = (mm: number): number => Number(mm.toPrecision(2));
