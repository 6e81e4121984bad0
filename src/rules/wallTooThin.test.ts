import { expect, test } from "vitest";
import type { Recipe } from "../logbook/piece/piece.ts";
import { builtInRecipe } from "../logbook/piece/builtIns.ts";
import { givenCoated, givenPiece, knownPlan, told } from "../../tests/givenPiece.ts";
import { wallTooThin } from "./wallTooThin.ts";

// Nine coats of the general recipe make 7.7 mm. In a round under 1 m of silicon bronze, 76.5 kPa, with a standard
// deviation of 0.44643, the limits are reached where 0.5·4 MPa·t/(p·r) is e^(0.44643·i): for 1.2 and 7.5 mm, as the
// need goes by half millimetres, at 229.5 mm; for 0.8 and 0.4 and 7.7 mm at 281.7 and 336.7 mm (worked by hand).
const round = (diameterMm: number) =>
  givenCoated({ headM: 1, part: { kind: "round", diameterMm } }).standing(119);

test.each([
  [229.3, []],
  [229.7, ["watch marginal"]],
  [281.4, ["watch marginal"]],
  [282, ["hold thin"]],
  [336.4, ["hold thin"]],
  [337, ["hold fails"]],
])("a round of %f mm under a metre of bronze is %j", (diameterMm, expected) => {
  expect(told(wallTooThin(round(diameterMm)))).toEqual(expected);
});

test("a thin wall gives the wall there is with its range, the wall needed and the coats to add", () => {
  const [found] = wallTooThin(round(300));
  expect(found?.figures).toMatchObject({
    likelyMm: { value: 7.7 },
    lowMm: { value: 7.7 / 1.25 },
    highMm: { value: 7.7 * 1.25 },
    // 7.5 mm at 229.5 mm, so 9.8 mm at 300, up to the next half millimetre.
    neededMm: { value: 10 },
    coatsToAdd: { value: 2 },
  });
});

test("a piece at its second coat is not a thin one", () => {
  const piece = givenPiece(knownPlan);
  piece.air(0.5);
  piece.coats([1, 6]);
  expect(wallTooThin(piece.standing(8))).toEqual([]);
});

test("a recipe that won't make the wall is told while there is time, before the first coat", () => {
  const piece = givenPiece({ ...knownPlan, headM: 1, part: { kind: "round", diameterMm: 300 } });
  expect(told(wallTooThin(piece.standing(0.5)))).toEqual(["watch plan-short"]);
  const marginal = givenPiece({ ...knownPlan, headM: 1, part: { kind: "round", diameterMm: 250 } });
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
  const piece = givenCoated({ headM: 1, part: { kind: "round", diameterMm: 220 } });
  expect(wallTooThin(piece.standing(119))).toEqual([]);
  piece.log(119, "wall-measured", { wallMm: 5 });
  expect(told(wallTooThin(piece.standing(119.5)))).toEqual(["hold thin"]);
});

test("where the head is not known the wall is neither thin nor good: another rule says so", () => {
  const piece = givenCoated({ headM: undefined });
  expect(piece.standing(119).wall.judged).toBeNull();
  expect(wallTooThin(piece.standing(119))).toEqual([]);
});
