import { hotMorMPa } from "../../../logbook/piece/hotStrength.ts";
import { ownAlloy } from "../../../logbook/shop/ownAlloy.ts";
import type { Recipe, Shop } from "../../../logbook/piece/piece.ts";
import { ranges, within } from "../../../logbook/entries/ranges.ts";
import { resultsFor, type PatternStudy } from "./patternStudy.ts";
import { wallNeeds, type WallFigures, type WallNeed } from "./wallNeeds.ts";

/** Serves where the recipe has none of its own: the factor the wall rule asks for. */
const startingSafetyFactor = 3;

/** What a wall is reckoned with for this pattern; null while the alloy is not known. */
export function wallFiguresOf(
  study: Pick<PatternStudy, "alloyId">,
  { shop, recipe }: { readonly shop: Shop; readonly recipe: Recipe | null },
): WallFigures | null {
  const alloy = study.alloyId === null ? null : ownAlloy(study.alloyId, shop);
  if (alloy === null) return null;
  return {
    densityKgM3: alloy.liquidKgM3.value,
    morMPa: hotMorMPa(recipe, shop),
    safetyFactor: within(ranges.safetyFactor, recipe?.safetyFactor)
      ? recipe.safetyFactor
      : startingSafetyFactor,
    floorMm: within(ranges.floorMm, recipe?.floorMm) ? recipe.floorMm : 0,
  };
}

/** Walls as the piece hangs now, the most demanding first; empty while something is not known. */
export function needsOf(
  study: PatternStudy,
  from: { readonly shop: Shop; readonly recipe: Recipe | null },
): readonly WallNeed[] {
  const figures = wallFiguresOf(study, from);
  const results = resultsFor(study);
  if (figures === null || results === null || study.shape === null) return [];
  return wallNeeds({
    shape: study.shape,
    up: study.up,
    cupLevelMm: results.highMm + study.cupMm,
    figures,
  });
}
