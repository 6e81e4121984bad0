import type { ChargeParts } from "../../../physics/metal/melt.ts";
import type { PatternMeasured } from "../../../logbook/entries/pieceBodies.ts";
import { marginOf } from "../../../trade/volumeRoutes.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Card } from "../../base/parts/Card.tsx";
import { Choice } from "../../base/forms/Choice.tsx";
import { lossTaken, type LossKnown, type MarginBy } from "../../../logbook/casting/chargeSum.ts";
import type { SumForm } from "../../base/forms/bound.ts";
import { type MassDraft } from "../../../logbook/casting/massDraft.ts";
import { unknownLoss } from "../../../trade/metals/losses.ts";
import { chargeKinds, lossHint } from "./chargeWords.ts";
import { Reckoned, Rows } from "../../base/parts/Reckoned.tsx";
import sheet from "../../base/styles/sheet.module.css";
import { NumberOf, PickOf } from "../../base/forms/BoundFields.tsx";
import css from "./metal.module.css";

const gatingWays = [
  { value: "mass", label: "In metal" },
  { value: "wax", label: "Weighed as wax" },
] as const;
const meshWay = { value: "mesh", label: "From the 3D file" } as const;

/** What to weigh in: casting, gating, margin, heel and what burns away. */
export function ChargeCard({
  form,
  charge,
  margin,
  loss,
  mesh,
  isWhole,
}: {
  readonly form: SumForm<MassDraft>;
  readonly charge: ChargeParts | null;
  readonly margin: MarginBy;
  readonly loss: LossKnown | null;
  readonly mesh: PatternMeasured | null;
  /** The casting's figure holds its gating too. */
  readonly isWhole: boolean;
}) {
  const format = useFormat();
  const { draft, set } = form;
  const hasMeshGating = (mesh?.gatingMm3 ?? 0) > 0;
  return (
    <Card title="The charge">
      {charge === null ? (
        <p>Enter the casting’s metal to see what to weigh in.</p>
      ) : (
        <p className={css["big"]}>
          {format.show("kg", charge.chargeKg)} <small>to weigh in</small>
        </p>
      )}
      {draft.withGating === "no" && (
        <>
          <PickOf
            form={form}
            at="gatingBy"
            label="Sprue, cup, runners and vents"
            options={hasMeshGating ? [...gatingWays, meshWay] : gatingWays}
          />
          {draft.gatingBy === "mass" && <NumberOf form={form} at="gatingKg" label="Gating" quantity="kg" />}
          {draft.gatingBy === "wax" && (
            <NumberOf
              form={form}
              at="gatingWaxG"
              label="Wax of the gating"
              quantity="g"
              hint="All gating parts, cup and vents together."
            />
          )}
        </>
      )}
      <Choice
        label="Margin"
        options={(["measured", "weighed", "guessed"] as const).map((by) => ({
          value: by,
          label: `${format.show("percent", marginOf[by].value)}, ${by}`,
        }))}
        value={margin}
        onChange={(marginBy) => set({ marginBy })}
      />
      <PickOf form={form} at="chargeKind" label="Charged with" options={chargeKinds} />
      <div className={css["fields"]}>
        <NumberOf
          form={form}
          at="heelKg"
          label="Heel left in the crucible"
          quantity="kg"
          hint="Left on purpose. Empty if you pour it all."
        />
        <NumberOf
          form={form}
          at="lossShare"
          label="Melt loss"
          quantity="share"
          hint={lossHint(loss, format)}
        />
      </div>
      {charge !== null && <Parts charge={charge} loss={loss} margin={margin} isWhole={isWhole} />}
    </Card>
  );
}

function Parts({
  charge,
  loss,
  margin,
  isWhole,
}: {
  readonly isWhole: boolean;
  readonly charge: ChargeParts;
  readonly loss: LossKnown | null;
  readonly margin: MarginBy;
}) {
  const format = useFormat();
  const kg = (value: number): string => format.show("kg", value);
  return (
    <>
      <Rows
        rows={[
          ...(isWhole
            ? [["Casting and gating", kg(charge.castingKg)] as const]
            : [["Casting", kg(charge.castingKg)] as const, ["Gating", kg(charge.gatingKg)] as const]),
          ["Margin", kg(charge.marginKg)],
          ["Heel", kg(charge.heelKg)],
          ["In the crucible at the pour", kg(charge.meltKg)],
          ["Burnt, boiled or skimmed off", kg(charge.lossKg)],
          // Of a figure with its gating in it the yield is not known.
          ...(isWhole
            ? []
            : [["Yield, casting of all poured", format.show("percent", charge.yieldShare)] as const]),
        ]}
      />
      <Reckoned
        formula={`charge = (casting + gating + margin + heel) ÷ (1 − loss); the margin is a share of casting and gating, at least ${format.show("kg", 0.2)}`}
        given={[
          ["Margin", format.show("percent", marginOf[margin].value)],
          ["Loss", format.show("share", lossTaken(loss))],
        ]}
        source={`a mass balance, derived here; margin: ${marginOf[margin].source}; loss: ${loss?.source ?? unknownLoss.source}`}
      />
      <p className={sheet["soft"]}>
        Metal left over goes into ingot moulds: dry, preheated, large enough and ready before the pour. A
        yield of 45 to 65% is usual for sculpture in shell.
      </p>
    </>
  );
}
