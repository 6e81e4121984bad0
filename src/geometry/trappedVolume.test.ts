import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { dexelsOf } from "./dexels.ts";
import { trappedCells } from "./escapeLevel.ts";
import { findTips } from "./findTips.ts";
import type { Mesh } from "./mesh.ts";
import {
  archedU,
  ballOnStick,
  cup,
  hand,
  hills,
  hollowBall,
  spikeInVoid,
  standingRing,
  towers,
  uTube,
  weir,
} from "../../tests/meshes/testShapes.ts";
import { boxes, moved, together, unwelded, volumeOf } from "../../tests/meshes/testSolids.ts";
import { rotated, turnedBy, asFiled, upOf } from "./rotation.ts";
import type { Vec3 } from "./vector.ts";
import { voxelsOf } from "./voxels.ts";
import { fillFromGate, trappedVolume } from "../../tests/meshes/atOnce.ts";

const up: Vec3 = [0, 0, 1];
const down: Vec3 = [0, 0, -1];
const trapped = (mesh: Mesh, vents: readonly Vec3[], along: Vec3 = up) =>
  trappedVolume({ mesh, up: along, vents });
const share = (found: number, byHand: number): number => Math.abs(found / byHand - 1);

describe("air held above an even level", () => {
  test("in two towers with one vented is the other above the block, 12 × 12 × 20; both vented, none", () => {
    const { total, pockets, badColumns } = trapped(towers, [[10, 20, 50]]);
    expect(share(total, 2880)).toBeLessThan(0.005);
    expect(pockets).toHaveLength(1);
    expect(pockets[0]).toMatchObject({ top: 40, level: 20, vented: false });
    expect(badColumns).toBe(0);
    expect(trapped(towers, [[10, 20, 50], [46, 20, 40]])).toMatchObject({ total: 0, pockets: [] }); // prettier-ignore
  });

  test("without a vent is all of it", () => {
    const { total, solidVolume, pockets } = trapped(towers, []);
    expect(total).toBeCloseTo(solidVolume, 6);
    expect(share(total, 60 * 40 * 20 + 10 * 10 * 30 + 12 * 12 * 20)).toBeLessThan(0.002);
    expect(pockets).toHaveLength(1);
  });

  test("under a vent half way up a tower is what lies above the vent, and says so", () => {
    const { pockets } = trapped(towers, [[5, 20, 35], [46, 20, 40]]); // prettier-ignore
    expect(pockets).toHaveLength(1);
    expect(pockets[0]).toMatchObject({ vented: true, top: 50 });
    expect(share(pockets[0]?.volume ?? 0, 10 * 10 * 15)).toBeLessThan(0.02);
  });

  test("in a U tube is the second leg, 10 × 10 × 30; in an arched one none, but plastic stays in the short leg", () => {
    expect(share(trapped(uTube, [[5, 5, 50]]).total, 3000)).toBeLessThan(0.01);
    expect(trapped(archedU, [[30, 5, 50]]).total).toBe(0);
    expect(share(trapped(archedU, [[5, 5, 0]], down).total, 3000)).toBeLessThan(0.01);
  });

  test("in a hand is told apart finger by finger, though they meet on one palm", () => {
    const { total, pockets } = trapped(hand, [[36, 5, 98]]);
    const byHand = [8 * 8 * 42, 8 * 8 * 40, 8 * 8 * 30, 8 * 8 * 17];
    expect(pockets).toHaveLength(4);
    for (const [n, volume] of byHand.entries())
      expect(share(pockets[n]?.volume ?? 0, volume)).toBeLessThan(0.01);
    expect(share(total, 8256)).toBeLessThan(0.01);
    expect(pockets.map(({ level }) => Math.round(level))).toEqual([50, 50, 50, 28]);
  });

  test("over a spike in a closed void is only the spike, 6 × 6 × 15", () => {
    const { total, pockets } = trapped(spikeInVoid, [[1, 1, 40]]);
    expect(pockets).toHaveLength(1);
    expect(share(total, 540)).toBeLessThan(0.01);
  });

  test("is none in a hollow ball, a standing ring, a ball on a stick and a cup vented at their tops", () => {
    expect(trapped(hollowBall, [[0, 0, 20]]).pockets).toEqual([]);
    expect(trapped(standingRing, [[0, 0, 25]]).pockets).toEqual([]);
    expect(trapped(ballOnStick, [[0, 0, 50]]).pockets).toEqual([]);
    expect(trapped(cup, [[13.5, 0, 30]]).pockets).toEqual([]);
  });

  test("counts bodies that pass through each other once", () => {
    const twice = together(boxes([[0, 20, 0, 20, 0, 20]]), boxes([[10, 30, 0, 20, 0, 20]]));
    expect(share(trapped(twice, []).total, 30 * 20 * 20)).toBeLessThan(0.005);
  });

  test("passes from one body to another that stands on it", () => {
    const stacked = together(boxes([[0, 20, 0, 20, 0, 20]]), boxes([[5, 15, 5, 15, 20, 40]]));
    const { total, pockets } = trapped(stacked, [[10, 10, 40]]);
    expect({ total, pockets }).toEqual({ total: 0, pockets: [] });
  });

  test("asks nothing of the welding", () => {
    expect(trapped(unwelded(hand), [[36, 5, 98]]).total).toBe(trapped(hand, [[36, 5, 98]]).total);
  });

  test("a vent in mid-air is refused with where it is", () => {
    expect(() => trapped(towers, [[30, 20, 45]])).toThrow(/30, 20, 45/);
  });

  test("columns through a hole in the skin are counted", () => {
    const hill = hills([[9, 9], [9, 9]], 10); // prettier-ignore
    expect(dexelsOf({ mesh: hill, up, cells: 64 }).badColumns).toBe(0);
    const holed = { pos: hill.pos, idx: hill.idx.slice(3) };
    expect(dexelsOf({ mesh: holed, up, cells: 64 }).badColumns).toBeGreaterThan(500);
  });
});

