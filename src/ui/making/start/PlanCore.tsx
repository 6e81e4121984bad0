import { coreFigures } from "../../../trade/coreFigures.ts";
import { NumberOf } from "../../base/forms/BoundFields.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import type { PlanForm } from "./planForm.ts";

/** The core of a hollow casting: what lifts it, what holds it, and how its inside dries. */
export function PlanCore({ form }: { readonly form: PlanForm }) {
  const format = useFormat();
  return (
    <Card title="A core">
      <NumberOf
        form={form}
        at="coreLitre"
        label="Volume of the core"
        hint="Empty: no core. The metal lifts a core; pins or its neck must hold it."
      />
      {form.draft.coreLitre !== null && (
        <>
          <NumberOf form={form} at="pins" label="Pins" hint="Steel pins through core and shell." />
          <NumberOf form={form} at="pinMm" label="Thickness of a pin" />
          <NumberOf
            form={form}
            at="mouthMm"
            label="Mouth of the core"
            hint="Across the opening where core and shell join. The inside dries through it."
          />
          <NumberOf
            form={form}
            at="coreDepthMm"
            label="Depth of the core"
            hint="From the mouth to the far end."
          />
          <NumberOf
            form={form}
            at="coreKgM3"
            label="Density of the core"
            hint={`Empty: ${format.show("kgM3", coreFigures.coreKgM3.value)}.`}
          />
          <NumberOf
            form={form}
            at="coreMPa"
            label="Fired bend strength of the core"
            hint={`Empty: ${format.show("MPa", coreFigures.coreMPa.value)}.`}
          />
        </>
      )}
    </Card>
  );
}
