import fc from "fast-check";
import { expect, test } from "vitest";
import { cross, dot, length, minus, times, unit, type Vec3 } from "../../../geometry/vector.ts";
import { ball } from "../../../../tests/meshes/testShapes.ts";
import { frameReach, outermost } from "./frameReach.ts";

const up: Vec3 = [0, 0, 1];
const side = fc.double({ min: 1, max: 300, noNaN: true });
const look = fc
  .tuple(...([0, 1, 2] as const).map(() => fc.double({ min: -1, max: 1, noNaN: true })))
  .map(([x = 0, y = 0, z = 0]): Vec3 => [x, y, z])
  .filter((p) => length(p) > 0.1 && length(cross(unit(p), up)) > 0.02);
const slope = fc.double({ min: 0.1, max: 0.6, noNaN: true });

test("from there all points are in the frame, and one of them at its edge: the pinhole's own projection says so", () => {
  fc.assert(
    fc.property(side, side, side, look, slope, slope, (a, b, c, direction, slopeX, slopeY) => {
      const corner = (n: number): Vec3 => [n & 1 ? a : 0, n & 2 ? b : 0, n & 4 ? c : 0];
      const points = Array.from({ length: 8 }, (_, n) => corner(n));
      const middle: Vec3 = [a / 2, b / 2, c / 2];
      const far = frameReach({ points, middle, direction, up, slopeX, slopeY });
      const eye = times(unit(direction), far);
      const right = unit(cross(up, unit(direction)));
      const above = cross(unit(direction), right);
      let most = 0;
      for (const point of points) {
        const from = minus(minus(point, middle), eye);
        const depth = -dot(from, unit(direction));
        expect(depth).toBeGreaterThan(0);
        most = Math.max(
          most,
          Math.abs(dot(from, right)) / depth / slopeX,
          Math.abs(dot(from, above)) / depth / slopeY,
        );
      }
      expect(most).toBeCloseTo(1, 6);
    }),
    { numRuns: 300 },
  );
});

test("a long bar seen from its side fills a wide frame, where a ball round it would fill a third of its height", () => {
  // 200 by 20 by 20 in a frame twice as wide as high: half of 200 at slope 0.5, and the near face 10 nearer.
  const ends = [-100, 100].flatMap((x) => [-10, 10].flatMap((y) => [-10, 10].map((z): Vec3 => [x, y, z])));
  const asked = { middle: [0, 0, 0], direction: [0, -1, 0], up, slopeX: 0.5, slopeY: 0.25 } as const;
  const far = frameReach({ points: ends, ...asked });
  expect(far).toBeCloseTo(100 / 0.5 + 10, 9);
});

test("of a ball the outermost points reach as far as the ball, to a fortieth", () => {
  const far = Math.max(...outermost(ball(20)).map(length));
  expect(far).toBeCloseTo(20, 4);
  // A hundred caps of 0.22 rad cover it: cos 0.22 is 0.976.
  for (const x of [-1, 1]) {
    const along = Math.max(...outermost(ball(20)).map((p) => dot(p, [x * 0.6, 0.8, 0])));
    expect(along).toBeGreaterThan(0.975 * 20);
  }
});