describe("metal from a gate", () => {
  const fill = (mesh: Mesh, gate: Vec3, vents: readonly Vec3[]) =>
    fillFromGate({ mesh, up, gate, vents, cells: 128 });

  test("spills over a weir and shuts the second chamber above z 10 with the bridge: 4000 + 4000; an even level would say 12000", () => {
    const vents: Vec3[] = [[65, 5, 80]];
    const poured = fill(weir, [5, 5, 1], vents);
    expect(share(poured.trapped, 10 * 10 * 40 + 40 * 10 * 10)).toBeLessThan(0.02);
    expect(share(trapped(weir, vents).total, 12_000)).toBeLessThan(0.01);
    const even = trappedCells({ voxels: voxelsOf({ mesh: weir, up, cells: 128 }), vents });
    expect(share(even.volume, 12_000)).toBeLessThan(0.02);
  });

  test("shuts a tower off all at once, not cell by cell", () => {
    expect(share(fill(towers, [1, 1, 1], [[10, 20, 50]]).trapped, 2880)).toBeLessThan(0.02);
    expect(share(fill(hand, [76, 5, 20], [[36, 5, 98]]).trapped, 8256)).toBeLessThan(0.02);
  });

  test("ranks cells from the gate up, even in volume, and marks the pocket", () => {
    const { rank, pocketOf, pockets, grid, solidVolume } = fill(uTube, [5, 5, 1], [[5, 5, 50]]);
    expect(pockets).toHaveLength(1);
    const inPocket = pocketOf.reduce((sum, n) => sum + (n === 1 ? 1 : 0), 0);
    expect(inPocket * grid.pitch ** 3).toBeCloseTo(pockets[0]?.volume ?? 0, 6);
    const early = rank.reduce((sum, r) => sum + (r > 0 && r <= 32_768 ? 1 : 0), 0);
    expect(share(early * grid.pitch ** 3, solidVolume / 2)).toBeLessThan(0.05);
  });

  test("never gets into a body of its own", () => {
    const two = together(boxes([[0, 20, 0, 20, 0, 20]]), boxes([[40, 50, 0, 10, 0, 10]]));
    expect(share(fill(two, [1, 1, 1], [[10, 10, 20]]).unreached, 1000)).toBeLessThan(0.1);
  });
});

const fiveByFive = fc
  .shuffledSubarray(
    Array.from({ length: 25 }, (_, n) => 10 + n),
    { minLength: 25, maxLength: 25 },
  )
  .map((flat) => Array.from({ length: 5 }, (_, j) => flat.slice(5 * j, 5 * j + 5)));

const columns = 64;

test("a vent on every tip leaves no air, one vent more never leaves more, and tips unvented hold theirs", () => {
  fc.assert(
    fc.property(fiveByFive, (heights) => {
      const mesh = hills(heights, 10);
      const tips = findTips({ mesh, up, minRise: 0, minVolume: 0 });
      const solid = volumeOf(mesh);
      let before = Infinity;
      for (let n = 0; n <= tips.length; n++) {
        const vents = tips.slice(0, n).map(({ point }) => point);
        const { total, pockets } = trappedVolume({ mesh, up, vents, columns });
        expect(total).toBeLessThanOrEqual(before * (1 + 1e-9) + 1e-6);
        if (n > 0) expect(pockets.length).toBeLessThanOrEqual(tips.length);
        before = total;
      }
      expect(before / solid).toBeLessThan(0.002);
    }),
    { numRuns: 20 },
  );
});

test("from whatever gate, with every tip vented next to nothing stays, and never more than the solid", () => {
  const place = fc.integer({ min: 1, max: 39 });
  fc.assert(
    fc.property(fiveByFive, place, place, (heights, x, y) => {
      const mesh = hills(heights, 10);
      const tips = findTips({ mesh, up, minRise: 0, minVolume: 0 });
      const gate: Vec3 = [x, y, 1];
      const all = fillFromGate({ mesh, up, gate, vents: tips.map(({ point }) => point), cells: 40 });
      expect(all.trapped / all.solidVolume).toBeLessThan(0.01);
      const none = fillFromGate({ mesh, up, gate, vents: [], cells: 40 });
      expect(none.trapped).toBeCloseTo(none.solidVolume, 6);
    }),
    { numRuns: 20 },
  );
});

test("the same air stays however the piece is turned in the file", () => {
  const angle = fc.double({ min: -3, max: 3, noNaN: true });
  fc.assert(
    fc.property(angle, angle, (a, b) => {
      const rotation = turnedBy(turnedBy(asFiled, "x", a), "y", b);
      const to = (p: Vec3): Vec3 => rotated(rotation, p);
      const { total } = trappedVolume({
        mesh: moved(hand, to),
        up: to(up),
        vents: [to([36, 5, 98])],
        columns: 128,
      });
      expect(share(total, 8256)).toBeLessThan(0.03);
      expect(to(upOf(rotation)).map((c) => Math.round(1e9 * c) / 1e9 + 0)).toEqual([0, 0, 1]);
    }),
    { numRuns: 30 },
  );
});
