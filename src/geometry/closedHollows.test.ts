import { expect, test } from "vitest";
import { ball, hollowBall, spikeInVoid, towers } from "../../tests/meshes/testShapes.ts";
import { boxes, moved, together, turnedInsideOut, volumeOf } from "../../tests/meshes/testSolids.ts";
import { measureMesh } from "../../tests/meshes/atOnce.ts";
import { closedHollowsOf, withoutHollows } from "./closedHollows.ts";
import type { Mesh } from "./mesh.ts";

const cube = (low: number, high: number): Mesh => boxes([[low, high, low, high, low, high]]);

test("a ball of 60 mm with a void of 55 mm: the void holds 4/3·π·55³ behind a skin of 4·π·55²", () => {
  const found = closedHollowsOf(together(ball(60, 96), turnedInsideOut(ball(55, 96))));
  expect(found.count).toBe(1);
  expect(found.volume / ((4 / 3) * Math.PI * 55 ** 3)).toBeCloseTo(1, 2);
  expect(found.area / (4 * Math.PI * 55 ** 2)).toBeCloseTo(1, 2);
});

test("as if cast solid it is the outer ball and nothing else", () => {
  const solid = withoutHollows(hollowBall);
  expect(volumeOf(solid)).toBeCloseTo(volumeOf(ball(20)), 6);
  expect(measureMesh(solid)).toMatchObject({ watertight: true, components: 1 });
  expect(solid.pos.length).toBe(ball(20).pos.length);
});

test("a spike that stands in a void from its floor is metal of the body: 30³ less 6 · 6 · 15", () => {
  expect(closedHollowsOf(spikeInVoid)).toMatchObject({ count: 1, volume: 27_000 - 540 });
});

test("a loose body in a void is counted off it, and its skin with the void's", () => {
  const nested = together(cube(0, 40), turnedInsideOut(cube(5, 35)), cube(15, 25));
  expect(closedHollowsOf(nested)).toEqual({ count: 1, volume: 27_000 - 1000, area: 6 * 900 + 6 * 100 });
  expect(volumeOf(withoutHollows(nested))).toBeCloseTo(64_000, 6);
});

test("bodies side by side, one turned wrong in the bend of another and one whole body have none", () => {
  const bend = boxes([[0, 60, 0, 60, 0, 10]], [[10, 60, 10, 60, 0, 10]]);
  const inBend = turnedInsideOut(moved(cube(0, 4), ([x, y, z]) => [x + 30, y + 30, z + 3]));
  for (const mesh of [
    towers,
    together(
      cube(0, 10),
      moved(cube(0, 10), ([x, y, z]) => [x + 20, y, z]),
    ),
    together(bend, inBend),
  ]) {
    expect(closedHollowsOf(mesh)).toEqual({ count: 0, volume: 0, area: 0 });
    expect(withoutHollows(mesh)).toBe(mesh);
  }
});
