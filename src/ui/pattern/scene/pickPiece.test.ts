import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { rayTreeOf } from "../../../geometry/rayTree.ts";
import { ball, spikeInVoid, towers } from "../../../../tests/meshes/testShapes.ts";
import { dot, length, minus, negated, plus, times, unit, type Vec3 } from "../../../geometry/vector.ts";
import { pickPiece } from "./pickPiece.ts";

const down: Vec3 = [0, 0, -1];

describe("a finger on the picture", () => {
  test("meets the face that looks at the eye, with its outward normal", () => {
    const hit = pickPiece(rayTreeOf(towers), { from: [10, 20, 200], along: down });
    expect(hit?.point[2]).toBeCloseTo(50, 4);
    expect(hit?.normal).toEqual([0, 0, 1]);
  });

  test("passes the piece by where there is none", () => {
    expect(pickPiece(rayTreeOf(towers), { from: [-1, 20, 200], along: down })).toBeNull();
  });

  test("goes through what a section has cut away, and never meets a face from behind", () => {
    const tree = rayTreeOf(spikeInVoid);
    const isThere = (p: Vec3): boolean => p[2] <= 36;
    // The roof of the void looks down and is seen from behind: the first face towards the eye is the spike's top.
    const hit = pickPiece(tree, { from: [20, 20, 200], along: down, isThere });
    expect(hit?.point[2]).toBeCloseTo(20, 4);
    expect(pickPiece(tree, { from: [20, 20, 200], along: down })?.point[2]).toBeCloseTo(40, 4);
  });

  test("on a ball it is the nearest place, whatever the side", () => {
    const tree = rayTreeOf(ball(10));
    const away = fc.tuple(...[0, 1, 2].map(() => fc.double({ min: -1, max: 1, noNaN: true })));
    fc.assert(
      fc.property(away, away, (from, aim) => {
        fc.pre(length(from as unknown as Vec3) > 0.1);
        const eye = times(unit(from as unknown as Vec3), 50);
        const target = times(aim as unknown as Vec3, 4);
        const along = unit(minus(target, eye));
        const hit = pickPiece(tree, { from: eye, along });
        const middle = dot(negated(eye), along);
        const off = length(plus(eye, times(along, middle)));
        const exact = middle - Math.sqrt(100 - off * off);
        expect(length(minus(hit!.point, eye))).toBeCloseTo(exact, 0);
        expect(dot(hit!.normal, along)).toBeLessThan(0);
      }),
      { numRuns: 150 },
    );
  });
});
