import bunny from "bunny";
import loadManifold from "manifold-3d";
import type { ManifoldToplevel } from "manifold-3d";
import { readFileSync } from "node:fs";
import { beforeAll, expect, test } from "vitest";
import type { Mesh } from "./mesh.ts";
import { arc, moved, together, turned } from "../../tests/meshes/testSolids.ts";
import { weldMesh } from "./weld.ts";
import { measureMesh, readMesh } from "../../tests/meshes/atOnce.ts";

// An independent library of solids (manifold-3d, Apache-2.0) measures the same forms.
let oracle: ManifoldToplevel;
beforeAll(async () => {
  oracle = await loadManifold();
  oracle.setup();
});

const solidOf = (mesh: Mesh): InstanceType<ManifoldToplevel["Manifold"]> => {
  const { pos, idx } = weldMesh(mesh);
  return new oracle.Manifold(new oracle.Mesh({ numProp: 3, vertProperties: pos, triVerts: idx }));
};
const ball = turned(arc({ r: 0, z: 0, radius: 20, from: -Math.PI / 2, to: Math.PI / 2 }, 40), 80);
const ring = turned(arc({ r: 40, z: 0, radius: 10, from: 0, to: 2 * Math.PI }, 60).slice(0, -1), 120);
const scan: Mesh = {
  pos: Float32Array.from(bunny.positions.flat()),
  idx: Uint32Array.from(bunny.cells.flat()),
};
const forms: readonly (readonly [string, () => Mesh])[] = [
  ["a ball", () => ball],
  ["a ring", () => ring],
  ["a scanned bunny", () => scan],
  ["the sample pattern", () => readMesh(readFileSync("public/sample-pattern.stl"), "sample.stl")],
];

test.each(forms)("%s has the volume, area and handles the other library finds", (_, form) => {
  const mesh = form();
  const solid = solidOf(mesh);
  const { volume, area, genus } = measureMesh(mesh);
  expect(Math.abs((volume ?? NaN) / solid.volume() - 1)).toBeLessThan(1e-9);
  expect(Math.abs(area / solid.surfaceArea() - 1)).toBeLessThan(1e-9);
  expect(genus).toBe(solid.genus());
});

test("bodies that overlap come to the volume of their union", () => {
  const through = moved(ball, ([x, y, z]) => [x + 33, y + 3, z + 5]);
  const measured = measureMesh(together(ring, through));
  const union = solidOf(ring).add(solidOf(through)).volume();
  expect(measured.overlaps).toBe(true);
  expect(Math.abs((measured.unionVolume ?? NaN) / union - 1)).toBeLessThan(1e-3);
});
