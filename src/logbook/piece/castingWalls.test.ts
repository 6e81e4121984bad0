import { describe, expect, test } from "vitest";
import truth from "../../../tests/truth/castingWalls.json" with { type: "json" };
import { headPressurePa, strengthOverLoad, type WallPart } from "../../physics/shell/wall.ts";
import type { WallSupport } from "../../physics/shell/wallSupport.ts";
import { wallVerdict } from "../../physics/shell/wallVerdict.ts";
import { alloyOf } from "../../trade/metals/alloys.ts";
import { startingRecipeOf } from "../../trade/startingRecipes.ts";
import { wallFigures } from "../../trade/wallFigures.ts";
import { builtInShop } from "./builtIns.ts";
import { coreStanding } from "./coreStanding.ts";
import { recipeWall } from "./recipeWall.ts";
import { floorMmOf, wallLimitsOf, wallStrength } from "./wallBasis.ts";

type Row = (typeof truth.rows)[number];

const partOf = ({ part }: Row): WallPart =>
  "diameterMm" in part && part.diameterMm !== undefined
    ? { kind: "round", diameterMm: part.diameterMm }
    : { kind: "flat", widthMm: part.widthMm ?? NaN, lengthMm: part.lengthMm ?? NaN };

const pressureOf = ({ alloyId, headM }: Row): number =>
  headPressurePa({ densityKgM3: alloyOf(alloyId)?.liquidKgM3.value ?? NaN, headM });

const asFirstMade = {
  strength: wallFigures.strengthSpread.value,
  wall: wallFigures.tableSpread.value,
  head: wallFigures.headSpread.value,
};
const judge = (row: Row, wallMm: number, floorMm: number, support?: WallSupport) =>
  wallVerdict({
    pressurePa: pressureOf(row),
    part: partOf(row),
    support,
    morMPa: wallStrength(null, builtInShop).morMPa,
    spreads: asFirstMade,
    wallMm,
    limits: wallLimitsOf(null),
    floorMm,
    coatMm: 1.23,
  });

describe.each(truth.rows)("$name", (row) => {
  const recipe = startingRecipeOf(row.recipeId);
  const shellMm = recipeWall(recipe?.coats ?? [], {})?.mm ?? NaN;
  const [low = NaN, high = NaN] = row.practiceMm;

  test("the recipe's shell is what practice builds, or a note says why not", () => {
    expect(shellMm).toBeCloseTo(row.shellMm, 1);
    const isWithin = Math.round(shellMm * 10) / 10 >= low && Math.round(shellMm * 10) / 10 <= high;
    expect(isWithin || row.note !== null).toBe(true);
  });

  test("strength over load and the needed shell are those worked by hand", () => {
    const found = judge(row, shellMm, floorMmOf(recipe));
    expect(found.ratio / row.ratio).toBeCloseTo(1, 1);
    expect(found.neededMm).toBe(row.neededMm);
    expect(found.neededMm > floorMmOf(recipe) ? "head" : "handling").toBe(row.neededBy);
    expect(found.word).toBe(row.word);
  });

  test("practice's own shell gets the word that practice gives it", () => {
    // A panel that practice pours only with ribs and sand is no shell that carries bare.
    for (const wallMm of [low, high])
      expect(judge(row, wallMm, 0).word === "carries").toBe(row.word === "carries");
  });
});

test.each(truth.supported.rows)("$casting, $support, $wallMm mm: $word", (row) => {
  const bare = truth.rows.find(({ name }) => name === row.casting);
  if (bare === undefined) throw new Error("no such casting");
  expect(judge(bare, row.wallMm, 0, row.support as WallSupport).word).toBe(row.word);
});

test.each(truth.cores.rows)("$casting, core of $core: $verdict", (row) => {
  const alloyId = truth.rows.find(({ name }) => name === row.casting)?.alloyId;
  const found = coreStanding({ name: row.casting, core: row.core, ...(alloyId && { alloyId }) }, builtInShop);
  expect((found?.liftN ?? NaN) / row.liftN).toBeCloseTo(1, 1);
  expect(found?.verdict).toBe(row.verdict);
});

describe("the limits", () => {
  const parts: readonly WallPart[] = [
    { kind: "flat", widthMm: 100, lengthMm: 100 },
    { kind: "flat", widthMm: 100, lengthMm: 300 },
    { kind: "round", diameterMm: 120 },
  ];
  const strengths = [wallFigures.strengthSpread.value, wallFigures.barsSpread.value];
  const walls = [wallFigures.tableSpread.value, wallFigures.caliperSpread.value];
  const factors = [1, 1.2, 2, 3, 4, 10];

  test("a wall of 1.2 times the load never carries, whatever was measured and whatever factor a recipe asks", () => {
    for (const part of parts)
      for (const strength of strengths)
        for (const wall of walls)
          for (const safetyFactor of factors) {
            const load = { part, morMPa: 4, wallMm: 8 };
            const pressurePa = 30_000 * (strengthOverLoad({ ...load, pressurePa: 30_000 }) / 1.2);
            const found = wallVerdict({
              ...load,
              pressurePa,
              spreads: { ...asFirstMade, strength, wall },
              limits: wallLimitsOf({ safetyFactor }),
              floorMm: 0,
              coatMm: 1,
            });
            expect(found.ratio).toBeCloseTo(1.2, 9);
            expect(found.word).not.toBe("carries");
          }
  });

  test("the usual factor of 3 is the usual limit, 4 asks for a third more, and none goes under marginal", () => {
    const at = (safetyFactor: number): number => wallLimitsOf({ safetyFactor }).carries;
    expect(at(3)).toBe(wallLimitsOf(null).carries);
    // A flat with nothing measured: standard deviation 0.5045 (worked by hand).
    expect(Math.exp((at(4) - at(3)) * 0.5045)).toBeCloseTo(4 / 3, 3);
    expect(at(2.9)).toBeLessThan(at(3));
    expect(at(1)).toBe(wallLimitsOf(null).marginal);
    expect(at(0)).toBe(at(3));
  });
});
