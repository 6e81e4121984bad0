import {
  coatsToAdd,
  headPressurePa,
  requiredWallBandMm,
  safetyBand,
  safetyReached,
  strengthSpread,
} from "../../physics/shell/wall.ts";
import type { WallPart } from "../../physics/shell/wall.ts";
import { coatMm as coatBuildMm } from "../drying/coatMm.ts";
import { hotMorMPa } from "./hotStrength.ts";
import type { Piece, Recipe, Shop } from "./piece.ts";
import { ownAlloy } from "../shop/ownAlloy.ts";
import { ranges, within } from "../entries/ranges.ts";
import type { CoatDrying, WallStanding } from "./standing.ts";
import { loadShare } from "./weakened.ts";

/** Serve until a recipe says otherwise: a factor, and a backup of common cut; see the starting recipes. */
const startingSafetyFactor = 3;
const startingBackup = { kind: "backup", stuccoId: "16-30" } as const;
/** What one caliper reading may say of coats still to come: no more than the table's own spread. */
const learntRange = { low: 0.75, high: 1.25 };

/** As far as the sums of the wall go. */
const thickestMm = 500;

type From = {
  readonly piece: Piece;
  readonly recipe: Recipe | null;
  readonly shop: Shop;
  readonly drying: readonly CoatDrying[];
};

/** The wall a piece has, by table or caliper, against the wall its head of metal asks for. */
export function wallStanding({ piece, recipe, shop, drying }: From): WallStanding {
  const { perCoatMm, basis, factor } = coatsMm(piece, shop);
  const reachedMm = Math.min(
    thickestMm,
    perCoatMm.reduce((sum, mm) => sum + mm, 0),
  );
  const load = loadOf(piece, shop);
  const missing = [...load.missing, ...(piece.coats.length === 0 ? (["coats"] as const) : [])];
  const wall = { reachedMm, perCoatMm, basis, missing };
  if (load.part === null || missing.length > 0) return { ...wall, judged: null };
  const { part, pressurePa } = load;
  const share = loadShare({ piece, drying, wallBasis: basis });
  const morMPa = hotMorMPa(recipe, shop) * share;
  const floorMm = within(ranges.floorMm, recipe?.floorMm) ? recipe.floorMm : 0;
  const wanted = recipe?.safetyFactor;
  const safetyFactor = within(ranges.safetyFactor, wanted) ? wanted : startingSafetyFactor;
  const needed = requiredWallBandMm({ pressurePa, morMPa, safetyFactor, part, floorMm });
  const safety = safetyReached({ pressurePa, morMPa, wallMm: reachedMm, part });
  const coatMm = backupMm(recipe, shop) * Math.min(learntRange.high, Math.max(learntRange.low, factor));
  return {
    ...wall,
    judged: {
      headPressurePa: pressurePa,
      morMPa,
      morHalved: share < 1,
      loadShare: share,
      requiredMm: needed.likelyMm,
      requiredLowMm: needed.lowMm,
      requiredHighMm: needed.highMm,
      floorMm,
      safety,
      safetyLow: safety / strengthSpread,
      safetyHigh: safety * strengthSpread,
      band: safetyBand(safety),
      coatsToAdd: coatsToAdd({
        requiredMm: Math.min(thickestMm, needed.likelyMm),
        haveMm: reachedMm,
        coatMm,
      }),
    },
  };
}

/**
 * Each coat's share of the wall. The newest caliper reading scales the table so that the coats there then add up to
 * it; coats put on after it are scaled too, but only within the table's own spread.
 */
function coatsMm(
  { coats, wall }: Piece,
  { buildMm }: Shop,
): {
  readonly perCoatMm: readonly number[];
  readonly basis: WallStanding["basis"];
  readonly factor: number;
} {
  const table = coats.map((coat) => coatBuildMm(coat, buildMm));
  const read = wall.findLast(({ wallMm, coats: count }) => count > 0 && within(ranges.wallMm, wallMm));
  const then = table.slice(0, read?.coats ?? 0).reduce((sum, mm) => sum + mm, 0);
  if (read === undefined || then === 0) return { perCoatMm: table, basis: "table", factor: 1 };
  const factor = read.wallMm / then;
  const later = Math.min(learntRange.high, Math.max(learntRange.low, factor));
  return {
    perCoatMm: table.map((mm, i) => mm * (i < read.coats ? factor : later)),
    basis: "measured",
    factor,
  };
}

type Load = {
  readonly missing: readonly ("alloy" | "head" | "part")[];
  readonly part: WallPart | null;
  readonly pressurePa: number;
};

function loadOf({ plan }: Piece, shop: Shop): Load {
  const alloy = plan.alloyId === undefined ? null : ownAlloy(plan.alloyId, shop);
  const headM = within(ranges.headM, plan.headM) ? plan.headM : null;
  const part = plan.part && isPart(plan.part) ? plan.part : null;
  const told = alloy?.liquidKgM3.value;
  const densityKgM3 = within(ranges.densityKgM3, told) ? told : undefined;
  const missing = [
    ...(densityKgM3 === undefined ? (["alloy"] as const) : []),
    ...(headM === null ? (["head"] as const) : []),
    ...(part === null ? (["part"] as const) : []),
  ];
  const known = densityKgM3 !== undefined && headM !== null;
  return { missing, part, pressurePa: known ? headPressurePa({ densityKgM3, headM }) : 0 };
}

function isPart(part: WallPart): boolean {
  const spans = part.kind === "flat" ? [part.widthMm, part.lengthMm] : [part.diameterMm];
  return spans.every((mm) => within(ranges.spanMm, mm));
}

/** What one more backup coat of this recipe adds to the wall, mm. */
export function backupMm(recipe: Recipe | null, { buildMm }: Shop): number {
  const backup = recipe?.coats.findLast(({ kind }) => kind === "backup") ?? startingBackup;
  return coatBuildMm(backup, buildMm);
}
