import fc from "fast-check";
import { expect, test } from "vitest";
import { anyTurn, turnedInSpace } from "../../tests/meshes/anyTurn.ts";
import { measureMesh } from "../../tests/meshes/atOnce.ts";
import { ball, hollowBall } from "../../tests/meshes/testShapes.ts";
import {
  boxes,
  moved,
  together,
  turned,
  arc,
  turnedInsideOut,
  volumeOf,
} from "../../tests/meshes/testSolids.ts";
import { dexelsOf } from "./dexels.ts";
import { mendMesh } from "./mendMesh.ts";
import type { Mesh } from "./mesh.ts";
import { trappedInDexels } from "./trappedVolume.ts";
import { turnOutward } from "./turnOutward.ts";

const box = (low: number, high: number): Mesh => boxes([[low, high, low, high, low, high]]);
const ring = turned(arc({ r: 40, z: 0, radius: 8, from: 0, to: 2 * Math.PI }, 24).slice(0, -1), 48);

/** Forms as they should be, and their volume by hand. */
const right: readonly (readonly [string, readonly Mesh[], number])[] = [
  ["a cube", [box(0, 40)], 64_000],
  ["two cubes side by side", [box(0, 10), box(20, 60)], 65_000],
  // Balls of 32 bands and 64 gores: as their facets have it.
  ["a hollow ball", [ball(20), turnedInsideOut(ball(10))], volumeOf(ball(20)) - volumeOf(ball(10))],
  ["a void with an island", [box(0, 40), turnedInsideOut(box(5, 35)), box(15, 25)], 64_000 - 27_000 + 1000],
  [
    "a void with an island that is hollow",
    [box(0, 60), turnedInsideOut(box(5, 55)), box(15, 45), turnedInsideOut(box(20, 40))],
    216_000 - 125_000 + 27_000 - 8000,
  ],
  ["a ball in the hole of a ring", [ring, ball(5)], volumeOf(ring) + volumeOf(ball(5))],
];

const solidOf = (mesh: Mesh) => {
  const mended = mendMesh({ mesh });
  const { volume, unionVolume, area, overlaps, watertight, centre } = measureMesh(mended.mesh);
  return { volume, unionVolume, area, overlaps, watertight, centre };
};

test.each(right)("%s is the same inside out as a whole, and measures what it should", (_, parts, volume) => {
  const mesh = together(...parts);
  expect(turnOutward(mesh)).toEqual({ mesh, bodies: 0 });
  const straight = solidOf(mesh);
  expect(straight.volume).toBeCloseTo(volume, 1);
  expect(Math.abs((straight.unionVolume ?? NaN) / volume - 1)).toBeLessThan(2e-3);
  const inverted = turnOutward(turnedInsideOut(mesh));
  expect(inverted.bodies).toBe(parts.length);
  expect(solidOf(turnedInsideOut(mesh)).volume).toBeCloseTo(volume, 1);
});

test("turned any way in space and inside out, a hollow ball holds the same, in every sum", () => {
  const straight = measureMesh(hollowBall);
  const heldAir = (mesh: Mesh): number =>
    trappedInDexels({ dexels: dexelsOf({ mesh, up: [0, 0, 1], cells: 96 }), vents: [] }).total;
  fc.assert(
    fc.property(anyTurn, (rotation) => {
      const right = turnedInSpace(hollowBall, rotation);
      const { mesh } = mendMesh({ mesh: turnedInsideOut(right) });
      const found = measureMesh(mesh);
      expect(found).toMatchObject({ watertight: true, insideOut: false, overlaps: false, components: 2 });
      expect(Math.abs(found.volume! / straight.volume! - 1)).toBeLessThan(1e-6);
      expect(Math.abs(found.unionVolume! / straight.volume! - 1)).toBeLessThan(2e-3);
      expect(heldAir(mesh)).toBeCloseTo(heldAir(right), 6);
    }),
    { numRuns: 8 },
  );
});

test("bodies of any kind, each turned or not, come to the same as with all of them turned over", () => {
  const parts = [box(0, 60), box(5, 55), box(15, 45), moved(box(0, 20), ([x, y, z]) => [x + 80, y, z])];
  fc.assert(
    fc.property(fc.array(fc.boolean(), { minLength: 4, maxLength: 4 }), (turns) => {
      const mesh = together(...parts.map((part, n) => (turns[n] ? turnedInsideOut(part) : part)));
      const [one, other] = [solidOf(mesh), solidOf(turnedInsideOut(mesh))];
      expect(other.unionVolume).toBeCloseTo(one.unionVolume!, 6);
      expect(other.volume).toBeCloseTo(one.volume!, 6);
      // At least the outermost two are there, whatever is in them.
      expect(one.unionVolume!).toBeGreaterThan(216_000 - 125_000);
    }),
    { numRuns: 16 },
  );
});

test("an open scan keeps its void, and is turned with it", () => {
  const lidless = boxes([[0, 40, 0, 40, 0, 40]]);
  const open: Mesh = { pos: lidless.pos, idx: lidless.idx.slice(3) };
  const hollow = together(open, turnedInsideOut(box(10, 30)));
  for (const mesh of [hollow, turnedInsideOut(hollow)])
    expect(volumeOf(mendMesh({ mesh, capUpTo: Infinity }).mesh)).toBeCloseTo(64_000 - 8000, 1);
});

test("a ball inside out in the hole of a ring is no void of it: it is turned", () => {
  const { mesh, bodies } = turnOutward(together(ring, turnedInsideOut(ball(5))));
  expect(bodies).toBe(1);
  expect(measureMesh(mesh).volume).toBeCloseTo(volumeOf(ring) + volumeOf(ball(5)), 1);
});
