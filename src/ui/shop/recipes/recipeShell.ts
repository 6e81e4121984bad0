import { recipeWall } from "../../../logbook/piece/recipeWall.ts";
import type { OwnByKind } from "../../../logbook/shop/shopThings.ts";
import type { RecipeCoat } from "../../../trade/coats.ts";
import type { Format } from "../../base/format/units.ts";
import { wallRange } from "../../base/format/wallWords.ts";

/** "9 coats: a shell of 7.7 mm (6.2 mm to 9.6 mm)", as a piece of the recipe says it once they are on. */
export function recipeShellText(
  coats: readonly Pick<RecipeCoat, "kind" | "stuccoId">[],
  ownMm: OwnByKind,
  format: Format,
): string {
  const count = coats.length === 1 ? "1 coat" : `${coats.length} coats`;
  const wall = recipeWall(coats, ownMm);
  if (wall === null) return `${count}: shell not known`;
  return `${count}: a shell of ${wallRange({ likelyMm: wall.mm, lowMm: wall.lowMm, highMm: wall.highMm }, format)}`;
}
