import { expect, test } from "vitest";
import { givenCoated, told } from "../../tests/givenPiece.ts";
import { patchedWithoutWire } from "./patchedWithoutWire.ts";

function cracked(stage: "coating" | "burnout") {
  const piece = givenCoated();
  if (stage === "burnout") piece.log(100, "burnout-started", {});
  const crackId = piece.log(101, "crack-found", { kind: "open", stage, where: "neck" });
  if (stage === "burnout") piece.log(102, "burnout-ended", { result: "stopped" });
  piece.log(103, "crack-patched", { crackId, how: "slurry and sand" });
  return piece;
}

test("a crack of the burnout that is patched and not wired is noted", () => {
  expect(told(patchedWithoutWire(cracked("burnout").standing(104)))).toEqual(["note no-wire"]);
});

test("wire put on after the crack settles it", () => {
  const piece = cracked("burnout");
  piece.log(104, "wire-wrapped", { note: "two turns" });
  expect(patchedWithoutWire(piece.standing(105))).toEqual([]);
});

test("a crack patched while coating needs no wire", () => {
  expect(patchedWithoutWire(cracked("coating").standing(104))).toEqual([]);
});

test("a shell without cracks in its log says nothing of wire", () => {
  expect(patchedWithoutWire(givenCoated().standing(119))).toEqual([]);
});
