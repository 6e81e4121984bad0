import { expect, test } from "vitest";
import { archedU, towers } from "../../tests/meshes/testShapes.ts";
import { heldSkinsSteps } from "./heldSkins.ts";
import type { Mesh } from "./mesh.ts";
import type { Vec3 } from "./vector.ts";
import { measureMesh } from "../../tests/meshes/atOnce.ts";
import { finish } from "../../tests/meshes/atOnce.ts";

const up = [0, 0, 1] as const;
const skinsOf = (mesh: Mesh, opened: { vents?: readonly Vec3[]; openings?: readonly Vec3[] }) =>
  finish(heldSkinsSteps({ mesh, up, cells: 96, minRise: 2, vents: [], openings: [], ...opened }));

test("a vent on the higher tower leaves 12 × 12 × 20 mm of air in the lower one, drawn in its place", () => {
  const skin = skinsOf(towers, { vents: [[10, 20, 50]] }).air!;
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
  expect(skinsOf(towers, { vents: openings }).air).toBeNull();
});

test("with no opening, or one that lets hardly anything out, the piece itself is the picture", () => {
  expect(skinsOf(towers, {}).air).toBeNull();
  expect(skinsOf(towers, { vents: [[30, 20, 0]] }).air).toBeNull();
});

test("a vent that no cell lies near draws nothing, and is no fault", () => {
  expect(skinsOf(towers, { vents: [[500, 20, 50]] })).toEqual({ air: null, plastic: null });
});

test("plastic stays in the shorter leg that has no drain, below the beam", () => {
  const skin = skinsOf(archedU, { openings: [[5, 5, 0]] }).plastic!;
  const { volume, box } = measureMesh(skin);
  expect(volume! / 3000).toBeGreaterThan(0.88);
  expect(volume! / 3000).toBeLessThan(1.03);
  expect(box.low[0]).toBeGreaterThan(49);
  expect(box.high[2]).toBeLessThan(41.5);
});
