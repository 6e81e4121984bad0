import { expect, test } from "vitest";
import { givenCoated, told } from "../../tests/givenPiece.ts";
import { findingsFor, reviewFindingsFor } from "./all.ts";
import { burnoutResidue } from "./burnoutResidue.ts";

test("residue at the end of a burnout is a hold on the piece and its review, until it is seen gone", () => {
  const piece = givenCoated();
  expect(burnoutResidue(piece.standing(121))).toEqual([]);
  piece.log(121, "burnout-started", {});
  const ended = piece.log(125, "burnout-ended", { result: "residue" });
  const standing = piece.standing(126);
  expect(told(burnoutResidue(standing))).toEqual(["hold residue"]);
  expect(burnoutResidue(standing)[0]?.entries).toEqual([ended]);
  for (const findings of [findingsFor(standing), reviewFindingsFor(standing)])
    expect(findings).toContainEqual(expect.objectContaining({ rule: "burnout-residue", level: "hold" }));
  piece.log(130, "shell-fired", { peakC: 870, holdMin: 60, inside: "clean" });
  expect(burnoutResidue(piece.standing(131))).toEqual([]);
});

test("a log that never said how the inside was is not held", () => {
  const piece = givenCoated();
  piece.log(121, "shell-fired", { peakC: 860, holdMin: 60 });
  expect(burnoutResidue(piece.standing(122))).toEqual([]);
});
