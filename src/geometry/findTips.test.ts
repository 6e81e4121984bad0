import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { findTips } from "./findTips.ts";
import type { Mesh } from "./mesh.ts";
import { rotated, turnedBy, asFiled } from "./rotation.ts";
import {
  archedU,
  ballOnStick,
  cup,
  hand,
  hills,
  hollowBall,
  horn,
  hornRadius,
  spikeInVoid,
  standingRing,
  towers,
  uTube,
} from "../../tests/meshes/testShapes.ts";
import { moved, unwelded, volumeOf } from "../../tests/meshes/testSolids.ts";
import type { Vec3 } from "./vector.ts";

const up: Vec3 = [0, 0, 1];
const down: Vec3 = [0, 0, -1];
const tipsOf = (mesh: Mesh, along: Vec3 = up) => findTips({ mesh, up: along, minRise: 1, minVolume: 1 });
const heightsOf = (mesh: Mesh, along: Vec3 = up) => tipsOf(mesh, along).map(({ height }) => height);

describe("tips where air stays", () => {
  test("of two towers are their tops; the lower holds its 12 × 12 × 20 above the block", () => {
    const [high, low] = tipsOf(towers);
    expect(high).toMatchObject({ height: 50, saddle: 0, rise: 50, shape: "flat" });
    expect(high?.volume).toBeCloseTo(60 * 40 * 20 + 10 * 10 * 30 + 12 * 12 * 20, 3);
    expect(low).toMatchObject({ height: 40, saddle: 20, rise: 20, shape: "flat" });
    expect(low?.volume).toBeCloseTo(12 * 12 * 20, 3);
    expect(low?.point.map(Math.round)).toEqual([46, 20, 40]);
    expect(tipsOf(towers)).toHaveLength(2);
  });

  test("are the same when every triangle has corners of its own", () => {
    expect(heightsOf(unwelded(towers))).toEqual([50, 40]);
  });

  test("of a U tube are its two legs, the second holding 10 × 10 × 30", () => {
    expect(heightsOf(uTube)).toEqual([50, 40]);
    expect(tipsOf(uTube)[1]?.volume).toBeCloseTo(10 * 10 * 30, 3);
  });

  test("of an arched U: one crown above, and below two feet, the higher holding 10 × 10 × 30", () => {
    expect(heightsOf(archedU)).toEqual([50]);
    const feet = tipsOf(archedU, down);
    expect(feet.map(({ height }) => 0 - height)).toEqual([0, 10]);
    expect(feet[1]?.volume).toBeCloseTo(10 * 10 * 30, 3);
  });

  test("of a hand are four fingers and a thumb", () => {
    expect(heightsOf(hand)).toEqual([98, 92, 90, 80, 45]);
    const volumes = tipsOf(hand).map(({ volume }) => Math.round(volume));
    expect(volumes.slice(1)).toEqual([8 * 8 * 42, 8 * 8 * 40, 8 * 8 * 30, 8 * 8 * 17]);
  });

  test("never include the ceiling of a void, only the spike that stands in it", () => {
    expect(heightsOf(spikeInVoid)).toEqual([40, 20]);
    expect(tipsOf(spikeInVoid)[1]?.volume).toBeCloseTo(6 * 6 * 15, 3);
    expect(heightsOf(hollowBall)).toEqual([20]);
  });

  test("of a cup are its rim alone: its floor holds no air", () => {
    const [rim, ...others] = tipsOf(cup);
    expect(others).toEqual([]);
    expect(rim).toMatchObject({ height: 30, shape: "flat" });
    const [x, y] = rim?.point ?? [0, 0];
    expect(Math.hypot(x, y)).toBeGreaterThan(12);
    expect(heightsOf(cup, down)).toEqual([0]);
  });

  test("of a ball on a stick and of a standing ring are their one crown", () => {
    expect(heightsOf(ballOnStick)).toEqual([50]);
    expect(tipsOf(ballOnStick)[0]?.shape).toBe("point");
    expect(heightsOf(standingRing)).toEqual([25]);
  });

  test("of a horn are its bow, not its end; upside down plastic stays in the end below the bow's inside", () => {
    expect(heightsOf(horn)).toEqual([expect.closeTo(33.53, 1)]);
    const [, end, ...others] = tipsOf(horn, down);
    expect(others).toEqual([]);
    expect(end?.height).toBeCloseTo(1, 2);
    expect(-(end?.saddle ?? 0)).toBeCloseTo(26.53, 1);
    expect(end?.volume).toBeCloseTo(hornBelow(-(end?.saddle ?? 0)), -1);
    expect((end?.volume ?? 0) / hornBelow(-(end?.saddle ?? 0)) - 1).toBeCloseTo(0, 2);
  });

  test("of a roof are its ridge, from end to end", () => {
    const roof = hills(
      [
        [10, 10, 10],
        [20, 20, 20],
        [10, 10, 10],
      ],
      30,
    );
    const [ridge] = tipsOf(roof);
    expect(ridge).toMatchObject({ shape: "ridge", point: [30, 30, 20] });
    const ends = [ridge?.ridge[0]?.[0], ridge?.ridge.at(-1)?.[0]];
    expect(ends).toEqual(expect.arrayContaining([0, 60]));
  });

  test("below the rise or volume asked for are left out", () => {
    expect(findTips({ mesh: towers, up, minRise: 21, minVolume: 0 })).toHaveLength(1);
    expect(findTips({ mesh: towers, up, minRise: 1, minVolume: 2881 })).toHaveLength(1);
    expect(findTips({ mesh: towers, up, minRise: 20, minVolume: 2879 })).toHaveLength(2);
  });

  test("a direction of no length, a rise that is no number and an empty mesh are refused", () => {
    expect(() => tipsOf(towers, [0, 0, 0])).toThrow(RangeError);
    expect(() => findTips({ mesh: towers, up, minRise: NaN, minVolume: 0 })).toThrow(/minRise.*NaN/);
    expect(() => tipsOf({ pos: new Float32Array(), idx: new Uint32Array() })).toThrow(/found none/);
  });
});

