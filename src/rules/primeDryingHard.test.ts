import { expect, test } from "vitest";
import type { AirClass } from "../trade/airClasses.ts";
import type { PatternMaterial } from "../trade/patternMaterials.ts";
import { givenPiece, knownPlan, told } from "../../tests/givenPiece.ts";
import { primeDryingHard } from "./primeDryingHard.ts";

// Drop of a wet face under a fan on the rack at 22 °C: 6.3 K at 50 %, 4.9 K at 60 % (worked apart, drying table).
function prime({
  rh,
  air = "rack-fan",
  material = "wax",
}: {
  rh: number;
  air?: AirClass;
  material?: PatternMaterial;
}) {
  const piece = givenPiece({ ...knownPlan, material });
  piece.air(0.9, { rh, air });
  piece.coat(1);
  return piece;
}

test("a fan on a wet prime over wax is fine at 60 % and too hard at 50 %", () => {
  expect(primeDryingHard(prime({ rh: 0.6 }).standing(1.1))).toEqual([]);
  const found = primeDryingHard(prime({ rh: 0.5 }).standing(1.1));
  expect(told(found)).toEqual(["watch wax"]);
  expect(Math.abs((found[0]?.figures["dropK"]?.value ?? 0) - 6.3)).toBeLessThan(0.1);
});

test("at 57.5 % a fan on the rack is still too hard", () => {
  expect(told(primeDryingHard(prime({ rh: 0.575 }).standing(1.1)))).toEqual(["watch wax"]);
});

test("air that only drifts through the room doesn't dry a prime hard", () => {
  expect(primeDryingHard(prime({ rh: 0.3, air: "room-fan" }).standing(1.1))).toEqual([]);
});

test("plastic is not spoken of; a pattern nobody named is, as a note", () => {
  expect(primeDryingHard(prime({ rh: 0.3, material: "pla" }).standing(1.1))).toEqual([]);
  expect(told(primeDryingHard(prime({ rh: 0.3, material: "other" }).standing(1.1)))).toEqual([
    "note not-known",
  ]);
});

test("a dry or covered prime is past: a note", () => {
  const piece = prime({ rh: 0.4 });
  expect(told(primeDryingHard(piece.standing(20)))).toEqual(["note covered"]);
  expect(primeDryingHard(piece.standing(20))[0]?.past).toBe(true);
});

test("hard air after the prime had dried is no matter", () => {
  const piece = prime({ rh: 0.65 });
  piece.air(10, { rh: 0.3, air: "strong" });
  expect(primeDryingHard(piece.standing(11))).toEqual([]);
});

test("with no reading the rule claims nothing", () => {
  const piece = givenPiece(knownPlan);
  piece.coat(1);
  expect(primeDryingHard(piece.standing(2))).toEqual([]);
});
