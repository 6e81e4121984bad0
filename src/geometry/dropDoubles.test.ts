import fc from "fast-check";
import { expect, test } from "vitest";
import { anyTurn, turnedInSpace } from "../../tests/meshes/anyTurn.ts";
import { measureMesh } from "../../tests/meshes/atOnce.ts";
import { ball, towers } from "../../tests/meshes/testShapes.ts";
import { boxes, moved, together, turnedInsideOut } from "../../tests/meshes/testSolids.ts";
import { mendMesh } from "./mendMesh.ts";
import type { Mesh } from "./mesh.ts";

const measured = (mesh: Mesh) => measureMesh(mendMesh({ mesh }).mesh);

test("a body drawn twice, three times, or with a back to every face counts once", () => {
  const once = measureMesh(towers);
  const back = turnedInsideOut(towers);
  for (const mesh of [
    together(towers, towers),
    together(towers, towers, towers),
    together(towers, back),
    together(back, towers, towers),
    together(back, back),
  ]) {
    const found = measured(mesh);
    expect(found).toMatchObject({ watertight: true, volume: 53_880, area: once.area, overlaps: false });
    expect(mendMesh({ mesh }).doubles).toBe((mesh.idx.length - towers.idx.length) / 3);
  }
});

test("some faces drawn twice, whichever and whichever way turned, leave the ball whole", () => {
  const round = ball(20, 8);
  const triangles = round.idx.length / 3;
  const { volume } = measureMesh(round);
  fc.assert(
    fc.property(fc.uniqueArray(fc.nat(triangles - 1), { maxLength: 40 }), anyTurn, (again, rotation) => {
      const twice = again.flatMap((t) => [...round.idx.subarray(3 * t, 3 * t + 3)]);
      const mesh = turnedInSpace(
        { pos: round.pos, idx: Uint32Array.from([...twice, ...round.idx]) },
        rotation,
      );
      const found = mendMesh({ mesh });
      expect([found.doubles, found.capped, found.left]).toEqual([again.length, [], []]);
      const after = measureMesh(found.mesh);
      expect(after.watertight).toBe(true);
      expect(Math.abs(after.volume! / volume! - 1)).toBeLessThan(1e-6);
    }),
    { numRuns: 40 },
  );
});

test("the wall between two boxes that are drawn apart goes, and they are one body", () => {
  const joined = together(boxes([[0, 10, 0, 10, 0, 10]]), boxes([[10, 30, 0, 10, 0, 10]]));
  expect(measureMesh(joined).watertight).toBe(false);
  expect(measured(joined)).toMatchObject({ watertight: true, components: 1, volume: 3000, area: 1400 });
});

test("a lid drawn with front and back still closes its box", () => {
  const box = boxes([[0, 10, 0, 10, 0, 10]]);
  const isLid = (i: number): boolean =>
    [0, 1, 2].every((k) => box.pos[3 * box.idx[3 * Math.floor(i / 3) + k]! + 2] === 10);
  const lid = box.idx.filter((_, i) => isLid(i));
  const both = [...lid, ...turnedInsideOut({ pos: box.pos, idx: lid }).idx];
  const mesh = { pos: box.pos, idx: Uint32Array.from([...box.idx.filter((_, i) => !isLid(i)), ...both]) };
  // It is open as before, and no face of the lid is lost.
  const { mesh: left, doubles } = mendMesh({ mesh });
  expect([left.idx.length, doubles]).toEqual([mesh.idx.length, 0]);
});

test("the same body with its squares cut along the other diagonal counts once in the range", () => {
  const other = moved(boxes([[0, 40, 0, 40, 0, 40]]), ([x, y, z]) => [40 - x, y, z]);
  const mesh = together(boxes([[0, 40, 0, 40, 0, 40]]), turnedInsideOut(other));
  const { volume, openVolume } = measured(mesh);
  expect(volume).toBeNull();
  expect(Math.abs((openVolume?.high ?? NaN) / 64_000 - 1)).toBeLessThan(2e-3);
  expect(openVolume?.low).toBe(openVolume?.high);
});

test("drawn twice a hair apart it counts once too", () => {
  const mesh = together(
    towers,
    moved(towers, ([x, y, z]) => [x + 1e-4, y, z]),
  );
  const { overlaps, unionVolume } = measured(mesh);
  expect(overlaps).toBe(true);
  expect(Math.abs((unionVolume ?? NaN) / 53_880 - 1)).toBeLessThan(2e-3);
});