/** Volume of the horn's end below a level, by adding up small pieces of a bent cone, and its half ball of radius 1. */
function hornBelow(level: number): number {
  const [turns, rings, spokes] = [600, 40, 60];
  let sum = (2 / 3) * Math.PI;
  for (let i = 0; i < turns; i++) {
    const t = Math.PI / 2 + (Math.PI / 2) * ((i + 0.5) / turns);
    const step = hornRadius(t) / rings;
    for (let j = 0; j < rings; j++) {
      const r = (j + 0.5) * step;
      for (let k = 0; k < spokes; k++) {
        const arm = 30 - r * Math.cos((2 * Math.PI * (k + 0.5)) / spokes);
        if (arm * Math.sin(t) < level)
          sum += ((arm * Math.PI) / 2 / turns) * r * step * ((2 * Math.PI) / spokes);
      }
    }
  }
  return sum;
}

const fiveByFive = fc
  .shuffledSubarray(
    Array.from({ length: 25 }, (_, n) => 10 + n),
    { minLength: 25, maxLength: 25 },
  )
  .map((flat) => Array.from({ length: 5 }, (_, j) => flat.slice(5 * j, 5 * j + 5)));

test("on hills of 25 different heights tips are the places higher than all their neighbours", () => {
  fc.assert(
    fc.property(fiveByFive, (heights) => {
      // Each square of the grid is cut from its near to its far corner: six neighbours.
      const beside = [[1, 0], [-1, 0], [0, 1], [0, -1], [1, 1], [-1, -1]] as const; // prettier-ignore
      const tops = heights.flatMap((row, j) =>
        row.filter((h, i) => beside.every(([di, dj]) => (heights[j + dj]?.[i + di] ?? 0) < h)),
      );
      const found = findTips({ mesh: hills(heights, 10), up, minRise: 0, minVolume: 0 });
      expect(found.map(({ height }) => Math.round(height))).toEqual(tops.sort((a, b) => b - a));
    }),
    { numRuns: 150 },
  );
});

test("tips turn with the piece: the same rises and volumes in every attitude", () => {
  const angle = fc.double({ min: -3, max: 3, noNaN: true });
  fc.assert(
    fc.property(fiveByFive, angle, angle, (heights, a, b) => {
      const rotation = turnedBy(turnedBy(asFiled, "x", a), "z", b);
      const mesh = hills(heights, 10);
      // No two of these heights become equal, so that the order of tips is one.
      const leaning: Vec3 = [0.2137, 0.1371, 1];
      const find = (from: Mesh, along: Vec3) =>
        findTips({ mesh: from, up: along, minRise: 0.5, minVolume: 1 });
      const before = find(mesh, leaning);
      const after = find(
        moved(mesh, (p) => rotated(rotation, p)),
        rotated(rotation, leaning),
      );
      expect(after).toHaveLength(before.length);
      for (const [n, tip] of before.entries()) {
        expect(after[n]?.rise).toBeCloseTo(tip.rise, 3);
        expect(after[n]?.volume).toBeCloseTo(tip.volume, 0);
      }
    }),
    { numRuns: 60 },
  );
});

test("the shapes tested on are closed and the right way out", () => {
  const all = { towers, uTube, archedU, ballOnStick, cup, hand, hollowBall, horn, spikeInVoid, standingRing };
  for (const [name, mesh] of Object.entries(all)) expect(volumeOf(mesh), name).toBeGreaterThan(0);
  expect(volumeOf(cup) / (Math.PI * (15 ** 2 * 30 - 12 ** 2 * 27))).toBeCloseTo(1, 2);
});
