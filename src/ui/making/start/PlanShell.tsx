import { useRecipes, useRooms } from "../../base/state/live.ts";
import { Card } from "../../base/parts/Card.tsx";
import { NumberOf, PickOf, SelectOf } from "../../base/forms/BoundFields.tsx";
import type { PlanForm } from "./planForm.ts";

const parts = [
  { value: "flat", label: "A flat", hint: "A plate, a base, a broad back." },
  { value: "round", label: "A round", hint: "A tube, a limb, the cup." },
] as const;

export function PlanShell({ form }: { readonly form: PlanForm }) {
  const { draft } = form;
  const recipes = (useRecipes() ?? []).filter(({ id, retired }) => retired !== true || id === draft.recipeId);
  const rooms = (useRooms() ?? []).filter(({ id, retired }) => !retired || id === draft.roomId);
  return (
    <Card title="The shell">
      <SelectOf
        form={form}
        at="recipeId"
        label="Recipe"
        options={recipes.map(({ id, name, coats }) => ({
          value: id,
          label: `${name} (${coats.length} coats)`,
        }))}
        hint="Which coats it gets, and when each counts as dry."
        empty="None yet"
      />
      <SelectOf
        form={form}
        at="roomId"
        label="Room"
        options={rooms.map(({ id, name }) => ({ value: id, label: name }))}
        hint="Its air sets the drying times."
        empty={null}
      />
      <PickOf
        form={form}
        at="part"
        label="The part of the wall that suffers most"
        options={parts}
        hint="Needed for the wall check. Look for the broadest flat low down; if there is none, the widest round."
      />
      {draft.part === "flat" && (
        <>
          <NumberOf
            form={form}
            at="widthMm"
            label="Width of the flat"
            hint="Its short side on the pattern, edge to edge. Ribs and bends count as edges."
          />
          <NumberOf form={form} at="lengthMm" label="Length of the flat" hint="Its long side." />
        </>
      )}
      {draft.part === "round" && (
        <NumberOf
          form={form}
          at="diameterMm"
          label="Diameter of the round"
          hint="With a caliper, or a string around it divided by 3.14."
        />
      )}
      <NumberOf
        form={form}
        at="headMm"
        label="Head"
        hint="Needed for the wall check. Stand the tree as it will be poured; measure from the lip of the cup straight down to the lowest wall."
      />
    </Card>
  );
}
