import type { ReactNode } from "react";
import type { FactsTogether, FireFacts } from "../../../logbook/fire/fireFacts.ts";
import type { BurnoutMaterial } from "../../../trade/patternBurnout.ts";
import { patternBurnout } from "../../../trade/patternBurnout.ts";
import type { StuccoFamily } from "../../../trade/shellThermal.ts";
import { shellThermal } from "../../../trade/shellThermal.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { SelectField } from "../../base/forms/SelectField.tsx";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { Choice } from "../../base/forms/Choice.tsx";
import { NumberField } from "../../base/forms/NumberField.tsx";
import type { Bound } from "../../base/forms/bound.ts";
import { sourceWords } from "./factWords.ts";
import type { PlanDraft, PlanInputs } from "../../../logbook/fire/planDraft.ts";
import sheet from "../../base/styles/sheet.module.css";
import { NumberOf } from "../../base/forms/BoundFields.tsx";
import styles from "./run.module.css";

const materials = Object.entries(patternBurnout).flatMap(([value, burnout]) =>
  burnout === null ? [] : [{ value, label: burnout.label }],
);
const families = Object.entries(shellThermal).map(([value, { label }]) => ({ value, label }));
const yesNo = [
  { value: "no", label: "No" },
  { value: "yes", label: "Yes" },
] as const;
const damps = [
  { value: "dry", label: "Dry" },
  { value: "damp", label: "Not sure, or damp" },
  { value: "patched-wet", label: "Freshly repaired or rinsed" },
] as const;

/** What the plan rests on, each with where it comes from; whatever the log says can be said over. */
export function PlanFacts({
  form,
  facts,
  together,
  preheatC,
}: {
  readonly form: Bound<PlanDraft>;
  readonly facts: readonly FireFacts[];
  readonly together: FactsTogether;
  readonly preheatC: number;
}) {
  const format = useFormat();
  const { draft, set } = form;
  const { told, purpose, after } = draft;
  const tell = (changes: Partial<PlanInputs>): void => set({ told: { ...told, ...changes } });
  const from = sourceWords(facts, { together, told, format });
  const isTold = Object.keys(told).length > 0;
  const pours = purpose === "preheat" || after === "pour";
  return (
    <Card title="From the log">
      <div className={styles["grid"]}>
        {purpose === "burnout" && (
          <>
            <SelectField
              label="Pattern of"
              options={materials}
              value={told.material ?? (together.material === "other" ? null : together.material)}
              hint={from.material}
              empty="Choose the closest material"
              onChange={(material) =>
                tell({ material: (material ?? undefined) as BurnoutMaterial | undefined })
              }
            />
            <NumberField
              label="Mass of all patterns"
              quantity="kg"
              value={told.patternKg === undefined ? together.patternKg : told.patternKg}
              min={0}
              max={1000}
              hint={from.patternKg}
              onChange={(patternKg) => tell({ patternKg })}
            />
            {isPrinted(told.material ?? together.material) && (
              <>
                <NumberField
                  label="Print walls"
                  quantity="mm"
                  value={told.skinMm ?? null}
                  min={0}
                  max={20}
                  hint="A hollow print is lighter: enter walls and infill."
                  onChange={(skinMm) => tell({ skinMm })}
                />
                <NumberField
                  label="Infill"
                  quantity="percent"
                  value={told.infill ?? null}
                  min={0}
                  max={1}
                  hint="Infill set in the slicer."
                  onChange={(infill) => tell({ infill })}
                />
              </>
            )}
            <NumberOf
              form={form}
              at="blindMm"
              label="Deepest blind hollow"
              quantity="mm"
              min={0}
              max={2000}
              hint="Inside the shell, where air must find its way: 3 min more a millimetre at the top. Not in the log."
            />
          </>
        )}
        <NumberField
          label="Shell thickness, the thickest"
          quantity="mm"
          value={told.wallMm === undefined ? together.wallMm : told.wallMm}
          min={1}
          max={60}
          hint={from.wallMm}
          onChange={(wallMm) => tell({ wallMm })}
        />
        <NumberField
          label="Mass of all shells"
          quantity="kg"
          value={told.shellKg === undefined ? together.shellKg : told.shellKg}
          min={0.01}
          max={5000}
          hint={from.shellKg}
          onChange={(shellKg) => tell({ shellKg })}
        />
        <SelectField
          label="Main stucco"
          empty={null}
          options={families}
          value={draft.family}
          hint="Not in the log. Starting value: fused silica, the usual one."
          onChange={(family) => set({ family: (family ?? "fused-silica") as StuccoFamily })}
        />
      </div>
      <Fact hint={from.damp}>
        <Choice
          label="The shell is"
          options={damps}
          value={told.damp ?? together.damp}
          onChange={(damp) => tell({ damp })}
        />
      </Fact>
      <div className={styles["grid"]}>
        <Fact hint={from.firedBefore}>
          <Choice
            label="Fired before"
            options={yesNo}
            value={(told.firedBefore ?? together.firedBefore) ? "yes" : "no"}
            onChange={(answer) => tell({ firedBefore: answer === "yes" })}
          />
        </Fact>
        <Fact hint={from.seenAbove1100}>
          <Choice
            label={`Has seen more than ${format.show("temp", 1100)}`}
            options={yesNo}
            value={(told.seenAbove1100 ?? together.seenAbove1100) ? "yes" : "no"}
            onChange={(answer) => tell({ seenAbove1100: answer === "yes" })}
          />
        </Fact>
      </div>
      <div className={styles["grid"]}>
        {purpose !== "preheat" && (
          <NumberField
            label="Fire to"
            quantity="temp"
            value={draft.fireC}
            min={400}
            max={1500}
            hint={`Empty: ${format.show("temp", 870)}, or what the pattern needs.`}
            onChange={(fireC) =>
              set({ fireC: fireC === null || (fireC >= 400 && fireC <= 1500) ? fireC : draft.fireC })
            }
          />
        )}
        {pours && (
          <NumberField
            label="Shell at the pour"
            quantity="temp"
            value={draft.preheatC ?? preheatC}
            min={20}
            max={1300}
            hint="From the pour plan. Otherwise usual for metal and section, plus the heat lost on the way to the metal."
            onChange={(next) =>
              set({ preheatC: next === null || (next >= 20 && next <= 1300) ? next : draft.preheatC })
            }
          />
        )}
      </div>
      {isTold && (
        <div>
          <Button kind="quiet" onPress={() => set({ told: {} })}>
            Back to the log’s values
          </Button>
        </div>
      )}
    </Card>
  );
}

const isPrinted = (material: string | null): boolean =>
  material === "pla" || material === "pvb" || material === "resin";

function Fact({ hint, children }: { readonly hint: string; readonly children: ReactNode }) {
  return (
    <div>
      {children}
      <p className={sheet["soft"]}>{hint}</p>
    </div>
  );
}
