import fc from "fast-check";
import { expect, test } from "vitest";
import { asFiled, rotated, turnedBy, upOf } from "../../../geometry/rotation.ts";
import { towers } from "../../../../tests/meshes/testShapes.ts";
import { dot, length, minus, unit, type Vec3 } from "../../../geometry/vector.ts";
import { boundsOf, hungWith } from "./hangTurn.ts";

const direction = fc
  .tuple(...[0, 1, 2].map(() => fc.double({ min: -1, max: 1, noNaN: true })))
  .filter((p) => Math.hypot(...p) > 0.1)
  .map((p) => unit(p as unknown as Vec3));

test("however the piece hung before, the wanted direction is upright after", () => {
  fc.assert(
    fc.property(direction, direction, (first, second) => {
      const turned = hungWith(hungWith(asFiled, first), second);
      expect(length(minus(rotated(turned, second), [0, 0, 1]))).toBeLessThan(1e-9);
      expect(dot(upOf(turned), second)).toBeCloseTo(1, 9);
    }),
    { numRuns: 150 },
  );
});

test("what hangs right already is not spun", () => {
  const spun = turnedBy(asFiled, "z", 0.7);
  expect(hungWith(spun, [0, 0, 1])).toEqual(spun);
});

test("the box of a piece on its side has its height lying down", () => {
  const { low, high } = boundsOf(towers, turnedBy(asFiled, "y", Math.PI / 2));
  expect(high[0] - low[0]).toBeCloseTo(50, 4);
  expect(high[2] - low[2]).toBeCloseTo(60, 4);
});
