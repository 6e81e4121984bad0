import { expect, test } from "vitest";
import { givenCoated, type GivenPiece } from "../../tests/givenPiece.ts";
import { builtInShop } from "../logbook/piece/builtIns.ts";
import type { Pour } from "../logbook/fire/fireStates.ts";
import { sheetLines } from "../logbook/pour/pourSheet.ts";
import { pourSupply } from "../logbook/pour/pourSupply.ts";
import { findingsFor } from "./all.ts";

const lineAt = (piece: GivenPiece, hour: number) => {
  const standing = piece.standing(hour);
  const plan = {
    id: "plan",
    at: 0,
    pourAt: 0,
    pieceIds: [standing.piece.id],
    bed: "air",
    shellC: 20,
    metalC: 720,
    steps: [],
  } as const;
  const ticked = { id: "c", at: standing.now - 1, item: "shell-empty", ok: true };
  const pour = { id: "pour", plan, checks: [ticked], marks: [], pieceIds: plan.pieceIds } as unknown as Pour;
  const line = sheetLines({
    pour,
    shells: [{ standing, findings: findingsFor(standing) }],
    run: null,
    melt: null,
    supply: pourSupply({
      standings: [standing],
      melt: null,
      shop: builtInShop,
      told: { metalKg: null, thinnestMm: [] },
    }),
    now: standing.now,
  }).find(({ id }) => id === "shell-empty");
  if (line === undefined) throw new Error("no line for the inside of the shell");
  return { state: line.state, codes: line.why.map(({ code }) => code) };
};

test("what the piece holds, its pour sheet holds, and no tick passes it", () => {
  const piece = givenCoated({ alloyId: "a356" });
  expect(lineAt(piece, 121)).toMatchObject({ state: "not-ok", codes: ["pattern-inside"] });
  piece.log(121, "dewaxed", { way: "flash", minutes: 15 });
  expect(lineAt(piece, 121.5)).toMatchObject({ state: "not-ok", codes: ["wax-film"] });
  piece.log(122, "burnout-started", {});
  piece.log(126, "burnout-ended", { result: "residue" });
  expect(lineAt(piece, 127)).toMatchObject({ state: "not-ok", codes: ["residue"] });
  piece.log(130, "shell-fired", { peakC: 870, holdMin: 60, inside: "clean" });
  expect(lineAt(piece, 131)).toMatchObject({ state: "ok", codes: [] });
  // Aluminium into a cool shell: nothing else would drive the water out.
  expect(lineAt(piece, 154.1)).toMatchObject({ state: "not-ok", codes: ["cold"] });
  piece.log(155, "shell-rinsed", {});
  expect(lineAt(piece, 155.1)).toMatchObject({ state: "not-ok", codes: ["rinsed"] });
  piece.log(157, "shell-preheated", { shellC: 120, heldMin: 70 });
  expect(lineAt(piece, 158)).toMatchObject({ state: "ok", codes: [] });
});
