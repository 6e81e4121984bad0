import { useRecipes, useRooms } from "../../base/state/live.ts";
import { SelectField } from "../../base/forms/SelectField.tsx";
import type { Form } from "../../base/forms/useForm.ts";
import { Card } from "../../base/parts/Card.tsx";
import { PickField } from "../../base/forms/PickField.tsx";
import { NumberField } from "../../base/forms/NumberField.tsx";
import type { PlanDraft } from "./planForm.ts";

const parts = [
  { value: "flat", label: "A flat", hint: "A plate, a base, a broad back." },
  { value: "round", label: "A round", hint: "A tube, a limb, the cup." },
] as const;

export function PlanShell({ form: { draft, set, errors } }: { readonly form: Form<PlanDraft> }) {
  const recipes = (useRecipes() ?? []).filter(({ id, retired }) => retired !== true || id === draft.recipeId);
  const rooms = (useRooms() ?? []).filter(({ id, retired }) => !retired || id === draft.roomId);
  return (
    <Card title="The shell">
      <SelectField
        label="Recipe"
        options={recipes.map(({ id, name, coats }) => ({
          value: id,
          label: `${name} (${coats.length} coats)`,
        }))}
        value={draft.recipeId}
        onChange={(recipeId) => set({ recipeId })}
        hint="Which coats it gets, and when each counts as dry."
        empty="None yet"
      />
      <SelectField
        label="Room"
        options={rooms.map(({ id, name }) => ({ value: id, label: name }))}
        value={draft.roomId}
        onChange={(roomId) => set({ roomId })}
        hint="Its air sets the drying times."
        empty={null}
      />
      <PickField
        label="The part of the wall that suffers most"
        options={parts}
        value={draft.part}
        onChange={(part) => set({ part })}
        hint="Needed for the wall check. Look for the broadest flat low down; if there is none, the widest round."
      />
      {draft.part === "flat" && (
        <>
          <NumberField
            label="Width of the flat"
            quantity="mm"
            min={0}
            value={draft.widthMm}
            onChange={(widthMm) => set({ widthMm })}
            hint="Its short side on the pattern, edge to edge. Ribs and bends count as edges."
            error={errors["widthMm"]}
          />
          <NumberField
            label="Length of the flat"
            quantity="mm"
            min={0}
            value={draft.lengthMm}
            onChange={(lengthMm) => set({ lengthMm })}
            hint="Its long side."
            error={errors["lengthMm"]}
          />
        </>
      )}
      {draft.part === "round" && (
        <NumberField
          label="Diameter of the round"
          quantity="mm"
          min={0}
          value={draft.diameterMm}
          onChange={(diameterMm) => set({ diameterMm })}
          hint="With a caliper, or a string around it divided by 3.14."
          error={errors["diameterMm"]}
        />
      )}
      <NumberField
        label="Head"
        quantity="mm"
        min={0}
        value={draft.headMm}
        onChange={(headMm) => set({ headMm })}
        hint="Needed for the wall check. Stand the tree as it will be poured; measure from the lip of the cup straight down to the lowest wall."
        error={errors["headMm"]}
      />
    </Card>
  );
}
