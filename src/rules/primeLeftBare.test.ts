import { expect, test } from "vitest";
import { givenPiece, knownPlan, told } from "../../tests/givenPiece.ts";
import { primeLeftBare } from "./primeLeftBare.ts";

test("a prime may stand bare for a day, and no longer", () => {
  const piece = givenPiece(knownPlan);
  piece.coat(1);
  expect(primeLeftBare(piece.standing(25))).toEqual([]);
  expect(told(primeLeftBare(piece.standing(25.1)))).toEqual(["watch bare"]);
});

test("a coat over it makes it a thing of the past", () => {
  const piece = givenPiece(knownPlan);
  piece.coat(1);
  piece.coat(31);
  const found = primeLeftBare(piece.standing(31.5));
  expect(told(found)).toEqual(["note was-bare"]);
  expect(found[0]?.past).toBe(true);
  expect(found[0]?.figures["bareH"]?.value).toBeCloseTo(30, 6);
});

test("a second dip of the same coat wets it anew", () => {
  const piece = givenPiece(knownPlan);
  const coatId = piece.coat(1);
  piece.log(20, "coat-redipped", { coatId });
  expect(primeLeftBare(piece.standing(40))).toEqual([]);
  expect(told(primeLeftBare(piece.standing(44.1)))).toEqual(["watch bare"]);
});

test("a backup may hang for a week", () => {
  const piece = givenPiece(knownPlan);
  piece.coat(1, { kind: "backup", stuccoId: "16-30" });
  expect(primeLeftBare(piece.standing(169))).toEqual([]);
});

test("with no coat in the log there is no prime to speak of", () => {
  expect(primeLeftBare(givenPiece(knownPlan).standing(200))).toEqual([]);
});
