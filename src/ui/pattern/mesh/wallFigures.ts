import { ownAlloy } from "../../../logbook/shop/ownAlloy.ts";
import type { Recipe, Shop } from "../../../logbook/piece/piece.ts";
import { floorMmOf, wallLimitsOf, wallStrength } from "../../../logbook/piece/wallBasis.ts";
import { cupLevelOf, resultsFor, type PatternStudy } from "./patternStudy.ts";
import { wallNeeds, type WallFigures, type WallNeed } from "./wallNeeds.ts";

/** What a wall is worked out with for this pattern; null while the alloy is not known. */
export function wallFiguresOf(
  study: Pick<PatternStudy, "alloyId">,
  { shop, recipe }: { readonly shop: Shop; readonly recipe: Recipe | null },
): WallFigures | null {
  const alloy = study.alloyId === null ? null : ownAlloy(study.alloyId, shop);
  if (alloy === null) return null;
  return {
    densityKgM3: alloy.liquidKgM3.value,
    strength: wallStrength(recipe, shop),
    limits: wallLimitsOf(recipe),
    floorMm: floorMmOf(recipe),
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
    cupLevelMm: cupLevelOf(study, results.highMm),
    lowMm: results.lowMm,
    figures,
  });
}
