import { expect, test } from "vitest";
import { givenCoated, type GivenPiece } from "../../../tests/givenPiece.ts";
import { builtInShop } from "../../logbook/builtIns.ts";
import type { Pour } from "../../logbook/fireStates.ts";
import { findingsFor } from "../../rules/all.ts";
import type { PourParts } from "./pourParts.ts";
import { sheetLines } from "./sheetItems.ts";
import { whyWords } from "./sheetWords.ts";

const lineAt = (piece: GivenPiece, hour: number) => {
  const standing = piece.standing(hour);
  const plan: Pour["plan"] = {
    id: "plan",
    at: 0,
    pourAt: 0,
    pieceIds: [standing.piece.id],
    bed: "air",
    shellC: 20,
    metalC: 720,
    steps: [],
  };
  const parts: PourParts = {
    items: [{ standing, findings: findingsFor(standing) } as PourParts["items"][number]],
    shells: [],
    run: null,
    melt: null,
    furnace: null,
    power: null,
    alloy: null,
    figures: null,
    metalKg: null,
    wantedKg: null,
    fill: null,
    airC: 20,
    shop: builtInShop,
  };
  const ticked = { id: "c", at: 1, item: "shell-empty", ok: true };
  const line = sheetLines({ plan, checks: [ticked] }, parts).find(({ id }) => id === "shell-empty");
  if (line === undefined) throw new Error("no line for the inside of the shell");
  return { state: line.state, codes: line.why.map(({ code }) => code), words: whyWords(line).join() };
};

test("what the piece holds, its pour sheet holds, and no tick passes it", () => {
  const piece = givenCoated({ alloyId: "a356" });
  expect(lineAt(piece, 121)).toMatchObject({ state: "blocked", codes: ["pattern-inside"] });
  piece.log(121, "dewaxed", { way: "flash", minutes: 15 });
  expect(lineAt(piece, 121.5)).toMatchObject({ state: "blocked", codes: ["wax-film"] });
  piece.log(122, "burnout-started", {});
  piece.log(126, "burnout-ended", { result: "residue" });
  expect(lineAt(piece, 127)).toMatchObject({ state: "blocked", codes: ["residue"] });
  expect(lineAt(piece, 127).words).toContain("carbon or ash");
  piece.log(130, "shell-fired", { peakC: 870, holdMin: 60, inside: "clean" });
  expect(lineAt(piece, 131)).toMatchObject({ state: "ok", codes: [] });
  // Aluminium into a cool shell: nothing else would drive the water out.
  expect(lineAt(piece, 154.1)).toMatchObject({ state: "blocked", codes: ["cold"] });
  piece.log(155, "shell-rinsed", {});
  expect(lineAt(piece, 155.1)).toMatchObject({ state: "blocked", codes: ["rinsed"] });
  piece.log(157, "shell-preheated", { shellC: 120, heldMin: 70 });
  expect(lineAt(piece, 158)).toMatchObject({ state: "ok", codes: [] });
});
