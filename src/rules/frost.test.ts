import { expect, test } from "vitest";
import { givenPiece, knownPlan, type GivenPiece } from "../../tests/givenPiece.ts";
import { findingsFor } from "./all.ts";
import { frost } from "./frost.ts";

/** One coat in a room that falls from a shop's air to `airC` within two hours. */
function coatIn(airC: number, rh = 0.7): GivenPiece {
  const piece = givenPiece(knownPlan);
  piece.air(-0.1, { airC, rh });
  piece.coat(0);
  piece.air(0.3, { airC, rh });
  return piece;
}
const said = (piece: GivenPiece, hours: number) =>
  frost(piece.standing(hours)).map(({ variant, level, figures }) => ({
    variant,
    level,
    surfaceC: figures["surfaceC"]?.value ?? NaN,
  }));

test("a wet surface below 1 °C holds the piece, and gives no ready time", () => {
  const cold = coatIn(2);
  const [found] = said(cold, 0.5);
  expect(found).toMatchObject({ variant: "froze", level: "hold" });
  expect(found?.surfaceC).toBeLessThan(1);
  const { outer } = cold.standing(0.5);
  expect(outer?.readyAt).toEqual({ early: null, likely: null, late: null });
  expect(outer?.reason).toBe("frost");
});

test("a kelvin or two warmer the wet surface stays above it, and nothing is said", () => {
  const cool = coatIn(4);
  expect(said(cool, 0.5)).toEqual([]);
  expect(cool.standing(0.5).outer?.reason).not.toBe("frost");
  expect(cool.standing(0.5).outer?.readyAt.likely).not.toBeNull();
});

test("what froze is not ready when the room is warm again", () => {
  const piece = coatIn(2);
  piece.air(1, { airC: 22, rh: 0.45 });
  piece.air(30, { airC: 22, rh: 0.45 });
  expect(piece.standing(30).outer?.readyAt.likely).toBeNull();
  expect(said(piece, 30)).toMatchObject([{ variant: "froze", level: "hold" }]);
});

test("frost after the coat was dry is no harm", () => {
  const piece = coatIn(22, 0.45);
  piece.air(20, { airC: 22, rh: 0.45 });
  piece.air(22, { airC: -5, rh: 0.7 });
  piece.air(30, { airC: -5, rh: 0.7 });
  expect(piece.standing(30).outer?.readyAt.likely).not.toBeNull();
  expect(said(piece, 30)).toEqual([]);
});

test("fired, it stays to be watched; poured, a note", () => {
  const piece = coatIn(2);
  piece.log(40, "shell-fired", { peakC: 870, holdMin: 60 });
  expect(said(piece, 41)).toMatchObject([{ level: "watch" }]);
  piece.log(42, "metal-poured", { metalC: 1150, shellC: 540, massKg: 3, outOfKilnMin: 3 });
  expect(said(piece, 43)).toMatchObject([{ level: "note" }]);
});

test("a night that will freeze it, as the last one would have, holds before it comes", () => {
  const piece = givenPiece(knownPlan);
  // Yesterday: 8 °C at noon, −3 °C at night; dipped in a still, damp room at 8 °C.
  for (let h = -26; h <= 0; h++) piece.air(h, { airC: h > -23.5 && h < -11 ? -3 : 8, rh: 0.75 });
  piece.coat(0.1);
  const [found] = frost(piece.standing(0.2));
  expect(found).toMatchObject({ variant: "will-freeze", level: "hold" });
  expect(found?.figures["at"]?.value).toBeGreaterThan(piece.standing(0.2).now);
  expect(piece.standing(0.2).outer?.reason).toBe("frost");
});

test("a log without the room's air says nothing of frost", () => {
  const piece = givenPiece(knownPlan);
  piece.coat(0);
  expect(findingsFor(piece.standing(5)).filter(({ rule }) => rule === "frost")).toEqual([]);
});
