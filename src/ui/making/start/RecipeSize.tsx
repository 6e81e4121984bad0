import type { PiecePlan } from "../../../logbook/entries/pieceBodies.ts";
import { builtInShop } from "../../../logbook/piece/builtIns.ts";
import type { Recipe } from "../../../logbook/piece/piece.ts";
import { otherSize } from "../../../logbook/piece/recipeSize.ts";
import { sizeWords } from "../../base/format/recipeSizeWords.ts";
import { useFigures } from "../../base/state/live.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import sheet from "../../base/styles/sheet.module.css";

/** Says that the metal is another size than the recipe is for; nothing where they go together. */
export function RecipeSize({
  plan,
  recipe,
}: {
  readonly plan: Omit<PiecePlan, "name">;
  readonly recipe: Recipe | null;
}) {
  const format = useFormat();
  const shop = useFigures() ?? builtInShop;
  const other = otherSize(plan, recipe, shop);
  if (other === null) return null;
  return (
    <p role="note" className={sheet["firm"]}>
      This recipe is for {sizeWords(other, format)} of bronze. The metal of this piece takes as much room as{" "}
      {format.show("kg", other.bronzeKg)}. Choose another recipe, or check the shell against the pour.
    </p>
  );
}
