import { expect, test } from "vitest";
import type { Mesh } from "./mesh.ts";
import { ball } from "../../tests/meshes/testShapes.ts";
import { arc, boxes, turned } from "../../tests/meshes/testSolids.ts";
import type { Feed } from "./hotSpots.ts";
import { freezeOrder } from "../../tests/meshes/atOnce.ts";

const cells = 64;
const order = (mesh: Mesh, feeds: readonly Feed[] = []) => freezeOrder({ mesh, cells, feeds });

test("a plate freezes like itself, a ball like a plate of √(8/6) radii, a rod like one of √(8/4) radii", () => {
  const plate = order(boxes([[0, 100, 0, 100, 0, 20]]));
  expect(Math.abs((plate.hotSpots[0]?.plate ?? 0) - 20)).toBeLessThan(plate.grid.pitch);
  expect((order(ball(10)).hotSpots[0]?.plate ?? 0) / (10 * Math.sqrt(8 / 6))).toBeCloseTo(1, 1);
  const rod = turned([[0, 0], [8, 0], [8, 60], [0, 60]], 48); // prettier-ignore
  expect((order(rod).hotSpots[0]?.plate ?? 0) / (8 * Math.sqrt(8 / 4))).toBeCloseTo(1, 1);
});

/** A drum of radius 10 and one of 12, and between them a rod of 4 from z 25 to 45. */
const dumbbell = turned(
  [
    [0, 0],
    [10, 0],
    [10, 20],
    [4, 25],
    [4, 45],
    [12, 50],
    [12, 74],
    [0, 74],
  ],
  48,
);

test("two heavy ends on a thin rod are two hot spots, the heavier first; without a feed nothing reaches them", () => {
  const { hotSpots, plate, grid } = order(dumbbell);
  expect(hotSpots.map(({ neck }) => neck)).toEqual([null, null]);
  const heights = hotSpots.map(({ point }) => point[2]);
  expect(heights[0]).toBeGreaterThan(50);
  expect(heights[1]).toBeLessThan(20);
  expect(plate).toHaveLength(grid.nu * grid.nv * grid.nw);
});

test("fed from below, the upper end hangs on the rod, which freezes like a plate of √(8/4) · 4 = 5.7", () => {
  const { hotSpots } = order(dumbbell, [{ point: [0, 0, 0], radius: 9 }]);
  expect(hotSpots).toHaveLength(1);
  expect(hotSpots[0]?.neck?.plate).toBeCloseTo(4 * Math.SQRT2, 0);
  expect(hotSpots[0]?.neck?.point[2]).toBeGreaterThan(22);
  expect(hotSpots[0]?.neck?.point[2]).toBeLessThan(48);
});

test("a feed on each end leaves no hot spot behind a neck", () => {
  const feeds = [
    { point: [0, 0, 0], radius: 12 },
    { point: [0, 0, 74], radius: 14 },
  ] as const;
  expect(order(dumbbell, feeds).hotSpots).toEqual([]);
});

test("a feed off the solid is refused", () => {
  expect(() => order(dumbbell, [{ point: [99, 0, 0], radius: 1 }])).toThrow(/feed.*99, 0, 0/);
});

test("a ball of 20 holds a ball of 20 and freezes with a plate of 20 over √3", () => {
  const round = turned(arc({ r: 0, z: 0, radius: 10, from: -Math.PI / 2, to: Math.PI / 2 }, 32), 64);
  const [spot] = order(round).hotSpots;
  expect(Math.abs((spot?.ball ?? NaN) - 20)).toBeLessThan(1);
  expect(Math.abs((spot?.plate ?? NaN) / (20 / Math.sqrt(3)) - 1)).toBeLessThan(0.03);
});
