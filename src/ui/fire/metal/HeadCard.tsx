import { fallForSpeedM } from "../../../physics/metal/flow.ts";
import { dischargeCoefficients } from "../../../trade/gatingFigures.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Card } from "../../base/parts/Card.tsx";
import type { SumForm } from "../../base/forms/bound.ts";
import { type GatingDraft } from "../../../logbook/casting/gatingDraft.ts";
import type { GatingSum } from "../../../logbook/casting/gatingSum.ts";
import { GatePicture } from "./GatePicture.tsx";
import { Reckoned } from "../../base/parts/Reckoned.tsx";
import sheet from "../../base/styles/sheet.module.css";
import { NumberOf, PickOf } from "../../base/forms/BoundFields.tsx";
import css from "./metal.module.css";

const gates = [
  { value: "top", label: "From above" },
  { value: "bottom", label: "From below" },
  { value: "parting", label: "In between" },
] as const;
const flows = [
  { value: "tapered", label: "Tapered sprue, basin" },
  { value: "straight", label: "Straight, or sharp turns" },
  { value: "filter", label: "Through a filter" },
] as const;

/** Where the metal comes in, what pushes it, and how the sprue must narrow. */
export function HeadCard({ form, sum }: { readonly form: SumForm<GatingDraft>; readonly sum: GatingSum }) {
  const format = useFormat();
  const { draft } = form;
  const mm = (metres: number): string => format.show("mm", metres * 1000);
  return (
    <Card title="Head and sprue">
      <PickOf form={form} at="gate" label="Gate position" options={gates} />
      <GatePicture gate={draft.gate} />
      <div className={css["fields"]}>
        <NumberOf
          form={form}
          at="sprueMm"
          label="Cup to gate (h)"
          quantity="mm"
          hint="From the metal in the cup straight down to the gate."
        />
        {draft.gate !== "top" && (
          <NumberOf form={form} at="cavityMm" label="Height of the cavity (c)" quantity="mm" />
        )}
        {draft.gate === "parting" && (
          <NumberOf form={form} at="aboveGateMm" label="Cavity above the gate (p)" quantity="mm" />
        )}
        <NumberOf
          form={form}
          at="cupMm"
          label="Metal in the cup"
          quantity="mm"
          hint="Depth above the sprue’s top. Keep the cup two thirds full from the start."
        />
      </div>
      <PickOf form={form} at="flow" label="Sprue" options={flows} />
      {sum.noHead === "never-fills" && (
        <p role="alert" className={`${sheet["held"]} ${sheet["firm"]} ${sheet["inset"]}`}>
          The cavity is higher than the metal in the cup, so it never fills. Raise the cup.
        </p>
      )}
      {sum.headM !== null && (
        <p className={css["big"]}>
          {mm(sum.headM)} <small>mean head while it fills</small>
        </p>
      )}
      {sum.taper !== null && (
        <p>
          Sprue: its top {format.number(sum.taper, 2)} times its foot in cross-section, so it draws no air.
        </p>
      )}
      {draft.gate === "top" && (
        <p className={css["warn"]}>
          Free fall past {mm(fallForSpeedM(sum.limitMS))} is faster than {format.show("speed", sum.limitMS)}:
          the stream breaks up and folds its skin in. Lean the mould, or gate from below.
        </p>
      )}
      <Reckoned
        formula="from above H = h; from below H = h − c/2; between H = h − p²/2c; sprue: top ÷ foot = √(whole drop ÷ depth in the cup)"
        given={[["Discharge coefficient", format.number(dischargeCoefficients[draft.flow].value.likely, 2)]]}
        source={`P. N. Rao, Manufacturing Technology: Foundry, Forming and Welding, gating (from memory); sprue: Bernoulli and continuity, Kalpakjian & Schmid ch. 10 (from memory); ${dischargeCoefficients[draft.flow].source}`}
      />
    </Card>
  );
}
