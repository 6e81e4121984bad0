import fc from "fast-check";
import { expect, test } from "vitest";
import { headAt, judged, searchAttitudesSteps } from "./attitude.ts";
import { asFiled, faceDown, rotated, turnedBy, uprightFor, upOf } from "./rotation.ts";
import { archedU, cup, hand, towers } from "../../tests/meshes/testShapes.ts";
import { boxes, type Box } from "../../tests/meshes/testSolids.ts";
import { dot, length, minus, unit, type Vec3 } from "./vector.ts";
import { searchAttitudes } from "../../tests/meshes/atOnce.ts";

const asked = { minRise: 2, minVolume: 50 };

test("a cup on its foot wants one vent and one drain; on its mouth the same", () => {
  for (const up of [
    [0, 0, 1],
    [0, 0, -1],
  ] as const)
    // prettier-ignore
    expect(judged({ mesh: cup, up, ...asked })).toMatchObject({ vents: 1, drains: 1, head: 30 });
});

test("an arched U upright wants one vent and two drains, turned over the other way round", () => {
  expect(judged({ mesh: archedU, up: [0, 0, 1], ...asked })).toMatchObject({ vents: 1, drains: 2, head: 50 });
  expect(judged({ mesh: archedU, up: [0, 0, -2], ...asked })).toMatchObject({
    vents: 2,
    drains: 1,
    head: 50,
  });
});

test("the ways found for a hand include one with fewer openings than upright, and none beats another", () => {
  const upright = judged({ mesh: hand, up: [0, 0, 1], ...asked });
  expect(upright.vents).toBe(5);
  const ways = searchAttitudes({ mesh: hand, ...asked, directions: 100 });
  expect(Math.min(...ways.map(({ vents, drains }) => vents + drains))).toBeLessThan(
    upright.vents + upright.drains,
  );
  for (const a of ways)
    for (const b of ways)
      if (a !== b)
        expect(a.vents > b.vents || a.drains > b.drains || a.head > b.head, JSON.stringify([a, b])).toBe(
          true,
        );
  for (const { up, ...sums } of ways) expect(judged({ mesh: hand, up, ...asked })).toMatchObject(sums);
});

test("a bar that wants one vent and one drain anyhow is laid down: no head to speak of", () => {
  const bar = boxes([[0, 200, 0, 20, 0, 10]]);
  const [best] = searchAttitudes({ mesh: bar, ...asked, directions: 60 });
  expect(best).toMatchObject({ vents: 1, drains: 1 });
  expect(best?.head).toBeLessThan(20);
});

test("a way with less head is kept beside one with fewer openings", () => {
  // A slab with four long pins: lying it is low but the pins are tips, on edge they are none.
  const pins = [10, 80].flatMap((x) => [10, 80].map((y): Box => [x, x + 8, y, y + 8, 6, 30]));
  const ways = searchAttitudes({ mesh: boxes([[0, 100, 0, 100, 0, 6], ...pins]), ...asked, directions: 100 });
  const fewest = Math.min(...ways.map(({ vents, drains }) => vents + drains));
  const lowest = ways.reduce((a, b) => (b.head < a.head ? b : a));
  expect(fewest).toBe(2);
  expect(lowest.head).toBeLessThan(32);
  expect(lowest.vents + lowest.drains).toBe(5);
});

test("a search says how far it is and can be left at any step", () => {
  const steps = searchAttitudesSteps({ mesh: towers, ...asked, directions: 20 });
  const shares = [];
  for (const share of steps) shares.push(share);
  expect(shares.length).toBeGreaterThan(20);
  expect(shares).toEqual([...shares].sort((a, b) => a - b));
  expect(Math.max(...shares)).toBeLessThanOrEqual(1);
});

test("the head at a point is from the cup's level down to it, and none above it", () => {
  expect(headAt({ up: [0, 0, 3], cupLevel: 250, point: [5, 5, 40] })).toBe(210);
  expect(headAt({ up: [0, 0, 1], cupLevel: 30, point: [0, 0, 40] })).toBe(0);
});

const anyDirection = fc
  .tuple(...([0, 1, 2] as const).map(() => fc.double({ min: -1, max: 1, noNaN: true })))
  .map(([x = 0, y = 0, z = 0]): Vec3 => [x, y, z])
  .filter((p) => length(p) > 0.01);

test("this face down: whatever was up, the face then looks straight down and nothing is bent", () => {
  fc.assert(
    fc.property(anyDirection, anyDirection, anyDirection, (up, normal, p) => {
      const rotation = faceDown(uprightFor(up), normal);
      const down = rotated(rotation, unit(normal));
      expect(down[2]).toBeCloseTo(-1, 9);
      expect(length(rotated(rotation, p))).toBeCloseTo(length(p), 9);
      expect(dot(upOf(rotation), unit(normal))).toBeCloseTo(-1, 9);
    }),
  );
});

test("upright for a direction brings it up, and a quarter turn about x lays it on its side to −y", () => {
  fc.assert(
    fc.property(anyDirection, (up) => {
      const there = rotated(uprightFor(up), unit(up));
      expect(length(minus(there, [0, 0, 1]))).toBeLessThan(1e-9);
    }),
  );
  expect(rotated(uprightFor([0, 0, -1]), [0, 0, -1])[2]).toBeCloseTo(1, 12);
  const turned = rotated(turnedBy(asFiled, "x", Math.PI / 2), [0, 0, 1]);
  expect(length(minus(turned, [0, -1, 0]))).toBeLessThan(1e-12);
});
