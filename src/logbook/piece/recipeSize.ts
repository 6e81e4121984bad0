import { startingSizeKg } from "../../trade/startingRecipes.ts";
import type { PiecePlan } from "../entries/pieceBodies.ts";
import { ownAlloy } from "../shop/ownAlloy.ts";
import type { Recipe, Shop } from "./piece.ts";
import { litreOfKg, metalOf } from "./pieceMetal.ts";

/** Bronze the sizes are given in. */
const bronzeId = "c87300";
/** The sizes say "about": so much beyond them is no other size; judgement. */
const aboutShare = 0.2;

/** What a recipe is meant for, kg of bronze; null for one of the shop's own. */
export const recipeSizeKg = ({
  id,
  starting,
}: Pick<Recipe, "id" | "starting">): { readonly low: number; readonly high: number } | null =>
  starting ? (startingSizeKg[id] ?? null) : null;

/**
 * The plan's metal where it is another size than its recipe is meant for, as kg of bronze of the same volume; null where
 * it fits, or one of them is not known.
 */
export function otherSize(
  plan: Omit<PiecePlan, "name">,
  recipe: Pick<Recipe, "id" | "starting"> | null,
  shop: Shop,
): { readonly bronzeKg: number; readonly low: number; readonly high: number } | null {
  const size = recipe && recipeSizeKg(recipe);
  const bronze = ownAlloy(bronzeId, shop);
  const alloy = plan.alloyId === undefined ? bronze : ownAlloy(plan.alloyId, shop);
  const kg = metalOf({ plan: { name: "", ...plan } }, alloy);
  if (size === null || bronze === null || alloy === null || kg === null) return null;
  const bronzeKg = (litreOfKg(kg, alloy) * bronze.solidKgM3.value) / 1000;
  const fits = bronzeKg >= size.low * (1 - aboutShare) && bronzeKg <= size.high * (1 + aboutShare);
  return fits ? null : { bronzeKg, ...size };
}
