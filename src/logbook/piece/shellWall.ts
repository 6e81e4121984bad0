import { headPressurePa } from "../../physics/shell/wall.ts";
import type { WallPart, WallPress } from "../../physics/shell/wall.ts";
import type { WallSupport } from "../../physics/shell/wallSupport.ts";
import { thickestMm, toTenth, wallVerdict } from "../../physics/shell/wallVerdict.ts";
import { wallWays } from "../../physics/shell/wallWays.ts";
import { wallFigures } from "../../trade/wallFigures.ts";
import { coatMm as coatBuildMm } from "../drying/coatMm.ts";
import type { Piece, Recipe, Shop } from "./piece.ts";
import { ownAlloy } from "../shop/ownAlloy.ts";
import { ranges, within } from "../entries/ranges.ts";
import type { CoatDrying, JudgedWall, Standing, WallStanding } from "./standing.ts";
import { floorMmOf, wallLimitsOf, wallStrength } from "./wallBasis.ts";
import { loadShare } from "./weakened.ts";

const startingBackup = { kind: "backup", stuccoId: "16-30" } as const;
/** What one caliper reading may say of coats still to come: no more than the table's own spread. */
const learntRange = { low: 0.75, high: 1.25 };

type From = {
  readonly piece: Piece;
  readonly recipe: Recipe | null;
  readonly shop: Shop;
  readonly drying: readonly CoatDrying[];
  readonly next: Standing["next"];
};

/** The wall a piece has, by table or caliper, and the one its recipe will give, each against its head of metal. */
export function wallStanding({ piece, recipe, shop, drying, next }: From): WallStanding {
  const { perCoatMm, basis, later, spreadOf } = coatsMm(piece, shop);
  const reachedMm = Math.min(
    thickestMm,
    perCoatMm.reduce((sum, mm) => sum + mm, 0),
  );
  const plannedMm = plannedWallMm({ piece, recipe, shop, next }, { reachedMm, later });
  // One spread, that of the shell as it will be poured: what it needs must not differ between the coats on and those to come.
  const spread = spreadOf(plannedMm ?? reachedMm);
  const { load, missing } = loadOf(piece, shop);
  const likelyMm = toTenth(reachedMm);
  const strength = wallStrength(recipe, shop);
  const share = loadShare({ piece, drying, wallBasis: basis });
  const morMPa = strength.morMPa * share;
  const coatMm = backupMm(recipe, shop) * later;
  const judge = (wallMm: number): JudgedWall | null => {
    if (load === null) return null;
    const { headM, ...press } = load;
    const asked = {
      ...press,
      wallMm,
      morMPa,
      spreads: { strength: strength.spread, wall: spread, head: wallFigures.headSpread.value },
      limits: wallLimitsOf(recipe),
      floorMm: floorMmOf(recipe),
      coatMm,
    };
    const verdict = wallVerdict(asked);
    return {
      ...verdict,
      ways: verdict.word === "carries" ? null : wallWays(asked, { headM }),
      headPressurePa: load.pressurePa,
      morMPa,
      strengthFrom: strength.from,
      strengthSpread: strength.spread,
      loadShare: share,
    };
  };
  const isBare = piece.coats.length === 0;
  return {
    reachedMm,
    perCoatMm,
    basis,
    likelyMm,
    lowMm: likelyMm / spread,
    highMm: likelyMm * spread,
    floorMm: floorMmOf(recipe),
    missing: [...missing, ...(isBare ? (["coats"] as const) : [])],
    judged: isBare ? null : judge(reachedMm),
    planned: plannedMm === null ? null : { likelyMm: toTenth(plannedMm), judged: judge(plannedMm) },
  };
}

/** The load of a shell as it was poured; null while it can't be worked out. */
export function pourLoad(piece: Piece, shop: Shop): (WallPress & { readonly wallMm: number }) | null {
  const { load } = loadOf(piece, shop);
  const wallMm = coatsMm(piece, shop).perCoatMm.reduce((sum, mm) => sum + mm, 0);
  return load === null || !(wallMm > 0 && wallMm <= thickestMm) ? null : { ...load, wallMm };
}

