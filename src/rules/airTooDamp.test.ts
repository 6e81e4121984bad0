import { expect, test } from "vitest";
import { givenCoated, givenPiece, knownPlan, told } from "../../tests/givenPiece.ts";
import { airReadingOld } from "./airReadingOld.ts";
import { airTooDamp } from "./airTooDamp.ts";

function drying(rh: number) {
  const piece = givenPiece(knownPlan);
  piece.air(0.5, { rh });
  piece.coat(1);
  return piece.standing(1.1);
}

function lastDrying(rh: number) {
  const piece = givenCoated();
  piece.air(84.1, { rh });
  return piece.standing(84.2);
}

test("above 80 % a drying coat never gets ready: one to watch", () => {
  expect(airTooDamp(drying(0.8))).toEqual([]);
  expect(told(airTooDamp(drying(0.81)))).toEqual(["watch drying"]);
});

test("above 80 % the last drying is a hold, from 70 to 80 % a note", () => {
  expect(airTooDamp(lastDrying(0.7))).toEqual([]);
  expect(told(airTooDamp(lastDrying(0.71)))).toEqual(["note final-caution"]);
  expect(told(airTooDamp(lastDrying(0.8)))).toEqual(["note final-caution"]);
  expect(told(airTooDamp(lastDrying(0.81)))).toEqual(["hold final"]);
});

test("a coat between others may dry at 75 %", () => {
  expect(airTooDamp(drying(0.75))).toEqual([]);
});

test("damp air is no matter once the coat is dry", () => {
  const piece = givenCoated();
  piece.air(118, { rh: 0.95 });
  expect(piece.standing(118.1).outer?.verdict).toBe("dry");
  expect(airTooDamp(piece.standing(118.1))).toEqual([]);
});

test("with no reading the air is neither damp nor dry: the reading is asked for", () => {
  const piece = givenPiece(knownPlan);
  piece.coat(1);
  expect(airTooDamp(piece.standing(2))).toEqual([]);
  expect(told(airReadingOld(piece.standing(2)))).toEqual(["note none"]);
});
