import { describe, expect, test } from "vitest";
import { asFiled, rotated, turnedBy } from "./rotation.ts";
import { ball, ballOnStick, cup, hollowBall, towers } from "../../tests/meshes/testShapes.ts";
import { boxes, moved, together, turned } from "../../tests/meshes/testSolids.ts";
import type { Vec3 } from "./vector.ts";
import { roundSpans, wallThickness } from "../../tests/meshes/atOnce.ts";

const samples = 2000;

describe("thickness", () => {
  test("of a hollow ball is 10 everywhere, and so are the balls in it", () => {
    const { thin, thick, median, field, pitch } = wallThickness({ mesh: hollowBall, cells: 96, samples });
    expect(median).toBeCloseTo(10, 0);
    expect(thin.map(({ thickness }) => Math.round(thickness))).toEqual([10]);
    for (const { diameter } of thick) expect(Math.abs(diameter - 10)).toBeLessThan(pitch);
    for (const thickness of field) expect(Math.abs(thickness - 10)).toBeLessThan(0.1);
  });

  test("of a cup is its wall of 3, and in its corner a ball of 6√2 / (1 + √2)", () => {
    // The ball touches floor and side, its middle r in from both, and the inner edge 3√2 away along the diagonal.
    const { thin, thick, median, pitch } = wallThickness({ mesh: cup, cells: 128, samples });
    expect(median).toBeCloseTo(3, 1);
    expect(thin[0]?.thickness).toBeCloseTo(3, 1);
    expect(Math.abs((thick[0]?.diameter ?? 0) - (6 * Math.SQRT2) / (1 + Math.SQRT2))).toBeLessThan(pitch / 4);
  });

  test("of a stick counts across and not along, and the ball on it is the thickest", () => {
    const { thin, thick, field } = wallThickness({ mesh: ballOnStick, cells: 96, samples });
    expect(Math.abs((thin[0]?.thickness ?? 0) - 6)).toBeLessThan(0.25);
    expect(thick[0]?.diameter).toBeCloseTo(20, 0);
    expect(thick[0]?.point.map((c) => Math.round(10 * c) / 10 + 0)).toEqual([0, 0, 40]);
    // Straight in from the end of the stick a ray runs 50 mm, to the crown of the ball.
    const end = ballOnStick.idx.findIndex((_, i, idx) => [0, 1, 2].every((k) => ballOnStick.pos[3 * idx[i + k]! + 2] === 0) && i % 3 === 0); // prettier-ignore
    expect(Math.abs((field[end / 3] ?? 0) - 6)).toBeLessThan(1);
  });

  test("under a tower of 12 on a block of 20 is a ball of 21.8: it reaches from the floor into the tower's foot", () => {
    // Floor at 0, foot's edges 6 from the axis at z 20: r² = 6² + (20 − r)², r = (36 + 400) / 40 = 10.9.
    const { thick } = wallThickness({ mesh: towers, cells: 128, samples });
    expect(thick[0]?.diameter).toBeCloseTo(21.8, 1);
  });

  test("goes through two bodies that run into each other as through one", () => {
    const cross = together(
      boxes([[0, 20, 0, 20, 0, 20]]),
      boxes([[12, 40, 1, 19, 1, 19]]),
      boxes([[30, 34, 2, 18, 2, 18]]),
    );
    const { thin } = wallThickness({ mesh: cross, cells: 96, samples });
    // Nothing is thinner than the arm is across, although the first skin met is 8, 12 or 4 away.
    expect(thin[0]?.thickness).toBeCloseTo(18, 5);
  });

  test("below three cells says so", () => {
    const sheet = boxes([
      [0, 60, 0, 60, 0, 1],
      [0, 60, 0, 20, 1, 20],
    ]);
    const { thin, resolvable } = wallThickness({ mesh: sheet, cells: 64, samples });
    expect(thin[0]).toMatchObject({ isBelowResolution: true });
    expect(thin[0]?.thickness).toBeCloseTo(1, 3);
    expect(resolvable).toBeGreaterThan(1);
  });

  test("is the same however the piece lies in the file", () => {
    const rotation = turnedBy(turnedBy(asFiled, "x", 0.7), "y", -1.9);
    const turnedTowers = moved(towers, (p: Vec3) => rotated(rotation, p));
    const { thick, thin } = wallThickness({ mesh: turnedTowers, cells: 96, samples });
    expect(thick[0]?.diameter).toBeCloseTo(21.8, 1);
    expect(thin[0]?.thickness).toBeCloseTo(10, 1);
  });

  test("colours a lighter copy by the thickness of the real one", () => {
    const shell = together(ball(20, 8), boxes([[100, 101, 0, 1, 0, 1]]));
    const { field } = wallThickness({ mesh: hollowBall, cells: 64, samples: 200, on: shell });
    expect(field).toHaveLength(shell.idx.length / 3);
    expect(Math.abs((field[field.length >> 1] ?? 0) - 10)).toBeLessThan(1);
  });
});

test("round parts are a ball and its stick, and no part of a block with towers", () => {
  const found = roundSpans({ mesh: ballOnStick, cells: 64 }).map(({ diameter }) => Math.round(diameter));
  expect(found[0]).toBe(20);
  expect(new Set(found)).toEqual(new Set([20, 6]));
  expect(roundSpans({ mesh: towers, cells: 64 })).toEqual([]);
  const rod = turned(
    [
      [0, 0],
      [8, 0],
      [8, 60],
      [0, 60],
    ],
    48,
  );
  expect(roundSpans({ mesh: rod, cells: 64 })[0]?.diameter).toBeCloseTo(16, 0);
});
