import { Link, useLocation, useParams } from "wouter";
import { useRecipes } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { Empty } from "../../base/parts/Empty.tsx";
import { Page } from "../../base/parts/Page.tsx";
import { newRecipeId } from "./newRecipe.ts";
import { RecipeForm } from "./RecipeForm.tsx";

export function RecipePage() {
  const { id } = useParams<{ id: string }>();
  const recipes = useRecipes();
  const [, goTo] = useLocation();
  if (recipes === undefined) return <Page title="Recipe">{null}</Page>;
  const recipe = recipes.find((one) => one.id === id) ?? null;
  if (recipe === null && id !== newRecipeId)
    return (
      <Page title="Recipe" back={paths.recipes}>
        <Empty title="No such recipe">
          <p>
            It is not in this device's log. <Link href={paths.recipes}>All recipes</Link>
          </p>
        </Empty>
      </Page>
    );
  return (
    <RecipeForm
      key={id}
      recipe={recipe}
      taken={recipes.map(({ name }) => name)}
      onSaved={(saved) => goTo(saved === id ? paths.recipes : paths.recipe(saved), { replace: true })}
    />
  );
}
