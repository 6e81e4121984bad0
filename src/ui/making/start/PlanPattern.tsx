import { geometryClasses, type GeometryClass } from "../../../trade/geometryClasses.ts";
import { patternMaterials, type PatternMaterial } from "../../../trade/patternMaterials.ts";
import { Card } from "../../base/parts/Card.tsx";
import { AreaEstimator } from "./AreaEstimator.tsx";
import { NumberOf, PickOf, TextOf, TickOf } from "../../base/forms/BoundFields.tsx";
import type { PlanForm } from "./planForm.ts";

const materials = (Object.keys(patternMaterials) as PatternMaterial[]).map((value) => ({
  value,
  label: patternMaterials[value].label,
}));
const classHints: Record<GeometryClass, string> = {
  open: "Air reaches every face.",
  corner: "Folds, undercuts, inside corners.",
  recess: "Deeper than wide: a cup, an undercut, a hollow base.",
  blind: "A closed core with one small mouth.",
};
const classes = (Object.keys(geometryClasses) as GeometryClass[]).map((value) => ({
  value,
  label: geometryClasses[value].label,
  hint: classHints[value],
}));

export function PlanPattern({ form }: { readonly form: PlanForm }) {
  const { draft, set } = form;
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
        hint="For the drying times. Not set counts as open, the quickest."
      />
      <TickOf
        form={form}
        at="pockets"
        label="Other slow places, for the final dry"
        options={classes.filter(({ value }) => value !== "open" && value !== draft.geometry)}
      />
      <NumberOf
        form={form}
        at="areaM2"
        label="Surface area, with gating"
        hint="For the water left from two weighings, and for slurry use. Type it, or work it out below."
      />
      <AreaEstimator material={draft.material} onUse={(areaM2) => set({ areaM2 })} />
      <TextOf form={form} at="note" label="Note" multiline />
    </Card>
  );
}
