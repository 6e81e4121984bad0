import { Link, useLocation } from "wouter";
import type { Recipe } from "../../../logbook/piece/piece.ts";
import { useFigures, useRecipes } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { Page } from "../../base/parts/Page.tsx";
import { newRecipeId } from "./newRecipe.ts";
import { recipeShellText } from "./recipeShell.ts";
import { RecipeCarries } from "./RecipeCarries.tsx";
import css from "./RecipesPage.module.css";

export function RecipesPage() {
  const recipes = useRecipes() ?? [];
  const [, goTo] = useLocation();
  const inUse = recipes.filter(({ retired }) => retired !== true);
  const away = recipes.filter(({ retired }) => retired === true);
  return (
    <Page
      title="Recipes"
      back={paths.shop}
      actions={<Button onPress={() => goTo(paths.recipe(newRecipeId))}>New recipe</Button>}
    >
      <p className={css["lead"]}>
        A recipe lists the coats and how dry each must be before the next. Copy a starting recipe, then make
        it yours.
      </p>
      <div className={css["list"]}>
        {inUse.map((recipe) => (
          <RecipeCard key={recipe.id} recipe={recipe} />
        ))}
      </div>
      {away.length > 0 && (
        <details>
          <summary>Retired ({away.length})</summary>
          <div className={css["list"]}>
            {away.map((recipe) => (
              <RecipeCard key={recipe.id} recipe={recipe} />
            ))}
          </div>
        </details>
      )}
    </Page>
  );
}

function RecipeCard({ recipe }: { readonly recipe: Recipe }) {
  const format = useFormat();
  const shop = useFigures();
  return (
    <Card>
      <h2 className={css["name"]}>
        <Link href={paths.recipe(recipe.id)}>{recipe.name}</Link>
      </h2>
      {shop !== undefined && <p>{recipeShellText(recipe.coats, shop.buildMm, format)}.</p>}
      <RecipeCarries recipe={recipe} />
      {recipe.note !== undefined && <p>{recipe.note}</p>}
      {recipe.starting && <p className={css["soft"]}>Starting recipe.</p>}
    </Card>
  );
}
