import { expect, test } from "vitest";
import type { PatternMaterial } from "../trade/patternMaterials.ts";
import { givenPiece, knownPlan, told } from "../../tests/givenPiece.ts";
import { primeTemperatureMoved } from "./primeTemperatureMoved.ts";

function moved(toC: number, material: PatternMaterial | undefined = "wax") {
  const piece = givenPiece({ ...knownPlan, material });
  piece.air(0.9, { airC: 21 });
  const coat = piece.coat(1);
  const reading = piece.air(3, { airC: toC });
  return { piece, coat, reading };
}

test("the room may move 1.7 K over a bare prime on wax; up to 3 K it is a note, above it is to be watched", () => {
  expect(primeTemperatureMoved(moved(22.6).piece.standing(4))).toEqual([]);
  expect(told(primeTemperatureMoved(moved(22.8).piece.standing(4)))).toEqual(["note wax"]);
  expect(told(primeTemperatureMoved(moved(23.9).piece.standing(4)))).toEqual(["note wax"]);
  expect(told(primeTemperatureMoved(moved(24.1).piece.standing(4)))).toEqual(["watch wax"]);
});

test("cooling counts as much as warming", () => {
  expect(primeTemperatureMoved(moved(19.4).piece.standing(4))).toEqual([]);
  expect(told(primeTemperatureMoved(moved(19.2).piece.standing(4)))).toEqual(["note wax"]);
  expect(told(primeTemperatureMoved(moved(17.9).piece.standing(4)))).toEqual(["watch wax"]);
});

test("it is told once for each prime: hours after the reading that showed it, it is a note", () => {
  const { piece } = moved(25);
  expect(told(primeTemperatureMoved(piece.standing(5)))).toEqual(["watch wax"]);
  expect(told(primeTemperatureMoved(piece.standing(5.1)))).toEqual(["note wax"]);
  piece.air(6, { airC: 26 });
  expect(told(primeTemperatureMoved(piece.standing(6.1)))).toEqual(["note wax"]);
});

test("the finding rests on the coat and on the two readings", () => {
  const { piece, coat, reading } = moved(25);
  const [found] = primeTemperatureMoved(piece.standing(4));
  expect(found?.entries).toContain(coat);
  expect(found?.entries).toContain(reading);
  expect(found?.figures["swingK"]?.value).toBeCloseTo(4, 9);
});

test("printed plastic and foam move so much less that nothing is said", () => {
  for (const material of ["pla", "resin", "foam"] as const)
    expect(primeTemperatureMoved(moved(27, material).piece.standing(4))).toEqual([]);
});

test("a pattern nobody named might be wax: a note", () => {
  const piece = givenPiece();
  piece.air(0.9, { airC: 21 });
  piece.coat(1, { kind: "prime", stuccoId: "80-120" });
  piece.air(3, { airC: 25 });
  expect(told(primeTemperatureMoved(piece.standing(4)))).toEqual(["note not-known"]);
});

test("once the prime is covered the swing is only told, and later swings are no matter", () => {
  const { piece } = moved(25);
  piece.coat(5);
  piece.coat(10, { kind: "backup", stuccoId: "16-30" });
  piece.air(12, { airC: 35 });
  const found = primeTemperatureMoved(piece.standing(13));
  expect(told(found)).toEqual(["note covered"]);
  expect(found[0]?.past).toBe(true);
  expect(found[0]?.figures["swingK"]?.value).toBeCloseTo(4, 9);
});

test("a reading of the day before says nothing of the temperature at the dip", () => {
  const piece = givenPiece(knownPlan);
  piece.air(0.5, { airC: 15 });
  piece.coat(20);
  piece.air(21, { airC: 21 });
  expect(primeTemperatureMoved(piece.standing(22))).toEqual([]);
});

test("with no reading the rule claims nothing", () => {
  const piece = givenPiece(knownPlan);
  piece.coat(1);
  expect(primeTemperatureMoved(piece.standing(30))).toEqual([]);
});
