import { expect, test } from "vitest";
import { asFiled, rotated, turnedBy } from "./rotation.ts";
import { ball, towers } from "../../tests/meshes/testShapes.ts";
import { boxes, moved, turned } from "../../tests/meshes/testSolids.ts";
import { flatSpans } from "../../tests/meshes/atOnce.ts";

/** To two and a half pixels of 200 over the longest side. */
const near = (byHand: number, longest: number) => ({
  low: byHand - (2.5 * longest) / 200,
  high: byHand + (2.5 * longest) / 200,
});
function expectNear(found: number | undefined, byHand: number, longest: number): void {
  const { low, high } = near(byHand, longest);
  expect(found).toBeGreaterThanOrEqual(low);
  expect(found).toBeLessThanOrEqual(high);
}

test("the underside of a block is a plate of 40 by 60, in its middle, looking down", () => {
  const [widest] = flatSpans(towers);
  expectNear(widest?.width, 40, 60);
  expectNear(widest?.length, 60, 60);
  expect(widest?.normal.map((c) => c + 0)).toEqual([0, 0, -1]);
  expect(widest?.point.map((c) => Math.round(c) + 0)).toEqual([30, 20, 0]);
});

test("between two towers the widest round patch passes both near corners and touches the edge", () => {
  // Corners (15, 15) and (40, 14), edge y = 0. The middle is r from the edge, at (x, r):
  // (x − 15)² + (15 − r)² = r² gives r = ((x − 15)² + 15²) / 30, and the other corner r = ((x − 40)² + 14²) / 28.
  // Equal at x = 27.426: r = (154.4 + 225) / 30 = 12.65.
  const at = 27.42587;
  const byHand = (2 * ((at - 15) ** 2 + 225)) / 30;
  expect(byHand).toBeCloseTo((2 * ((at - 40) ** 2 + 196)) / 28, 2);
  const floor = flatSpans(towers).find(({ normal, point }) => normal[2] > 0.9 && point[2] === 20);
  expectNear(floor?.width, byHand, 60);
});

test("a disc is as long as it is wide", () => {
  const disc = turned(
    [
      [0, 0],
      [15, 0],
      [15, 4],
      [0, 4],
    ],
    96,
  );
  const [face] = flatSpans(disc);
  expectNear(face?.width, 30, 30);
  expectNear(face?.length, 30, 30);
});

test("a flat is as wide in every attitude, and the widest comes first", () => {
  const rotation = turnedBy(turnedBy(asFiled, "x", 0.4), "z", 1.3);
  const [face, ...others] = flatSpans(moved(boxes([[0, 90, 0, 50, 0, 20]]), (p) => rotated(rotation, p)));
  expectNear(face?.width, 50, 90);
  expectNear(face?.length, 90, 90);
  expectNear(others.at(-1)?.width, 20, 90);
});

test("on a ball only small caps are flat", () => {
  const [cap] = flatSpans(ball(50));
  // Within 8° of one direction: 2 · 50 · sin 8° across, and up to a facet more.
  expect(cap?.width).toBeLessThan(2 * 50 * Math.sin((8 * Math.PI) / 180) + 5);
});
