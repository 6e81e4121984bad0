import { nextCoat } from "../../../logbook/piece/nextAction.ts";
import { wallStanding } from "../../../logbook/piece/shellWall.ts";
import type { Standing } from "../../../logbook/piece/standing.ts";
import type { PiecePlan } from "../../../logbook/entries/pieceBodies.ts";
import { useRecipes } from "../../base/state/live.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { withoutEmpty } from "../../base/forms/formFields.ts";
import { WallVerdict } from "../piece/WallVerdict.tsx";
import { readPlan, type PlanForm } from "./planForm.ts";

/** The shell against the pour by what the form holds now, not yet saved; nothing while a figure is missing or wrong. */
export function PlanVerdict({ form, standing }: { readonly form: PlanForm; readonly standing: Standing }) {
  const format = useFormat();
  const recipes = useRecipes();
  const read = readPlan(form.draft, format);
  // Without its recipe the shell would be held against another wall for a moment.
  if (!read.ok || recipes === undefined) return null;
  const given = Object.entries(read.value.plan).filter(([, value]) => value !== null);
  const plan = withoutEmpty(Object.fromEntries(given)) as PiecePlan;
  const recipe = recipes.find(({ id }) => id === plan.recipeId) ?? null;
  const piece = { ...standing.piece, plan };
  const next = nextCoat(piece, recipe);
  const wall = wallStanding({ piece, recipe, shop: standing.shop, drying: standing.drying, next });
  if ((wall.planned?.judged ?? wall.judged) === null) return null;
  return (
    <div role="status">
      <WallVerdict standing={{ ...standing, piece, recipe, next, wall }} />
    </div>
  );
}
