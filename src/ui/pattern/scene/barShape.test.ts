import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { barSums, type GatingBar } from "../../../geometry/gatingBars.ts";
import { barShape } from "./barShape.ts";
import { measureMesh } from "../../../../tests/meshes/atOnce.ts";

const ends = { freeFrom: true, freeTo: true };
const bar = (over: Partial<GatingBar>): GatingBar => ({
  id: "one",
  kind: "sprue",
  from: [0, 0, 0],
  to: [10, 20, 60],
  fromSection: { kind: "round", diameter: 20 },
  toSection: { kind: "round", diameter: 12 },
  ...over,
});

describe("a bar in the picture", () => {
  test("of two rectangles has the very volume of its sums", () => {
    const one = bar({
      fromSection: { kind: "rectangle", width: 20, height: 8 },
      toSection: { kind: "rectangle", width: 12, height: 4 },
    });
    const { volume, watertight } = measureMesh(barShape(one));
    expect(watertight).toBe(true);
    expect(volume! / barSums(one, ends).volume).toBeCloseTo(1, 5);
  });

  test("of rounds has the volume of its sums but for the corners of 24 sides, whichever way it points", () => {
    const sides = (24 / (2 * Math.PI)) * Math.sin((2 * Math.PI) / 24);
    const length = fc.tuple(...[0, 1, 2].map(() => fc.double({ min: -80, max: 80, noNaN: true })));
    fc.assert(
      fc.property(length, fc.double({ min: 2, max: 60, noNaN: true }), ([x, y, z], diameter) => {
        fc.pre(Math.hypot(x!, y!, z!) > 5);
        const one = bar({ to: [x!, y!, z!], toSection: { kind: "round", diameter } });
        const { volume, watertight } = measureMesh(barShape(one));
        expect(watertight).toBe(true);
        expect(volume! / barSums(one, ends).volume).toBeCloseTo(sides, 4);
      }),
      { numRuns: 40 },
    );
  });
});
