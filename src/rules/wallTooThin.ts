import { ownAlloy } from "../logbook/shop/ownAlloy.ts";
import { backupMm } from "../logbook/piece/shellWall.ts";
import {
  coatsToAdd,
  headPressurePa,
  requiredWallMm,
  safetyBand,
  safetyReached,
} from "../physics/shell/wall.ts";
import { coatMm } from "../logbook/drying/coatMm.ts";
import type { Standing } from "../logbook/piece/standing.ts";
import { figure } from "./finding.ts";
import { halvedStrength } from "./halvedStrength.ts";
import { coatsAreDone } from "./stage.ts";
import type { FindingOf } from "./variants.ts";

type Found = FindingOf<"wall-too-thin">;

const source =
  "plate and tube formulas: Roark's Formulas for Stress and Strain, 7th ed., table 11.4; safety bands 3, 2 and 1.2: judgement; least wall: common practice, no source";

/**
 * The wall that is there against the wall the head needs, once no coat is to come. Before that, whether the
 * recipe will get there: a piece at its second coat is not a thin one.
 */
export function wallTooThin(standing: Standing): readonly Found[] {
  if (standing.piece.coats.length === 0 && coatsAreDone(standing)) return [];
  return coatsAreDone(standing) ? ofWall(standing) : ofPlan(standing);
}

/** The coats for which the wall counts at half its strength, by number. */
const dampTexts = (standing: Standing): Readonly<Record<string, string>> => {
  const damp = halvedStrength(standing)?.damp ?? [];
  return damp.length === 0 ? {} : { damp: damp.map(({ coat }) => coat.number).join(", ") };
};

function ofWall(standing: Standing): readonly Found[] {
  const { wall, recipe, piece } = standing;
  const { reachedMm, judged } = wall;
  const entries = [...piece.coats.map(({ id }) => id), ...piece.wall.slice(-1).map(({ id }) => id)];
  if (judged !== null && judged.band !== "carries")
    return [
      {
        rule: "wall-too-thin",
        variant: judged.band,
        level: judged.band === "marginal" ? "watch" : "hold",
        figures: {
          reachedMm: figure(reachedMm, "mm"),
          requiredMm: figure(judged.requiredMm, "mm"),
          requiredLowMm: figure(judged.requiredLowMm, "mm"),
          requiredHighMm: figure(judged.requiredHighMm, "mm"),
          safety: figure(judged.safety, "factor"),
          pressure: figure(judged.headPressurePa, "Pa"),
          coatsToAdd: figure(judged.coatsToAdd, "count"),
        },
        texts: dampTexts(standing),
        entries,
        source,
      },
    ];
  const floorMm = judged?.floorMm ?? recipe?.floorMm ?? null;
  if (floorMm === null || wall.missing.includes("coats") || !isShort(reachedMm, floorMm)) return [];
  return [
    {
      rule: "wall-too-thin",
      variant: "below-floor",
      level: "watch",
      figures: { reachedMm: figure(reachedMm, "mm"), floorMm: figure(floorMm, "mm") },
      texts: {},
      entries,
      source,
    },
  ];
}

function ofPlan(standing: Standing): readonly Found[] {
  const { wall, recipe, piece, next, shop } = standing;
  if (recipe === null || next === null) return [];
  const skipped = new Set(piece.skipped.map(({ step }) => step));
  const left = recipe.coats.filter((_, step) => step >= next.step && !skipped.has(step));
  const plannedMm = left.reduce((sum, coat) => sum + coatMm(coat, shop.buildMm), wall.reachedMm);
  const floorMm = wall.judged?.floorMm ?? recipe.floorMm;
  const entries = piece.coats.map(({ id }) => id);
  const load = loadOf(piece, shop);
  const morMPa = wall.judged?.morMPa ?? shop.morMPa ?? recipe.morMPa;
  const safety =
    load === null || plannedMm <= 0 ? null : safetyReached({ ...load, morMPa, wallMm: plannedMm });
  const band = safety === null ? null : safetyBand(safety);
  if (load !== null && band !== null && band !== "carries") {
    const requiredMm = requiredWallMm({ ...load, morMPa, safetyFactor: recipe.safetyFactor });
    return [
      {
        rule: "wall-too-thin",
        variant: "plan-short",
        level: band === "marginal" ? "note" : "watch",
        figures: {
          plannedMm: figure(plannedMm, "mm"),
          requiredMm: figure(requiredMm, "mm"),
          safety: figure(safety, "factor"),
          coatsToAdd: figure(
            coatsToAdd({
              requiredMm: Math.min(thickestMm, requiredMm),
              haveMm: Math.min(thickestMm, plannedMm),
              coatMm: backupMm(recipe, shop),
            }),
            "count",
          ),
        },
        texts: dampTexts(standing),
        entries,
        source,
      },
    ];
  }
  if (!isShort(plannedMm, floorMm)) return [];
  return [
    {
      rule: "wall-too-thin",
      variant: "plan-below-floor",
      level: "note",
      figures: { plannedMm: figure(plannedMm, "mm"), floorMm: figure(floorMm, "mm") },
      texts: {},
      entries,
      source,
    },
  ];
}

/** As far as the sums of the wall go. */
const thickestMm = 500;

function loadOf({ plan }: Standing["piece"], shop: Standing["shop"]) {
  const alloy = plan.alloyId === undefined ? null : ownAlloy(plan.alloyId, shop);
  if (alloy === null || plan.headM === undefined || plan.part === undefined) return null;
  const pressurePa = headPressurePa({ densityKgM3: alloy.liquidKgM3.value, headM: plan.headM });
  return pressurePa > 0 ? { pressurePa, part: plan.part } : null;
}

/** A tenth of a millimetre is less than any caliper on a rough shell tells. */
const isShort = (haveMm: number, wantMm: number): boolean => haveMm < wantMm - 0.1;
