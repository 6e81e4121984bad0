import fc from "fast-check";
import { expect, test } from "vitest";
import { anyTurn, turnedInSpace } from "../../tests/meshes/anyTurn.ts";
import {
  flatSpans,
  freezeOrder,
  measureMesh,
  recesses,
  roundSpans,
  trappedVolume,
} from "../../tests/meshes/atOnce.ts";
import { ballOnStick, cup, hand, towers } from "../../tests/meshes/testShapes.ts";
import { boxes, turnedInsideOut } from "../../tests/meshes/testSolids.ts";
import { findTips } from "./findTips.ts";
import { mendMesh } from "./mendMesh.ts";
import { rotated, type Rotation } from "./rotation.ts";
import { length, minus, type Vec3 } from "./vector.ts";

/** What is put to the test: a mesh turned any way, and in half the cases inside out as well, mended as a file is. */
const anyWay = fc.tuple(anyTurn, fc.boolean());
const lying = (mesh: Parameters<typeof turnedInSpace>[0], [rotation, isInsideOut]: [Rotation, boolean]) => {
  const there = turnedInSpace(mesh, rotation);
  return mendMesh({ mesh: isInsideOut ? turnedInsideOut(there) : there }).mesh;
};

test("volume, surface, centre and moments, to what 32-bit coordinates hold", () => {
  const straight = measureMesh(hand);
  const sizes = ({ xx, yy, zz, xy, yz, zx }: NonNullable<typeof straight.inertia>): readonly number[] => [
    xx + yy + zz,
    xx * yy + yy * zz + zz * xx - xy ** 2 - yz ** 2 - zx ** 2,
  ];
  fc.assert(
    fc.property(anyWay, (way) => {
      const found = measureMesh(lying(hand, way));
      expect(Math.abs(found.volume! / straight.volume! - 1)).toBeLessThan(1e-6);
      expect(Math.abs(found.area / straight.area - 1)).toBeLessThan(1e-6);
      expect(length(minus(found.centre!, rotated(way[0], straight.centre!)))).toBeLessThan(1e-3);
      expect(found).toMatchObject({ watertight: true, insideOut: false, euler: straight.euler });
      // The box's middle, about which the moments are, turns with the box only for a centred form; their trace about the
      // centre does not (Steiner's theorem).
      const steiner = (m: typeof found): number =>
        sizes(m.inertia!)[0]! - 2 * m.volume! * length(minus(m.centre!, m.box.middle)) ** 2;
      expect(Math.abs(steiner(found) / steiner(straight) - 1)).toBeLessThan(1e-5);
    }),
    { numRuns: 20 },
  );
});

test("tips, their rise, what they hold and where vents stand", () => {
  const up: Vec3 = [0, 0, 1];
  const asked = { minRise: 1, minVolume: 1 };
  const straight = findTips({ mesh: hand, up, ...asked });
  fc.assert(
    fc.property(anyWay, (way) => {
      const found = findTips({ mesh: lying(hand, way), up: rotated(way[0], up), ...asked });
      expect(found).toHaveLength(straight.length);
      for (const [n, { point, rise, volume, shape }] of straight.entries()) {
        expect(found[n]!.rise).toBeCloseTo(rise, 3);
        expect(Math.abs(found[n]!.volume / volume - 1)).toBeLessThan(1e-3);
        expect(found[n]!.shape).toBe(shape);
        expect(length(minus(found[n]!.point, rotated(way[0], point)))).toBeLessThan(0.05);
      }
    }),
    { numRuns: 20 },
  );
});

test("air that stays, to a hundredth", () => {
  // 12 × 12 × 20 over the block, under a vent on the other tower.
  fc.assert(
    fc.property(anyWay, (way) => {
      const up = rotated(way[0], [0, 0, 1]);
      const vents = [rotated(way[0], [10, 20, 50])];
      const { total } = trappedVolume({ mesh: lying(towers, way), up, vents });
      expect(Math.abs(total / 2880 - 1)).toBeLessThan(0.015);
    }),
    { numRuns: 10 },
  );
});

test("flats and rounds, to three of 200 parts of the longest side and a cell", () => {
  const block = boxes([[0, 90, 0, 50, 0, 20]]);
  fc.assert(
    fc.property(anyWay, (way) => {
      const widths = flatSpans(lying(block, way)).map(({ width }) => width);
      for (const [n, byHand] of [50, 50, 20, 20, 20, 20].entries())
        expect(Math.abs(widths[n]! - byHand)).toBeLessThan((3 * 90) / 200);
      const rounds = roundSpans({ mesh: lying(ballOnStick, way), cells: 64 }).map(({ diameter }) => diameter);
      expect(Math.abs(rounds[0]! - 20)).toBeLessThan(0.2);
      for (const diameter of rounds.slice(1)) expect(Math.abs(diameter - 6)).toBeLessThan(0.2);
    }),
    { numRuns: 3 },
  );
});

test("hollows, their depth and mouth, to a twentieth", () => {
  fc.assert(
    fc.property(anyWay, (way) => {
      const [bore, ...others] = recesses({ mesh: lying(cup, way), cells: 64, minDepth: 2 });
      expect(others).toEqual([]);
      expect(bore!.kind).toBe("recess");
      expect(Math.abs(bore!.depth / 27 - 1)).toBeLessThan(0.05);
      expect(Math.abs(bore!.mouth / 24 - 1)).toBeLessThan(0.05);
      expect(length(minus(bore!.opening, rotated(way[0], [0, 0, 1])))).toBeLessThan(0.1);
    }),
    { numRuns: 4 },
  );
});

test("what freezes last, to a cell", () => {
  fc.assert(
    fc.property(anyWay, (way) => {
      const { hotSpots } = freezeOrder({ mesh: lying(ballOnStick, way), cells: 48, feeds: [] });
      expect(length(minus(hotSpots[0]!.point, rotated(way[0], [0, 0, 40])))).toBeLessThan((2 * 50) / 48);
    }),
    { numRuns: 4 },
  );
});
