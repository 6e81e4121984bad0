import { expect, test } from "vitest";
import { cup, hollowBall, standingRing, towers } from "../../tests/meshes/testShapes.ts";
import { boxes } from "../../tests/meshes/testSolids.ts";
import { recesses } from "../../tests/meshes/atOnce.ts";

const find = (mesh: Parameters<typeof recesses>[0]["mesh"]) => recesses({ mesh, cells: 96, minDepth: 2 });

test("the bore of a cup, 24 wide and 27 deep, is a recess and holds what water would", () => {
  const [bore, ...others] = find(cup);
  expect(others).toEqual([]);
  expect(bore?.kind).toBe("recess");
  expect(bore?.depth).toBeCloseTo(27, 5);
  expect(bore?.mouth).toBeCloseTo(24, 0);
  expect((bore?.volume ?? 0) / (Math.PI * 12 ** 2 * 27)).toBeCloseTo(1, 2);
  expect(bore?.opening).toEqual([0, 0, 1]);
});

test("a slot three times as deep as wide is deep, a dish is open, whichever way they look", () => {
  const bored = boxes([[0, 60, 0, 60, 0, 60]], [[-1, 45, 25, 35, 25, 35]]);
  expect(find(bored).map(({ kind, opening }) => [kind, opening])).toEqual([["deep", [-1, 0, 0]]]);
  const dished = boxes([[0, 60, 0, 60, 0, 60]], [[5, 55, 5, 55, 50, 61]]);
  expect(find(dished).map(({ kind }) => kind)).toEqual(["open"]);
});

test("a closed void is told as closed, once; a ring and a block with towers have none", () => {
  expect(find(hollowBall).map(({ kind }) => kind)).toEqual(["closed"]);
  expect(find(standingRing).filter(({ kind }) => kind !== "open")).toEqual([]);
  expect(find(towers)).toEqual([]);
});
