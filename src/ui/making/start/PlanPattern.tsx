import { geometryClasses, type GeometryClass } from "../../../trade/geometryClasses.ts";
import { patternMaterials, type PatternMaterial } from "../../../trade/patternMaterials.ts";
import type { Form } from "../../base/forms/useForm.ts";
import { Card } from "../../base/parts/Card.tsx";
import { TickList } from "../../base/forms/TickList.tsx";
import { AreaEstimator } from "./AreaEstimator.tsx";
import { NumberOf, PickOf, TextOf } from "../../base/forms/BoundFields.tsx";
import type { PlanDraft } from "./planForm.ts";

const materials = (Object.keys(patternMaterials) as PatternMaterial[]).map((value) => ({
  value,
  label: patternMaterials[value].label,
}));
const classHints: Record<GeometryClass, string> = {
  open: "Air reaches every face.",
  corner: "Folds, undercuts, inside corners.",
  recess: "Deeper than wide: a cup, an armpit, a hollow base.",
  blind: "A closed core with one small mouth.",
};
const classes = (Object.keys(geometryClasses) as GeometryClass[]).map((value) => ({
  value,
  label: geometryClasses[value].label,
  hint: classHints[value],
}));

const isClass = (value: string): value is GeometryClass => Object.hasOwn(geometryClasses, value);

export function PlanPattern({ form: { draft, set, errors } }: { readonly form: Form<PlanDraft> }) {
  return (
    <Card title="The pattern">
      <TextOf form={form} at="name" label="Name" />
      <PickOf
        form={form}
        at="material"
        label="Made of"
        options={materials}
        hint="For the burnout, and for how cold a wet coat may get on wax."
      />
      <PickOf
        form={form}
        at="geometry"
        label="The part that dries last"
        options={classes}
        hint="For the drying times. Unknown is reckoned as open, which is the quickest."
      />
      <TickList
        label="Further slow places, for the last drying before burnout"
        options={classes.filter(({ value }) => value !== "open" && value !== draft.geometry)}
        ticked={draft.pockets}
        onChange={(pockets) => set({ pockets: pockets.filter(isClass) })}
      />
      <NumberOf
        form={form}
        at="areaM2"
        label="Surface, gating too"
        quantity="m2"
        min={0}
        hint="Turns two weighings into water still to go, and slurry into litres. Type it, or reckon it below."
      />
      <AreaEstimator material={draft.material} onUse={(areaM2) => set({ areaM2 })} />
      <TextOf form={form} at="note" label="Note" multiline />
    </Card>
  );
}
