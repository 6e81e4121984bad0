import { expect, test } from "vitest";
import { givenPiece } from "../../../tests/givenPiece.ts";
import { pourShell } from "./pourShells.ts";

test("a cup thicker than the piece freezes last, and the pour waits for it", () => {
  const modulus = (treeModulusMm?: number) => {
    const piece = givenPiece();
    piece.log(1, "pattern-measured", {
      patternId: "p",
      fileName: "plaque.stl",
      sumsVersion: 1,
      triangles: 100,
      watertight: true,
      mmPerUnit: 1,
      volumeMm3: 60_000,
      areaMm2: 20_000,
      boxMm: [100, 100, 6],
      up: [0, 0, 1],
      headM: 0.2,
      tips: 1,
      vents: 1,
      drains: 0,
      trappedMl: 0,
      gatingMm3: 148_000,
      thinnestMm: 6,
      thickestMm: 6,
      ...(treeModulusMm === undefined ? {} : { treeModulusMm }),
    });
    return pourShell(piece.standing(2), { toldMm: null, metalKg: null, alloy: null });
  };
  // A plate of 6 mm has 3 mm; the starting cup's frustum 148 cm³ over 161 cm² has 9.2 mm.
  expect(modulus()).toMatchObject({ modulusMm: 3, modulusFrom: "mesh" });
  expect(modulus(9.2)).toMatchObject({ modulusMm: 9.2, modulusFrom: "mesh" });
  expect(modulus(2)).toMatchObject({ modulusMm: 3 });
});
