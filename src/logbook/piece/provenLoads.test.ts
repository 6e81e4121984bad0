import { expect, test } from "vitest";
import { givenCoated, type GivenPiece } from "../../../tests/givenPiece.ts";
import { builtInRecipe, builtInShop } from "./builtIns.ts";
import { provenLoad } from "./provenLoads.ts";
import { wallStrength } from "./wallBasis.ts";

/** A round of 200 mm under a metre of bronze, poured. */
function poured(
  outcome: { result: "sound" | "flawed" | "lost"; defects: readonly string[] } | null,
): GivenPiece {
  const piece = givenCoated({ headM: 1, part: { kind: "round", diameterMm: 200 } });
  piece.log(120, "metal-poured", { metalC: 1150, shellC: 600, massKg: 4, outOfKilnMin: 3 });
  piece.log(122, "shell-knocked-out", {});
  if (outcome !== null)
    piece.log(123, "outcome-told", { result: outcome.result, defects: [...outcome.defects] });
  return piece;
}
const loadOf = (piece: GivenPiece) => provenLoad(piece.standing(124).piece, builtInShop);

test("a sound casting proves its shell's load: 2·p·r/t, 2.00 MPa by hand", () => {
  // 2·0.07652·100/7.66.
  const found = loadOf(poured({ result: "sound", defects: ["misrun"] }));
  expect(found).toMatchObject({ recipeId: "start-general", held: true });
  expect(found?.loadMPa).toBeCloseTo(2, 1);
});

test("metal through the shell is one that broke; a fin, a loss of another kind and no word say nothing", () => {
  expect(loadOf(poured({ result: "lost", defects: ["run-out"] }))).toMatchObject({ held: false });
  expect(loadOf(poured({ result: "flawed", defects: ["fin"] }))).toBeNull();
  expect(loadOf(poured({ result: "lost", defects: ["misrun"] }))).toBeNull();
  expect(loadOf(poured(null))).toBeNull();
});

test("shells that held make the strength better known for their recipe alone, and test bars stand before them", () => {
  const one = loadOf(poured({ result: "sound", defects: [] }));
  if (one === null) throw new Error("nothing was proven");
  const shop = { ...builtInShop, proven: Array.from({ length: 6 }, () => one) };
  const general = wallStrength(builtInRecipe("start-general"), shop);
  expect(general.from).toBe("pours");
  expect(general.spread).toBeLessThan(2);
  expect(wallStrength(builtInRecipe("start-small"), shop)).toEqual({ morMPa: 4, spread: 2, from: "recipe" });
  expect(wallStrength(builtInRecipe("start-general"), { ...shop, morMPa: 4 }).from).toBe("bars");
});