/** The wall once the recipe is through, mm; null where no coat of one is to come. */
function plannedWallMm(
  { piece, recipe, shop, next }: Omit<From, "drying">,
  { reachedMm, later }: { readonly reachedMm: number; readonly later: number },
): number | null {
  if (recipe === null || next === null) return null;
  const skipped = new Set(piece.skipped.map(({ step }) => step));
  const left = recipe.coats.filter((_, step) => step >= next.step && !skipped.has(step));
  const mm = left.reduce((sum, coat) => sum + later * coatBuildMm(coat, shop.buildMm), reachedMm);
  return Math.min(thickestMm, mm);
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
  /** What a coat put on from now on gives, as a factor on the table. */
  readonly later: number;
  /** A wall of so many mm, the coats read and those after them, is known to × or ÷ this. */
  readonly spreadOf: (wholeMm: number) => number;
} {
  const table = coats.map((coat) => coatBuildMm(coat, buildMm));
  const read = wall.findLast(({ wallMm, coats: count }) => count > 0 && within(ranges.wallMm, wallMm));
  const then = table.slice(0, read?.coats ?? 0).reduce((sum, mm) => sum + mm, 0);
  const byTable = wallFigures.tableSpread.value;
  if (read === undefined || then === 0)
    return { perCoatMm: table, basis: "table", later: 1, spreadOf: () => byTable };
  const factor = read.wallMm / then;
  const later = Math.min(learntRange.high, Math.max(learntRange.low, factor));
  const perCoatMm = table.map((mm, i) => mm * (i < read.coats ? factor : later));
  // The part that was read is known by caliper, what went on later by the table still.
  const spreadOf = (wholeMm: number): number => {
    const measured = Math.min(1, read.wallMm / wholeMm);
    return wallFigures.caliperSpread.value ** measured * byTable ** (1 - measured);
  };
  return { perCoatMm, basis: "measured", later, spreadOf };
}

type Load = {
  readonly missing: readonly ("alloy" | "head" | "part")[];
  /** Null while one of them is missing. */
  readonly load: (WallPress & { readonly headM: number }) | null;
};

function loadOf({ plan }: Piece, shop: Shop): Load {
  const alloy = plan.alloyId === undefined ? null : ownAlloy(plan.alloyId, shop);
  const headM = within(ranges.headM, plan.headM) ? plan.headM : null;
  const part = plan.part && isPart(plan.part) ? plan.part : null;
  const given = alloy?.liquidKgM3.value;
  const densityKgM3 = within(ranges.densityKgM3, given) ? given : null;
  if (densityKgM3 !== null && headM !== null && part !== null)
    return {
      missing: [],
      load: { part, support: supportOf(plan), headM, pressurePa: headPressurePa({ densityKgM3, headM }) },
    };
  return {
    missing: [
      ...(densityKgM3 === null ? (["alloy"] as const) : []),
      ...(headM === null ? (["head"] as const) : []),
      ...(part === null ? (["part"] as const) : []),
    ],
    load: null,
  };
}

function isPart(part: WallPart): boolean {
  const spans = part.kind === "round" ? [part.diameterMm] : [part.widthMm, part.lengthMm];
  return spans.every((mm) => within(ranges.spanMm, mm));
}

/** What takes load off the flat, by the plan; a figure no shop has is left out. */
function supportOf({ support = {} }: Piece["plan"]): WallSupport {
  const { ribEveryMm, crownMm, ...rest } = support;
  return {
    ...rest,
    ribEveryMm: within(ranges.ribEveryMm, ribEveryMm) ? ribEveryMm : undefined,
    crownMm: within(ranges.crownMm, crownMm) ? crownMm : undefined,
  };
}

/** What one more backup coat of this recipe adds to the wall, mm. */
function backupMm(recipe: Recipe | null, { buildMm }: Shop): number {
  const backup = recipe?.coats.findLast(({ kind }) => kind === "backup") ?? startingBackup;
  return coatBuildMm(backup, buildMm);
}
