import type { Alloy } from "../../../trade/metals/alloy.ts";
import { runSpread } from "../../../physics/metal/fluidity.ts";
import type { PourHeat } from "../../../logbook/pour/pourHeat.ts";
import { leanDeg } from "../../../trade/gatingFigures.ts";
import { metalToShellWM2K, mouldHeat } from "../../../trade/mouldHeat.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Card } from "../../base/parts/Card.tsx";
import { LevelMark } from "../../base/parts/LevelMark.tsx";
import type { SumForm } from "../../base/forms/bound.ts";
import { type GatingDraft } from "../../../logbook/casting/gatingDraft.ts";
import { Reckoned, Rows, type Given } from "../../base/parts/Reckoned.tsx";
import { leanSum, type MetalHot, type RunSum } from "../../../logbook/casting/runSum.ts";
import sheet from "../../base/styles/sheet.module.css";
import { pourHeatReason } from "./pourHeatWords.ts";
import { RunVerdictText } from "./RunVerdictText.tsx";
import { hasWords, runVerdicts } from "./runWords.ts";
import { NumberOf } from "../../base/forms/BoundFields.tsx";
import css from "./metal.module.css";

/** Will the thinnest wall run full, what head it asks, and how far the mould may lean. */
export function RunCard({
  form,
  hot,
  run,
  alloy,
  heat,
  limitMS,
}: {
  readonly form: SumForm<GatingDraft>;
  readonly hot: MetalHot | null;
  readonly run: RunSum | null;
  readonly alloy: Alloy;
  /** Where a plan of this metal and section starts. */
  readonly heat: PourHeat;
  readonly limitMS: number;
}) {
  const format = useFormat();
  const shell = mouldHeat.shell.value;
  const hint = (c: number | undefined, why: string): string | undefined =>
    c === undefined ? undefined : `Empty: ${format.show("temp", c)}, ${why}.`;
  return (
    <Card title="Will the thinnest section fill?">
      <div className={css["fields"]}>
        <NumberOf form={form} at="wallMm" label="Thinnest metal" quantity="mm" />
        <NumberOf
          form={form}
          at="runMm"
          label="How far it must run"
          quantity="mm"
          hint="From the gate along the thin section to its far end."
        />
        <NumberOf
          form={form}
          at="runWidthMm"
          label="Width of that section"
          quantity="mm"
          hint="Across the flow. Empty: the whole casting is this thin."
        />
        <NumberOf
          form={form}
          at="shellC"
          label="Shell at the pour"
          quantity="temp"
          hint={hint(hot?.shellC, "usual for this section")}
        />
        <NumberOf
          form={form}
          at="metalC"
          label="Metal"
          quantity="temp"
          hint={hint(hot?.metalC, pourHeatReason(heat, format))}
        />
        <NumberOf
          form={form}
          at="wallHeadMm"
          label="Metal head over it"
          quantity="mm"
          hint="From that section up to the cup."
        />
      </div>
      {run === null ? (
        <p>
          {form.draft.wallMm === null
            ? "Enter the thinnest section."
            : `That is below the ${format.show("temp", alloy.liquidusC.value)} where ${alloy.name} is fully melted.`}
        </p>
      ) : (
        <RunSays run={run} wallMm={hot?.wallMm ?? 0} />
      )}
      <Lean form={form} limitMS={limitMS} />
      <Reckoned
        formula="the front takes √(way ÷ speed × fill time); speed = flow ÷ (wall × breadth), at most the gate's; flow = mass ÷ (density × fill time); without a breadth it takes the fill time. It has: heat to stop E = ρ·(s/2)·(f·L + c·ΔT) a face; time = the longer of (E·√π/2e·θ)² through the shell and E/(h·θ) at its skin. Slot: head = 2γ/(ρ·g·s), doubled by an oxide skin"
        given={[
          [
            "Shell k, ρ, c",
            `${format.show("wMK", shell.conductivityWMK)}, ${format.show("kgM3", shell.densityKgM3)}, ${format.show("jKgK", shell.heatJKgK)}`,
          ],
          [
            "Metal to shell",
            `${format.show("wM2K", metalToShellWM2K.value.low)} to ${format.show("wM2K", metalToShellWM2K.value.high)}`,
          ],
          ["Solid that stops it", `${runSpread.stopShare.low} to ${runSpread.stopShare.high}`],
          ["Heat lost from crucible to wall", format.show("tempDiff", runSpread.lostK)],
          ["Face of the shell, give or take", format.show("tempDiff", runSpread.shellK)],
          ["Thinner in places by", format.show("mm", runSpread.thinnerMm)],
        ]}
        source={`M. C. Flemings, Solidification Processing (1974), ch. 7 (from memory); shell: ${mouldHeat.shell.source}; contact: ${metalToShellWM2K.source}; heat lost: common practice, no source; face: judgement; slot: Laplace`}
      />
    </Card>
  );
}

function RunSays({ run, wallMm }: { readonly run: RunSum; readonly wallMm: number }) {
  const format = useFormat();
  const { has, capillary, advice, preheat } = run;
  const mm = (value: number): string => format.show("mm", roundedMm(value));
  return (
    <>
      {advice !== null && (
        <div>
          <RunVerdictText
            advice={advice}
            before={
              <>
                <LevelMark level={runVerdicts[advice.verdict].level} />{" "}
              </>
            }
          />
        </div>
      )}
      <Rows
        rows={[
          ["Time before it freezes", hasWords(has)],
          ...(preheat === null
            ? []
            : ([
                [
                  "Shell, usual for this section",
                  `${format.show("temp", preheat.value.lowC)} to ${format.show("temp", preheat.value.highC)}`,
                ],
              ] satisfies readonly Given[])),
          [`Head to enter a slot of ${format.show("mm", wallMm)}`, mm(capillary.needMm)],
        ]}
      />
      {capillary.isShort && (
        <p role="alert" className={css["warn"]}>
          The head is less than twice what such a slot needs ({mm(capillary.hasMm ?? 0)} of{" "}
          {mm(2 * capillary.needMm)}), so edges come out round. Raise the cup, or thicken the edge.
        </p>
      )}
    </>
  );
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
          {leanDeg.source}). Start almost level and raise it as it fills: the metal never falls.
        </p>
        <div className={css["fields"]}>
          <NumberOf form={form} at="leanMm" label="Length of the run" quantity="mm" />
          <NumberOf form={form} at="leanDeg" label="Angle from level" quantity="deg" />
        </div>
        {lean !== null && (
          <p>
            Up to {format.number(lean.limitDeg, 1)}° from level it stays below {format.show("speed", limitMS)}
            {lean.speedMS === null
              ? "."
              : `; at that angle it reaches ${format.show("speed", lean.speedMS)}.`}{" "}
            Friction ignored, so on the safe side.
          </p>
        )}
      </div>
    </details>
  );
}

/** Two figures: a run is no better known. */
const roundedMm = (mm: number): number => Number(mm.toPrecision(2));
