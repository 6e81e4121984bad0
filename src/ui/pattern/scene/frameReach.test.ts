import fc from "fast-check";
import { expect, test } from "vitest";
import { cross, dot, length, minus, times, unit, type Vec3 } from "../../../geometry/vector.ts";
import { frameReach } from "./frameReach.ts";

const up: Vec3 = [0, 0, 1];
const side = fc.double({ min: 1, max: 300, noNaN: true });
const look = fc
  .tuple(...([0, 1, 2] as const).map(() => fc.double({ min: -1, max: 1, noNaN: true })))
  .map(([x = 0, y = 0, z = 0]): Vec3 => [x, y, z])
  .filter((p) => length(p) > 0.1 && length(cross(unit(p), up)) > 0.02);
const slope = fc.double({ min: 0.1, max: 0.6, noNaN: true });

test("from there all of a box is in the frame, and one corner at its edge: the pinhole's own projection says so", () => {
  fc.assert(
    fc.property(side, side, side, look, slope, slope, (a, b, c, direction, slopeX, slopeY) => {
      const bounds = { low: [0, 0, 0], high: [a, b, c] } as const;
      const far = frameReach({ bounds, direction, up, slopeX, slopeY });
      const eye = times(unit(direction), far);
      const right = unit(cross(up, unit(direction)));
      const above = cross(unit(direction), right);
      let most = 0;
      for (let n = 0; n < 8; n++) {
        const corner: Vec3 = [
          ((n & 1) - 0.5) * a,
          ((n >> 1) & 1 ? 0.5 : -0.5) * b,
          (n >> 2 ? 0.5 : -0.5) * c,
        ];
        const from = minus(corner, eye);
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
  const far = frameReach({
    bounds: { low: [-100, -10, -10], high: [100, 10, 10] },
    direction: [0, -1, 0],
    up,
    slopeX: 0.5,
    slopeY: 0.25,
  });
  expect(far).toBeCloseTo(100 / 0.5 + 10, 9);
});
