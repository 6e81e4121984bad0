import { expect, test } from "vitest";
import type { Recipe } from "../logbook/piece/piece.ts";
import { builtInRecipe } from "../logbook/piece/builtIns.ts";
import { givenCoated, givenPiece, knownPlan, told } from "../../tests/givenPiece.ts";
import { wallTooThin } from "./wallTooThin.ts";

// Nine coats of the general recipe make 7.66 mm. In a round under 1 m of silicon bronze, 76.5 kPa, the factor
// 0.5·4 MPa·7.66 mm/(p·r) falls through 3, 2 and 1.2 at diameters of 133.5, 200.2 and 333.7 mm (worked by hand).
const round = (diameterMm: number) =>
  givenCoated({ headM: 1, part: { kind: "round", diameterMm } }).standing(119);

test.each([
  [133.4, []],
  [133.6, ["watch marginal"]],
  [200.1, ["watch marginal"]],
  [200.4, ["hold thin"]],
  [333.5, ["hold thin"]],
  [333.9, ["hold fails"]],
])("a round of %f mm under a metre of bronze is %j", (diameterMm, expected) => {
  expect(told(wallTooThin(round(diameterMm)))).toEqual(expected);
});

test("a thin wall tells the wall there is, the wall wanted and the coats to add", () => {
  const [found] = wallTooThin(round(250));
  expect(found?.figures["reachedMm"]?.value).toBeCloseTo(7.66, 2);
  expect(found?.figures["requiredMm"]?.value).toBeCloseTo(7.66 * (250 / 133.5), 1);
  expect(found?.figures["coatsToAdd"]?.value).toBe(6);
});

test("a piece at its second coat is not a thin one", () => {
  const piece = givenPiece(knownPlan);
  piece.air(0.5);
  piece.coats([1, 6]);
  expect(wallTooThin(piece.standing(8))).toEqual([]);
});

test("a recipe that won't make the wall is told while there is time, before the first coat", () => {
  const piece = givenPiece({ ...knownPlan, headM: 1, part: { kind: "round", diameterMm: 250 } });
  expect(told(wallTooThin(piece.standing(0.5)))).toEqual(["watch plan-short"]);
  const marginal = givenPiece({ ...knownPlan, headM: 1, part: { kind: "round", diameterMm: 180 } });
  expect(told(wallTooThin(marginal.standing(0.5)))).toEqual(["note plan-short"]);
});

const general = builtInRecipe("start-general");
const withFloor = (floorMm: number): Recipe => {
  if (general === null) throw new Error("no general recipe");
  return { ...general, id: "own", floorMm };
};

test("a wall under the recipe's least is one to watch, a tenth of a millimetre aside", () => {
  for (const [floorMm, expected] of [
    [7.7, []],
    [7.8, ["watch below-floor"]],
  ] as const) {
    const piece = givenPiece(knownPlan, { recipe: withFloor(floorMm) });
    piece.air(0.5);
    piece.coats([1, 6, 12, 24, 36, 48, 60, 72, 84]);
    expect(told(wallTooThin(piece.standing(119)))).toEqual(expected);
  }
});

test("a caliper reading counts for more than the table", () => {
  const piece = givenCoated({ headM: 1, part: { kind: "round", diameterMm: 130 } });
  expect(wallTooThin(piece.standing(119))).toEqual([]);
  piece.log(119, "wall-measured", { wallMm: 4.5 });
  expect(told(wallTooThin(piece.standing(119.5)))).toEqual(["hold thin"]);
});

test("where the head is not known the wall is neither thin nor good: another rule says so", () => {
  const piece = givenCoated({ headM: undefined });
  expect(piece.standing(119).wall.judged).toBeNull();
  expect(wallTooThin(piece.standing(119))).toEqual([]);
});
