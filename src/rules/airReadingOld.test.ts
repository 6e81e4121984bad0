import { expect, test } from "vitest";
import { givenCoated, givenPiece, knownPlan, told } from "../../tests/givenPiece.ts";
import { airReadingOld } from "./airReadingOld.ts";

/** A coat in a blind core dries for days, so it is still drying whenever the room is asked about. */
function slow() {
  const piece = givenPiece({ ...knownPlan, geometry: "blind" });
  piece.air(1);
  piece.coat(1, { kind: "backup", stuccoId: "16-30" });
  return piece;
}

// Day one begins at eight on the wall clock of the test's zone, and the working day ends at seven.
test("a room reading may be a working day old while a coat dries, and no older", () => {
  const piece = slow();
  expect(airReadingOld(piece.standing(9))).toEqual([]);
  expect(told(airReadingOld(piece.standing(9.1)))).toEqual(["watch old"]);
  expect(airReadingOld(piece.standing(9.1))[0]?.figures["ageH"]?.value).toBeCloseTo(8.1, 6);
});

test("the night does not count: nobody is there to read it", () => {
  const piece = slow();
  piece.air(10);
  expect(airReadingOld(piece.standing(24))).toEqual([]);
  expect(airReadingOld(piece.standing(29.9))).toEqual([]);
  expect(told(airReadingOld(piece.standing(30.1)))).toEqual(["watch old"]);
});

test("a new reading settles it", () => {
  const piece = slow();
  piece.air(9.2);
  expect(airReadingOld(piece.standing(9.3))).toEqual([]);
});

test("a room nobody ever read is said to be so", () => {
  const piece = givenPiece(knownPlan);
  piece.coat(1);
  expect(told(airReadingOld(piece.standing(1.1)))).toEqual(["note none"]);
});

test("with nothing drying nobody needs to read the room", () => {
  expect(airReadingOld(givenPiece(knownPlan).standing(50))).toEqual([]);
  expect(airReadingOld(givenCoated().standing(300))).toEqual([]);
});

test("in the kiln the room is no matter", () => {
  const piece = slow();
  piece.log(20, "burnout-started", {});
  expect(airReadingOld(piece.standing(21))).toEqual([]);
});
