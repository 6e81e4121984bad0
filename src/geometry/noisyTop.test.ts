import fc from "fast-check";
import { expect, test } from "vitest";
import { findTips } from "./findTips.ts";
import type { Mesh } from "./mesh.ts";
import { asFiled, rotated, turnedBy } from "./rotation.ts";
import { length, minus, type Vec3 } from "./vector.ts";
import { ball } from "../../tests/meshes/testShapes.ts";
import { boxes, moved, refined, type Box } from "../../tests/meshes/testSolids.ts";
import { weldMesh } from "./weld.ts";

const up: Vec3 = [0, 0, 1];
const tipsOf = (mesh: Mesh, along: Vec3 = up) => findTips({ mesh, up: along, minRise: 2, minVolume: 50 });

/** A block with a round-cornered plan, cut fine as a scan is: the flat top is 40 by 30. */
const stool: readonly Box[] = [
  [0, 40, 0, 30, 0, 25],
  [0, 40, 0, 30, 25, 26],
];
const block = weldMesh(refined(boxes(stool), 20));

/** The same noise for the same seed, even in ±1 (the low digits of a sine, as shaders make it). */
function noisy(mesh: Mesh, by: number, seed: number): Mesh {
  let n = seed;
  const next = (): number => {
    n++;
    const x = Math.sin(12.9898 * n) * 43758.5453;
    return 2 * (x - Math.floor(x)) - 1;
  };
  return moved(mesh, ([x, y, z]) => [x + by * next(), y + by * next(), z + by * next()]);
}

test("a vent on a flat top stays put under the noise of a scanner", () => {
  const [clean] = tipsOf(block);
  expect(clean!.shape).toBe("flat");
  expect(length(minus(clean!.point, [20, 15, 26]))).toBeLessThan(0.01);
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 10_000 }), fc.constantFrom(0.01, 0.02, 0.05, 0.1), (seed, by) => {
      const tips = tipsOf(noisy(block, by, seed));
      expect(tips).toHaveLength(1);
      expect(tips[0]!.shape).toBe("flat");
      expect(length(minus(tips[0]!.point, clean!.point))).toBeLessThan(1);
    }),
    { numRuns: 24 },
  );
});

test("so it does on a narrow ridge, along its length", () => {
  const wall = weldMesh(refined(boxes([[0, 60, 0, 1.5, 0, 30], [0, 60, 0, 1.5, 30, 31]]), 12)); // prettier-ignore
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 10_000 }), (seed) => {
      const [tip] = tipsOf(noisy(wall, 0.05, seed));
      expect(tip!.shape).toBe("ridge");
      expect(Math.abs(tip!.point[0] - 30)).toBeLessThan(3);
    }),
    { numRuns: 12 },
  );
});

test("a dome and a point stay what they are, and a top leaning 5° has its vent at its high edge", () => {
  const [dome] = tipsOf(ball(30, 48));
  expect([dome!.shape, dome!.point.map(Math.round)]).toEqual(["point", [0, 0, 30]]);
  const leaning = turnedBy(asFiled, "y", (5 * Math.PI) / 180);
  const [edge] = tipsOf(moved(block, (p) => rotated(leaning, p)));
  // Turned about y, the edge at x 0 comes up: the vent stands in the middle of that edge.
  const high = rotated(leaning, [0, 15, 26]);
  expect(length(minus(edge!.point, high))).toBeLessThan(2);
});
