import { expect, test } from "vitest";
import { measureMesh } from "../../geometry/measureMesh.ts";
import { archedU, towers } from "../../geometry/testShapes.ts";
import { heldPlasticSkin, trappedSkin } from "./trappedSkins.ts";

const up = [0, 0, 1] as const;
const from = { up, cells: 96 };

test("a vent on the higher tower leaves 12 × 12 × 20 mm of air in the lower one, drawn in its place", () => {
  const skin = trappedSkin({ ...from, mesh: towers, openings: [[10, 20, 50]] })!;
  const { volume, box } = measureMesh(skin);
  expect(volume! / 2880).toBeGreaterThan(0.88);
  expect(volume! / 2880).toBeLessThan(1.03);
  expect(box.low[0]).toBeGreaterThan(39);
  expect(box.low[2]).toBeGreaterThan(19);
  expect(box.high[2]).toBeLessThan(41);
});

test("with both towers vented nothing is drawn", () => {
  const openings = [
    [10, 20, 50],
    [46, 20, 40],
  ] as const;
  expect(trappedSkin({ ...from, mesh: towers, openings })).toBeNull();
});

test("with no opening, or one that lets hardly anything out, the piece itself is the picture", () => {
  expect(trappedSkin({ ...from, mesh: towers, openings: [] })).toBeNull();
  expect(trappedSkin({ ...from, mesh: towers, openings: [[30, 20, 0]] })).toBeNull();
});

test("plastic stays in the shorter leg that has no drain, below the beam", () => {
  const skin = heldPlasticSkin({ ...from, mesh: archedU, openings: [[5, 5, 0]] })!;
  const { volume, box } = measureMesh(skin);
  expect(volume! / 3000).toBeGreaterThan(0.88);
  expect(volume! / 3000).toBeLessThan(1.03);
  expect(box.low[0]).toBeGreaterThan(49);
  expect(box.high[2]).toBeLessThan(41.5);
});
