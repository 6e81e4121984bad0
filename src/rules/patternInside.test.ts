import { expect, test } from "vitest";
import { givenCoated, told } from "../../tests/givenPiece.ts";
import { patternInside } from "./patternInside.ts";

test("a shell heated or carried out for metal with its pattern inside is held, one on the rack is not", () => {
  const piece = givenCoated();
  expect(patternInside(piece.standing(121))).toEqual([]);
  piece.log(122, "shell-preheated", { shellC: 600 });
  expect(told(patternInside(piece.standing(123)))).toEqual(["hold inside"]);
  const cold = givenCoated();
  cold.log(122, "shell-out-of-kiln", { shellC: null });
  expect(told(patternInside(cold.standing(123)))).toEqual(["hold inside"]);
});

test("dewaxed and never burnt out, the film is held; burnt out, nothing is", () => {
  const piece = givenCoated();
  piece.log(121, "dewaxed", { way: "steam", minutes: 20 });
  expect(patternInside(piece.standing(122))).toEqual([]);
  piece.log(122, "shell-preheated", { shellC: 200 });
  expect(told(patternInside(piece.standing(123)))).toEqual(["hold film"]);
  piece.log(124, "burnout-started", {});
  piece.log(130, "burnout-ended", { result: "clean" });
  piece.log(131, "shell-preheated", { shellC: 200 });
  expect(patternInside(piece.standing(132))).toEqual([]);
});

test("an old log that burnt out or fired as before is not held", () => {
  const piece = givenCoated();
  piece.log(121, "shell-fired", { peakC: 860, holdMin: 60 });
  piece.log(122, "shell-preheated", { shellC: 600 });
  expect(patternInside(piece.standing(123))).toEqual([]);
});
