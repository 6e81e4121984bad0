import { expect, test } from "vitest";
import { builtInShop } from "../../../logbook/piece/builtIns.ts";
import { bodyFault } from "../../../logbook/entries/checkBody.ts";
import { alloyOf } from "../../../trade/metals/alloys.ts";
import { startingRecipes } from "../../../trade/startingRecipes.ts";
import { capsOf } from "../../../workers/patternCaps.ts";
import { upResultsOf } from "./patternResults.ts";
import { withResults } from "./patternStudy.ts";
import { measuredOf, planOfStudy } from "./planOfStudy.ts";
import { pocketClass, pocketClasses } from "../../../logbook/casting/pocketClass.ts";
import { isServed } from "./spotServed.ts";
import { sumsVersion } from "./sumsVersion.ts";
import { spotWords } from "./spotWords.ts";
import { block, studyOfMesh } from "../../../../tests/meshes/testStudy.ts";
import { needsOf } from "./wallFigures.ts";

const flat = { point: [0, 0, -50], normal: [0, 0, -1], width: 80, length: 120, area: 9600 } as const;
const upright = { point: [0, 40, 0], normal: [0, 1, 0], width: 80, length: 100, area: 8000 } as const;
const recess = { point: [0, 0, 0], opening: [0, 0, 1], volume: 900 } as const;
const hollow = { ...recess, depth: 30, mouth: 10, kind: "deep" } as const;
const study = {
  ...withResults(
    studyOfMesh(block(120, 80, 100)),
    upResultsOf([0, 0, 1], { tips: [], drains: [], low: -50, high: 50 }),
  ),
  alloyId: "c87300",
  shape: {
    thickness: null,
    flats: [upright, flat],
    rounds: [{ point: [0, 0, 0], diameter: 60 }],
    recesses: [hollow],
  },
} as const;
const plain = { shop: builtInShop, recipe: null };

test("the floor of a block bears the most: 100 mm of piece and 100 of cup stand over it", () => {
  const [worst, next] = needsOf(study, plain);
  expect(worst).toMatchObject({ part: { kind: "flat", widthMm: 80, lengthMm: 120 }, headMm: 200 });
  // The upright flat is judged at its lower edge: its middle stands 150 down, and half its length more.
  expect(next).toMatchObject({ part: { kind: "flat", widthMm: 80, lengthMm: 100 }, headMm: 200 });
  // By hand: β(1.5) = 0.4872, 0.2 m, strength 4 MPa, index 1.2 of a standard deviation of 0.50449; up to half a mm.
  const rho = alloyOf("c87300")!.liquidKgM3.value;
  const exact = 80 * Math.sqrt((0.4872 * rho * 9.81 * 0.2 * Math.exp(1.2 * 0.50449)) / 4e6);
  expect(worst?.neededMm).toBe(Math.ceil(exact * 2) / 2);
});

test("where the least wall for handling is more than any part asks for, the part that asks most still leads", () => {
  const recipe = { ...startingRecipes[0]!, starting: false, floorMm: 60 };
  const [first, ...others] = needsOf(study, { shop: builtInShop, recipe });
  expect(first).toMatchObject({ part: { lengthMm: 120 }, neededMm: 60 });
  for (const { bareMm } of others) expect(bareMm).toBeLessThan(first!.bareMm);
});

test("without an alloy, or before tips are found, no wall is told", () => {
  expect(needsOf({ ...study, alloyId: null }, plain)).toEqual([]);
  expect(needsOf({ ...study, byUp: [] }, plain)).toEqual([]);
});

test("a plan gets metal, surface, head, wall part and slow places, and the log takes them", () => {
  const plan = planOfStudy(study, needsOf(study, plain)[0] ?? null);
  expect(plan).toEqual({
    patternId: study.id,
    alloyId: "c87300",
    metalLitre: 0.96,
    areaM2: 0.0592,
    headM: 0.2,
    part: { kind: "flat", widthMm: 80, lengthMm: 120 },
    pockets: ["recess"],
  });
  const measured = measuredOf(study)!;
  expect(measured).toMatchObject({
    volumeMm3: 960_000,
    areaMm2: 59_200,
    headM: 0.2,
    boxMm: [120, 80, 100],
    sumsVersion,
  });
  expect(bodyFault("pattern-measured", measured)).toBeNull();
});

test("a file whose unit is not known tells a plan nothing of size", () => {
  const unknown = { ...study, unit: null };
  expect(planOfStudy(unknown, null)).toEqual({ patternId: study.id, alloyId: "c87300" });
  expect(measuredOf(unknown)).toBeNull();
});

test("hollows dry by how deep they are for their mouth", () => {
  const of = (depth: number, kind: "open" | "recess" | "deep" = "deep") =>
    pocketClass({ depth, mouth: 10, kind });
  expect([of(4), of(5), of(10), of(39), of(40)]).toEqual([null, "corner", "recess", "recess", "blind"]);
  expect(pocketClass({ depth: 9, mouth: 0, kind: "closed" })).toBeNull();
  expect(pocketClasses([hollow, { ...hollow, depth: 6 }, hollow])).toEqual(["recess", "corner"]);
});

test("a vent serves a tip from beside it, not from below it or from across the piece", () => {
  const at = (opening: readonly [number, number, number]) =>
    isServed({ spot: { point: [0, 0, 50], ridge: [] }, openings: [opening], up: [0, 0, 1], within: 2 });
  expect([at([3, 0, 49]), at([0, 0, 47]), at([30, 0, 50])]).toEqual([true, false, false]);
  const ridge = {
    point: [0, 0, 50],
    ridge: [
      [-40, 0, 50],
      [40, 0, 50],
    ],
  } as const;
  expect(isServed({ spot: ridge, openings: [[41, 1, 50]], up: [0, 0, 1], within: 2 })).toBe(true);
});

test("wax and plastic are told apart in what they do when they stay", () => {
  const words = (material: "wax" | "pla") =>
    spotWords({ spot: { shape: "point", isLast: false }, what: "plastic", isOpen: false, material });
  expect(words("wax")).toMatch(/^The wax is trapped, soaks in/);
  expect(words("pla")).toMatch(/^The plastic is trapped, swells/);
});

test("a phone is asked for less than a desk computer", () => {
  expect(capsOf({ memoryGb: 8, isTouch: false })).toMatchObject({ full: 5e6, display: 3e5 });
  expect(capsOf({ memoryGb: undefined, isTouch: false })).toMatchObject({ full: 5e6 });
  for (const phone of [
    { memoryGb: 4, isTouch: true },
    { memoryGb: undefined, isTouch: true },
    { memoryGb: 2, isTouch: false },
  ])
    expect(capsOf(phone)).toMatchObject({ full: 1.5e6, display: 1.5e5 });
});
