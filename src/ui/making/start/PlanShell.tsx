import { recipeOptions } from "../../base/format/recipeSizeWords.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { useRecipes, useRooms } from "../../base/state/live.ts";
import { partOptions } from "../../base/ask/askFields.ts";
import { Card } from "../../base/parts/Card.tsx";
import { NumberOf, PickOf, SelectOf } from "../../base/forms/BoundFields.tsx";
import type { Standing } from "../../../logbook/piece/standing.ts";
import type { PiecePlan } from "../../../logbook/entries/pieceBodies.ts";
import type { PlanForm } from "./planForm.ts";
import { RecipeSize } from "./RecipeSize.tsx";
import { PlanSupport } from "./PlanSupport.tsx";
import { PlanVerdict } from "./PlanVerdict.tsx";

/** The metal as the form has it now. */
const planMetal = ({
  alloyId,
  metalBy,
  metalKg,
  metalLitre,
}: PlanForm["draft"]): Omit<PiecePlan, "name"> => ({
  ...(alloyId === null ? {} : { alloyId }),
  ...(metalBy === "mass" && metalKg !== null ? { metalKg } : {}),
  ...(metalBy === "volume" && metalLitre !== null ? { metalLitre } : {}),
});

export function PlanShell({ form, standing }: { readonly form: PlanForm; readonly standing: Standing }) {
  const { draft } = form;
  const format = useFormat();
  const recipes = (useRecipes() ?? []).filter(({ id, retired }) => retired !== true || id === draft.recipeId);
  const rooms = (useRooms() ?? []).filter(({ id, retired }) => !retired || id === draft.roomId);
  return (
    <Card title="The shell">
      <SelectOf
        form={form}
        at="recipeId"
        label="Recipe"
        options={recipeOptions(recipes, format)}
        hint="Its coats, and when each counts as dry."
        empty="None yet"
      />
      <RecipeSize plan={planMetal(draft)} recipe={recipes.find(({ id }) => id === draft.recipeId) ?? null} />
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
        label="The weakest part of the shell"
        options={partOptions}
        hint="Needed for the shell check. Look for the broadest flat low down; if there is none, the widest tube."
      />
      {(draft.part === "flat" || draft.part === "rim") && (
        <>
          <NumberOf
            form={form}
            at="widthMm"
            label="Width of the flat"
            hint="The short side on the pattern, edge to edge. Bends count as edges."
          />
          <NumberOf form={form} at="lengthMm" label="Length of the flat" hint="The long side." />
          <PlanSupport form={form} />
        </>
      )}
      {draft.part === "round" && (
        <NumberOf
          form={form}
          at="diameterMm"
          label="Diameter of the tube"
          hint="With a caliper, or a string around it divided by 3.14."
        />
      )}
      <NumberOf
        form={form}
        at="headMm"
        label="Head"
        hint="Stand the tree as it will be poured; then measure from the cup’s lip straight down to the lowest part."
      />
      <PlanVerdict form={form} standing={standing} />
    </Card>
  );
}
