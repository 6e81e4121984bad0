import { expect, test } from "vitest";
import { givenCoated, told } from "../../tests/givenPiece.ts";
import { pouredColdShell } from "./pouredColdShell.ts";

type Pour = { shellC?: number | null; outOfKilnMin?: number | null; alloyId?: string | undefined };

function poured({ shellC = null, outOfKilnMin = null, ...plan }: Pour) {
  const piece = givenCoated("alloyId" in plan ? plan : {});
  piece.log(100, "shell-fired", { peakC: 850, holdMin: 60 });
  piece.log(101, "metal-poured", { metalC: 1150, shellC, massKg: 4, outOfKilnMin });
  return told(pouredColdShell(piece.standing(102)));
}

test("five minutes out of the kiln will do, six are too long", () => {
  expect(poured({ outOfKilnMin: 5 })).toEqual([]);
  expect(poured({ outOfKilnMin: 6 })).toEqual(["watch too-long"]);
});

test("bronze and brass want the shell at 400 °C, aluminium at 150", () => {
  expect(poured({ shellC: 400 })).toEqual([]);
  expect(poured({ shellC: 399 })).toEqual(["watch too-cold"]);
  expect(poured({ shellC: 399, alloyId: "c83600" })).toEqual(["watch too-cold"]);
  expect(poured({ shellC: 150, alloyId: "a356" })).toEqual([]);
  expect(poured({ shellC: 149, alloyId: "a356" })).toEqual(["watch too-cold"]);
});

test("both faults are told", () => {
  expect(poured({ shellC: 300, outOfKilnMin: 9 })).toEqual(["watch too-cold", "watch too-long"]);
});

test("a pour of which nothing was logged can't be judged", () => {
  expect(poured({})).toEqual(["note not-known"]);
});

test("a shell temperature says nothing where the metal is not known", () => {
  expect(poured({ shellC: 300, alloyId: undefined })).toEqual(["note not-known"]);
  expect(poured({ shellC: 300, alloyId: "tin" })).toEqual(["note not-known"]);
});

test("a cool preheat is told before metal moves", () => {
  const piece = givenCoated();
  piece.log(100, "shell-preheated", { shellC: 399 });
  expect(told(pouredColdShell(piece.standing(101)))).toEqual(["watch preheat-cold"]);
  piece.log(102, "shell-preheated", { shellC: 400 });
  expect(pouredColdShell(piece.standing(103))).toEqual([]);
});

test("a piece that was never near metal says nothing", () => {
  expect(pouredColdShell(givenCoated().standing(119))).toEqual([]);
});
