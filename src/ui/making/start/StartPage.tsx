import { Link, useLocation } from "wouter";
import { startPiece } from "../../../logbook/acts/startPiece.ts";
import { recipeOptions } from "../../base/format/recipeSizeWords.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { useRecipes, useSettings } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useShop } from "../../base/state/shop.tsx";
import { Refused } from "../../base/forms/Refused.tsx";
import { useEntryForm } from "../../base/forms/useEntryForm.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Page } from "../../base/parts/Page.tsx";
import { FromPattern } from "../../pattern/mesh/FromPattern.tsx";
import { useStartPattern } from "../../pattern/mesh/useStartPattern.ts";
import sheet from "../../base/styles/sheet.module.css";
import { SelectOf, TextOf } from "../../base/forms/BoundFields.tsx";
import { CoatsOn, kindsOn } from "./CoatsOn.tsx";
import { MadeAgain } from "./MadeAgain.tsx";
import { RecipeSize } from "./RecipeSize.tsx";
import { readStart, startFields } from "./startForm.ts";
import css from "./StartPage.module.css";

/** A new piece: a name is enough, the rest is asked when it is needed. */
export function StartPage() {
  const shop = useShop();
  const format = useFormat();
  const [settings] = useSettings();
  const [, goTo] = useLocation();
  const form = useEntryForm("start", startFields, { check: readStart });
  const { draft } = form;
  const recipes = (useRecipes() ?? []).filter(({ id, retired }) => retired !== true || id === draft.recipeId);
  const pattern = useStartPattern(draft.patternId, draft.recipeId);
  const waitsFor = pattern === undefined ? "The pattern is still being read." : null;
  const recipe = recipes.find(({ id }) => id === draft.recipeId) ?? null;
  const brought = draft.again?.plan ?? pattern?.plan ?? {};
  const isInWork = draft.coatsOn !== null;

  const start = async (after: string) => {
    // A pattern still being read is not left out.
    if (pattern === undefined) return void form.read();
    await form.save(
      ({ name, recipeId, again, coatsOn, kinds, lastAt, startedAt }) => {
        const { recipeId: _, ...plan } = brought;
        return shop.logAll(
          startPiece({
            id: shop.moment().newId(),
            plan: { ...plan, name, ...(recipeId === null ? {} : { recipeId }) },
            roomId: settings.shopRoomId,
            recipe,
            measured: again?.measured ?? pattern?.measured,
            startedAt,
            on:
              coatsOn === null || lastAt === null ? null : { kinds: kindsOn(coatsOn, kinds, recipe), lastAt },
          }),
          { quiet: true },
        );
      },
      () => goTo(after, { replace: true }),
    );
  };

  return (
    <Page title="New piece" back={paths.rack}>
      <form
        className={`${sheet["stack"]} ${css["form"]}`}
        onSubmit={(event) => {
          event.preventDefault();
          void start(isInWork ? paths.rack : paths.dip);
        }}
      >
        {/* Enter in a field starts it; of several fields the browser asks for a key of this kind. */}
        <input type="submit" hidden />
        <TextOf form={form} at="name" label="Name" hint="All it needs, such as “Door handle 3”." />
        <SelectOf
          form={form}
          at="recipeId"
          label="Recipe"
          options={recipeOptions(recipes, format)}
          hint={recipe === null ? "Number and type of coats. You can change it later." : recipe.note}
          empty="None yet"
        />
        <RecipeSize plan={brought} recipe={recipe} />
        {draft.again !== null ? (
          <MadeAgain again={draft.again} onLeave={() => form.set({ again: null })} />
        ) : pattern === null || pattern === undefined ? (
          <p className={sheet["pale"]}>
            Have a 3D file? <Link href={paths.patterns}>Start from it</Link>: metal, surface area, head and
            shell thickness come from it.
          </p>
        ) : (
          <FromPattern pattern={pattern} onLeave={() => form.set({ patternId: null })} />
        )}
        <CoatsOn form={form} recipe={recipe} />
        <Refused form={form} />
        {!isInWork && (
          <Button kind="primary" size="big" disabledReason={waitsFor} onPress={() => void start(paths.dip)}>
            Start and dip
          </Button>
        )}
        <Button
          kind={isInWork ? "primary" : "secondary"}
          size={isInWork ? "big" : "normal"}
          disabledReason={waitsFor}
          onPress={() => void start(paths.rack)}
        >
          Start it
        </Button>
        <p className={sheet["pale"]}>
          The plan can wait. What it lacks is asked when the shell or the metal needs it.
        </p>
      </form>
    </Page>
  );
}
