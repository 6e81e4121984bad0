import { expect, test } from "vitest";
import type { CoatKind } from "../trade/coats.ts";
import { givenCoated, givenPiece, told } from "../../tests/givenPiece.ts";
import { stuccoOutOfOrder } from "./stuccoOutOfOrder.ts";

function laid(...coats: readonly (readonly [CoatKind, string | null])[]) {
  const piece = givenPiece();
  coats.forEach(([kind, stuccoId], i) => piece.coat(1 + 12 * i, { kind, stuccoId, step: null }));
  return stuccoOutOfOrder(piece.standing(200));
}

test("the general recipe is in order", () => {
  expect(stuccoOutOfOrder(givenCoated().standing(119))).toEqual([]);
});

test("50–100 is fine enough for a first prime, 30–80 is not", () => {
  expect(laid(["prime", "50-100"])).toEqual([]);
  const found = laid(["prime", "30-80"]);
  expect(told(found)).toEqual(["watch coarse-first"]);
  expect(found[0]?.figures["grainMm"]?.value).toBe(0.6);
});

test("16–30 over 50–100 is a step, over 80–120 it skips a grade", () => {
  expect(laid(["prime", "50-100"], ["backup", "16-30"])).toEqual([]);
  const found = laid(["prime", "80-120"], ["backup", "16-30"]);
  expect(told(found)).toEqual(["watch grade-skipped"]);
  expect(found[0]?.texts).toEqual({ stucco: "16–30 mesh", under: "80–120 mesh" });
});

test("a finer stucco over a coarser one is told", () => {
  expect(told(laid(["prime", "80-120"], ["intermediate", "30-80"], ["backup", "50-100"]))).toEqual([
    "note finer",
  ]);
});

test("a seal between two coats is no grade", () => {
  expect(laid(["prime", "50-100"], ["seal", null], ["backup", "16-30"])).toEqual([]);
});

test("coats put on to mend after a burnout are left alone", () => {
  const piece = givenCoated();
  piece.log(100, "burnout-started", {});
  piece.log(101, "burnout-ended", { result: "stopped" });
  piece.coat(102, { kind: "backup", stuccoId: "80-120", step: null });
  expect(stuccoOutOfOrder(piece.standing(110))).toEqual([]);
});

test("coats whose stucco the log doesn't name can't be judged", () => {
  const found = laid(["prime", null], ["backup", "sand from the beach"]);
  expect(told(found)).toEqual(["note not-known"]);
  expect(found[0]?.figures["coats"]?.value).toBe(2);
});

test("a piece without a coat has no order to be out of", () => {
  expect(laid()).toEqual([]);
});
