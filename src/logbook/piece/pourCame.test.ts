import { expect, test } from "vitest";
import { givenCoated, type GivenPiece } from "../../../tests/givenPiece.ts";
import type { PourCame } from "../entries/shellFireBodies.ts";
import { builtInShop } from "./builtIns.ts";
import { lastCame, outcomeStart } from "./pourCame.ts";
import { provenLoad } from "./provenLoads.ts";

const metal = { metalC: 1150, shellC: 600, massKg: null, outOfKilnMin: 1 } as const;
const poured = (came?: PourCame): GivenPiece => {
  const piece = givenCoated({ headM: 1, part: { kind: "round", diameterMm: 200 } });
  piece.log(120, "metal-poured", came === undefined ? metal : { ...metal, came });
  return piece;
};
const stateOf = (piece: GivenPiece) => piece.standing(121).piece;

test("a log that does not say how it came means a full shell", () => {
  expect([
    lastCame(stateOf(givenCoated())),
    lastCame(stateOf(poured())),
    lastCame(stateOf(poured("full"))),
  ]).toEqual([null, "full", "full"]);
  expect(outcomeStart(stateOf(poured()))).toBeNull();
});

test("where the question of the outcome starts after each", () => {
  const starts = (["short", "leaked", "frozen", "stopped"] as const).map((came) =>
    outcomeStart(stateOf(poured(came))),
  );
  expect(starts.map((start) => [start?.result, ...(start?.defects ?? [])])).toEqual([
    ["flawed", "misrun"],
    ["flawed", "run-out"],
    ["lost", "misrun"],
    ["flawed", "misrun"],
  ]);
});

test("whatever came of the pour, the shell is knocked out next", () => {
  for (const came of ["short", "leaked", "frozen", "stopped"] as const)
    expect(poured(came).standing(121).action).toEqual({ kind: "knock-out" });
});

test("the last of two pours counts", () => {
  const piece = poured("short");
  piece.log(121, "metal-poured", { ...metal, came: "full" });
  expect(lastCame(piece.standing(122).piece)).toBe("full");
});

test("only a full shell proves the head it was to bear; a leak is one that broke", () => {
  const load = (came: PourCame) => {
    const piece = poured(came);
    piece.log(122, "shell-knocked-out", {});
    piece.log(123, "outcome-told", { result: "sound", defects: [] });
    return provenLoad(piece.standing(124).piece, builtInShop)?.held ?? null;
  };
  expect((["full", "short", "leaked", "frozen", "stopped"] as const).map(load)).toEqual([
    true,
    null,
    false,
    null,
    null,
  ]);
});
