import { streamOf, type EntryBodies } from "../../../logbook/entries/entry.ts";
import type { Recipe } from "../../../logbook/piece/piece.ts";
import type { RecipeBody } from "../../../trade/coats.ts";
import { useFleeting } from "../../base/state/fleeting.ts";
import { useRack } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { withoutEmpty } from "../../base/forms/formFields.ts";
import { Refused } from "../../base/forms/Refused.tsx";
import { useEntryForm } from "../../base/forms/useEntryForm.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { Page } from "../../base/parts/Page.tsx";
import { polymerStrength } from "../../../trade/shellStrength.ts";
import { CoatRows } from "./CoatRows.tsx";
import { blankRecipe, draftOfRecipe, freeName, recipeFields } from "./recipeForm.ts";
import { wallFigures } from "../../../trade/wallFigures.ts";
import { useFigures } from "../../base/state/live.ts";
import { recipeShellText } from "./recipeShell.ts";
import { NumberOf, TextOf, YesNoOf } from "../../base/forms/BoundFields.tsx";
import { RecipeCarries } from "./RecipeCarries.tsx";
import css from "./RecipeForm.module.css";

type Props = {
  /** Null for one that is not written yet. */
  readonly recipe: Recipe | null;
  readonly taken: readonly string[];
  readonly onSaved: (id: string) => void;
};

export function RecipeForm({ recipe, taken, onSaved }: Props) {
  const shop = useShop();
  const say = useFleeting((fleeting) => fleeting.say);
  const format = useFormat();
  const form = useEntryForm(`recipe/${recipe?.id ?? "new"}`, recipeFields, {
    start: draftOfRecipe(recipe ?? blankRecipe),
  });
  const { draft, set, errors } = form;
  const figures = useFigures();

  const write = (id: string, more: (body: RecipeBody) => Partial<EntryBodies["recipe-set"]>) =>
    form.save(
      (body) =>
        shop.log(
          {
            do: "log",
            stream: streamOf("recipe", id),
            type: "recipe-set",
            body: withoutEmpty({ ...body, ...more(body) }),
          },
          { quiet: true },
        ),
      () => {
        say("Recipe saved.");
        onSaved(id);
      },
    );
  const save = () =>
    write(recipe?.id ?? shop.moment().newId(), () =>
      recipe?.copiedFrom === undefined ? {} : { copiedFrom: recipe.copiedFrom },
    );

  return (
    <Page title={recipe?.name ?? "New recipe"} back={paths.recipes}>
      <form
        className={css["form"]}
        onSubmit={(event) => {
          event.preventDefault();
          void save();
        }}
      >
        {recipe !== null && <InUse recipeId={recipe.id} />}
        <TextOf form={form} at="name" label="Name" />
        <Card title="Coats">
          {figures !== undefined && (
            <p role="status">
              {recipeShellText(draft.coats, figures.buildMm, format)}. From the stucco table and your own
              figures. Caliper readings replace it piece by piece.
            </p>
          )}
          <RecipeCarries recipe={{ ...draft, id: recipe?.id }} />
          <CoatRows coats={draft.coats} errors={errors} onChange={(coats) => set({ coats })} />
        </Card>
        <Card title="Shell check">
          <NumberOf
            form={form}
            at="morMPa"
            label="Fired bend strength"
            hint={`${format.show("MPa", wallFigures.strengthMPa.value)} is a starting value for fused silica; shells lie between half and twice that. A broken test bar is better.`}
          />
          <NumberOf
            form={form}
            at="safetyFactor"
            label="Margin"
            hint={`3 is usual. 4 for more than ${format.show("kg", 25)} of metal, a first use, or people near. A flat then needs a sixth more shell, a tube nearly a third.`}
          />
          <NumberOf
            form={form}
            at="floorMm"
            label="Minimum shell thickness"
            hint="Needed for handling and burnout at any head."
          />
          <YesNoOf
            form={form}
            at="polymer"
            label="Polymer in the binder"
            hint={`Hot, it counts with ${format.show("percent", polymerStrength.hot.value)} of its strength; before the first fire with ${format.show("percent", polymerStrength.green.value)}.`}
          />
          <TextOf form={form} at="note" label="Note" multiline />
        </Card>
        {Object.values(errors).some(Boolean) && (
          <p role="alert" className={css["refused"]}>
            Not saved yet: see the marked fields.
          </p>
        )}
        <Refused form={form} />
        <Button kind="primary" size="big" onPress={save}>
          Save the recipe
        </Button>
        {recipe !== null && (
          <div className={css["keys"]}>
            <Button
              onPress={() =>
                write(shop.moment().newId(), ({ name }) => ({
                  name: freeName(name, taken),
                  copiedFrom: recipe.id,
                }))
              }
            >
              Save as a copy
            </Button>
            {recipe.retired === true ? (
              <Button kind="quiet" onPress={() => write(recipe.id, () => ({ retired: false }))}>
                Use it again
              </Button>
            ) : (
              <Button kind="quiet" onPress={() => write(recipe.id, () => ({ retired: true }))}>
                Retire it
              </Button>
            )}
            {form.isChanged && (
              <Button kind="quiet" onPress={form.restart}>
                Undo what is not saved
              </Button>
            )}
          </div>
        )}
      </form>
    </Page>
  );
}

function InUse({ recipeId }: { readonly recipeId: string }) {
  const count = (useRack() ?? []).filter(({ standing }) => standing.piece.plan.recipeId === recipeId).length;
  if (count === 0) return null;
  return (
    <p role="note">
      {count === 1 ? "One piece in work follows" : `${count} pieces in work follow`} this recipe. A change
      alters what
      {count === 1 ? " it wants" : " they want"} next; to leave {count === 1 ? "it" : "them"} alone, save a
      copy.
    </p>
  );
}
