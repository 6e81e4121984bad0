import { Link, useLocation } from "wouter";
import { streamOf } from "../../../logbook/entries/entry.ts";
import { useRecipes, useSettings } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useShop } from "../../base/state/shop.tsx";
import { asGiven, words } from "../../base/forms/formFields.ts";
import { Refused } from "../../base/forms/Refused.tsx";
import { useEntryForm } from "../../base/forms/useEntryForm.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Page } from "../../base/parts/Page.tsx";
import { FromPattern } from "../../pattern/mesh/FromPattern.tsx";
import { useStartPattern } from "../../pattern/mesh/useStartPattern.ts";
import sheet from "../../base/styles/sheet.module.css";
import { SelectOf, TextOf } from "../../base/forms/BoundFields.tsx";
import css from "./StartPage.module.css";

const fields = {
  name: words("name", "Give the piece a name.", 120),
  recipeId: asGiven<string | null>(null),
  /** The mesh it is begun from. */
  patternId: asGiven<string | null>(null),
};

/** A new piece: a name is enough, the rest can come when it is known. */
export function StartPage() {
  const shop = useShop();
  const [settings] = useSettings();
  const recipes = (useRecipes() ?? []).filter((recipe) => recipe.retired !== true);
  const [, goTo] = useLocation();
  const form = useEntryForm("start", fields);
  const pattern = useStartPattern(form.draft.patternId, form.draft.recipeId);
  const waitsFor = pattern === undefined ? "The pattern is still being read." : null;

  const start = async (after: (id: string) => string) => {
    // A pattern still being read is not left out.
    if (pattern === undefined) return void form.read();
    const id = shop.moment().newId();
    await form.save(
      ({ name, recipeId }) => {
        const plan = { ...pattern?.plan, name, ...(recipeId === null ? {} : { recipeId }) };
        const stream = streamOf("piece", id);
        return shop.logAll(
          [
            { do: "log", stream, type: "piece-started", body: { plan, roomId: settings.shopRoomId } },
            ...(pattern?.measured
              ? [{ do: "log", stream, type: "pattern-measured", body: pattern.measured } as const]
              : []),
          ],
          { quiet: true },
        );
      },
      () => goTo(after(id), { replace: true }),
    );
  };

  return (
    <Page title="New piece" back={paths.rack}>
      <form
        className={`${sheet["stack"]} ${css["form"]}`}
        onSubmit={(event) => {
          event.preventDefault();
          void start(() => paths.rack);
        }}
      >
        <TextOf form={form} at="name" label="Name" hint="Such as “Heron, left wing” or “Door handle 3”." />
        <SelectOf
          form={form}
          at="recipeId"
          label="Recipe"
          options={recipes.map(({ id, name, coats }) => ({
            value: id,
            label: `${name} (${coats.length} coats)`,
          }))}
          hint={
            recipes.find(({ id }) => id === form.draft.recipeId)?.note ??
            "Number and type of coats. You can change it later."
          }
          empty="None yet"
        />
        {pattern === null || pattern === undefined ? (
          <p className={sheet["pale"]}>
            Have a 3D file? <Link href={paths.patterns}>Start from it</Link>: metal, surface area, head and
            shell thickness come from it.
          </p>
        ) : (
          <FromPattern pattern={pattern} onLeave={() => form.set({ patternId: null })} />
        )}
        <Refused form={form} />
        <Button
          kind="primary"
          size="big"
          disabledReason={waitsFor}
          onPress={() => void start(() => paths.rack)}
        >
          Start it
        </Button>
        <Button kind="secondary" disabledReason={waitsFor} onPress={() => void start(paths.editPiece)}>
          Start and plan it
        </Button>
        <p className={sheet["pale"]}>The plan can wait until the shell or the metal needs it.</p>
      </form>
    </Page>
  );
}
