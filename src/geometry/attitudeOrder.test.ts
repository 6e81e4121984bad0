import fc from "fast-check";
import { expect, test } from "vitest";
import { anyTurn, turnedInSpace } from "../../tests/meshes/anyTurn.ts";
import { searchAttitudes } from "../../tests/meshes/atOnce.ts";
import { hand } from "../../tests/meshes/testShapes.ts";
import { boxes, type Box } from "../../tests/meshes/testSolids.ts";
import { judged, type Attitude } from "./attitude.ts";
import { undominated } from "./undominated.ts";

const asked = { minRise: 2, minVolume: 50, directions: 60 };
const size = 100;
const way = fc
  .tuple(
    fc.integer({ min: 1, max: 6 }),
    fc.integer({ min: 1, max: 6 }),
    fc.double({ min: 5, max: 100, noNaN: true }),
  )
  .map(([vents, drains, head]): Attitude => ({ up: [0, 0, 1], vents, drains, head }));
const openings = ({ vents, drains }: Attitude): number => vents + drains;
/** No worse in any of the three, heads within two hundredths of the size being equal. */
const isNoWorse = (a: Attitude, b: Attitude): boolean =>
  a.vents <= b.vents && a.drains <= b.drains && a.head <= b.head + 0.02 * size;

test("of any ways to hang, those left are in the order of the list, none beats another, and each one lost is beaten", () => {
  fc.assert(
    fc.property(fc.array(way, { maxLength: 60 }), (ways) => {
      const left = undominated(ways, size);
      for (const [n, a] of left.entries()) {
        const next = left[n + 1];
        if (next === undefined) continue;
        expect(openings(a)).toBeLessThanOrEqual(openings(next));
        if (openings(a) === openings(next)) expect(a.head).toBeLessThanOrEqual(next.head);
      }
      for (const a of left) for (const b of left) if (a !== b) expect(isNoWorse(a, b)).toBe(false);
      for (const lost of ways)
        if (!left.includes(lost)) expect(left.some((a) => isNoWorse(a, lost))).toBe(true);
      // Whatever order they were found in.
      expect(new Set(undominated(ways.toReversed(), size).map(({ head }) => head))).toEqual(
        new Set(left.map(({ head }) => head)),
      );
    }),
    { numRuns: 500 },
  );
});

test("the way with the fewest openings is there, however much head it makes, and comes first", () => {
  // Ten ways that lie lower with more openings, and one with the fewest that stands high.
  const low = Array.from({ length: 10 }, (_, n): Attitude => ({
    up: [1, 0, 0],
    vents: 2 + n,
    drains: 12 - n,
    head: 20,
  }));
  const high: Attitude = { up: [0, 0, 1], vents: 1, drains: 1, head: 95 };
  expect(undominated([...low, high], size)[0]).toBe(high);
  expect(undominated([...low, high], size)).toHaveLength(11);
});

test("a slab with many pins keeps its upright ways beside its low one, in order", () => {
  const pins = [10, 45, 80].flatMap((x) => [10, 45, 80].map((y): Box => [x, x + 8, y, y + 8, 6, 30]));
  const mesh = boxes([[0, 100, 0, 100, 0, 6], ...pins]);
  const ways = searchAttitudes({ mesh, ...asked });
  expect(ways.map(openings)).toEqual(ways.map(openings).toSorted((a, b) => a - b));
  expect(openings(ways[0]!)).toBe(2);
  const flat = judged({ mesh, up: [0, 0, 1], ...asked });
  expect([flat.vents, flat.drains, Math.round(flat.head)]).toEqual([9, 1, 30]);
  expect(ways.some((a) => isNoWorse(a, flat))).toBe(true);
  expect(Math.min(...ways.map(({ head }) => head))).toBeLessThan(32);
});

test("the best way found for a hand is as good however it lies in its file", () => {
  const straight = searchAttitudes({ mesh: hand, ...asked })[0]!;
  fc.assert(
    fc.property(anyTurn, (rotation) => {
      const found = searchAttitudes({ mesh: turnedInSpace(hand, rotation), ...asked })[0]!;
      // 60 directions stand 0.46 rad apart: the count is the same, the head within that.
      expect(openings(found)).toBeLessThanOrEqual(openings(straight) + 1);
    }),
    { numRuns: 5 },
  );
});
