import { expect, test } from "vitest";
import { givenCoated } from "../../../../tests/givenPiece.ts";
import type { PourCame } from "../../../logbook/entries/shellFireBodies.ts";
import { endWords, pieceWords } from "./phaseWords.ts";
import { cameCounts, cameToDo } from "./pourCameWords.ts";

const all = ["full", "short", "leaked", "frozen", "stopped"] as const;

test("how the pour went is said where the piece stands, and in the archive", () => {
  const words = (came: PourCame): readonly string[] => {
    const piece = givenCoated();
    piece.log(120, "metal-poured", { came, metalC: 1150, shellC: 600, massKg: null, outOfKilnMin: 1 });
    const before = pieceWords(piece.standing(121).piece);
    piece.log(122, "shell-knocked-out", {});
    piece.log(123, "outcome-told", { result: "flawed", defects: [] });
    return [before, endWords(piece.standing(124).piece)];
  };
  expect(all.map(words)).toEqual([
    ["poured", "came out flawed"],
    ["poured short", "poured short, came out flawed"],
    ["leaked at the pour", "leaked at the pour, came out flawed"],
    ["froze in the cup at the pour", "froze in the cup at the pour, came out flawed"],
    ["pour stopped", "pour stopped, came out flawed"],
  ]);
});

test("shells are counted by how they came, the full ones first", () => {
  expect(cameCounts(["short", "full", "short"])).toBe("1 full, 2 short");
  expect(cameCounts(["frozen", "leaked", "stopped"])).toBe("1 leaked, 1 frozen in the cup, 1 stopped");
  expect(cameCounts([])).toBe("");
});

test("what to do begins with people, and never speaks of water but to forbid it", () => {
  for (const text of Object.values(cameToDo)) {
    expect(text).toMatch(/^(Stand clear|Step back|Leave the cup alone|Set the crucible down)/);
    expect(text.replace("Never water", "")).not.toMatch(/water/i);
    expect(text.length).toBeLessThan(120);
  }
});
