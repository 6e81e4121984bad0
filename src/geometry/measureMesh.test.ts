import bunny from "bunny";
import fc from "fast-check";
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { stlBinaryFile } from "../../tests/meshFiles.ts";
import type { MeshMeasures } from "./measureMesh.ts";
import type { Mesh } from "./mesh.ts";
import { anyTurn, turnedInSpace } from "../../tests/meshes/anyTurn.ts";
import {
  arc,
  boxes,
  moved,
  together,
  turned,
  turnedInsideOut,
  unwelded,
} from "../../tests/meshes/testSolids.ts";
import { measureMesh, readMesh } from "../../tests/meshes/atOnce.ts";

const apart = (value: number | null | undefined, truth: number): number =>
  Math.abs((value ?? NaN) / truth - 1);
const cube = boxes([[0, 100, 0, 100, 0, 100]]);
const sphere = turned(arc({ r: 0, z: 0, radius: 50, from: -Math.PI / 2, to: Math.PI / 2 }, 100), 200);
const torus = turned(arc({ r: 40, z: 0, radius: 10, from: 0, to: 2 * Math.PI }, 200).slice(0, -1), 400);
const without = ({ pos, idx }: Mesh, triangles: number): Mesh => ({ pos, idx: idx.slice(3 * triangles) });
const stlModel = (path: string): MeshMeasures =>
  measureMesh(
    readMesh(readFileSync(new URL(`../../node_modules/stl-models/${path}`, import.meta.url)), path),
  );

describe("forms whose numbers are known", () => {
  test.each([0, 1000, 100_000])(
    "a cube of 100 set %i away has 1e6, 6e4 and a sixth of its side squared",
    (by) => {
      const measured = measureMesh(moved(cube, ([x, y, z]) => [x + by, y + by, z + by]));
      expect(apart(measured.volume, 1e6)).toBeLessThan(1e-12);
      expect(apart(measured.area, 6e4)).toBeLessThan(1e-12);
      for (const axis of ["xx", "yy", "zz"] as const)
        expect(apart(measured.inertia?.[axis], (1e6 * 1e4) / 6)).toBeLessThan(1e-12);
      expect(measured.inertia?.xy).toBeCloseTo(0, 3);
      expect(measured.centre).toEqual([by + 50, by + 50, by + 50]);
      expect(measured).toMatchObject({
        watertight: true,
        components: 1,
        euler: 2,
        genus: 0,
        insideOut: false,
      });
      expect(measured.farOff).toBe(false);
    },
  );

  test("a ball of 39,600 facets lacks the share of the ball its facets cut off", () => {
    const { volume, area, triangles, euler } = measureMesh(sphere);
    // Derived here: a ball of m bands and n gores has 4/3·πr³ · sin(π/n)/(π/n) · a factor of the bands, −4.11e-4 in all.
    expect(triangles).toBe(39_600);
    expect(Math.abs((volume ?? NaN) / ((4 / 3) * Math.PI * 50 ** 3) - 1 + 4.11e-4)).toBeLessThan(2e-6);
    expect(Math.abs(area / (4 * Math.PI * 50 ** 2) - 1 + 2.06e-4)).toBeLessThan(2e-6);
    expect(euler).toBe(2);
  });

  test("a ring has one handle, and turns as a ring does", () => {
    const { volume, inertia, euler, genus } = measureMesh(torus);
    expect(apart(volume, 2 * Math.PI ** 2 * 40 * 100 * (1 - 2.06e-4))).toBeLessThan(2e-6);
    // A torus turns about its axis with R² + ¾r² of its volume (any table of moments).
    const perVolume = (inertia?.zz ?? NaN) / (volume ?? NaN);
    expect(Math.abs(perVolume / (1600 + 75) - 1 + 4.85e-5)).toBeLessThan(2e-6);
    expect([euler, genus]).toEqual([0, 1]);
  });

  test("a box with two towers is what its boxes add up to", () => {
    const towers = measureMesh(
      boxes([
        [0, 60, 0, 40, 0, 20],
        [5, 15, 15, 25, 20, 50],
        [40, 52, 14, 26, 20, 40],
      ]),
    );
    expect([towers.volume, towers.area]).toEqual([53_880, 10_960]);
  });
});

describe("published scans", () => {
  // Values by an independent geometry library in double precision (CGAL 5.5.1, Polygon Mesh Processing).
  test("the bunny of 3,674 triangles", () => {
    const measured = measureMesh({
      pos: Float32Array.from(bunny.positions.flat()),
      idx: Uint32Array.from(bunny.cells.flat()),
    });
    expect(measured.triangles).toBe(3674);
    expect(apart(measured.volume, 194.288371)).toBeLessThan(1e-8);
    expect(apart(measured.area, 218.689271)).toBeLessThan(1e-8);
    expect([measured.watertight, measured.euler, measured.genus]).toEqual([true, 2, 0]);
  });

  test("the gear wheel with a hole", () => {
    const measured = stlModel("objects/gearwheel.bin.stl");
    expect(apart(measured.volume, 8922.63666)).toBeLessThan(1e-8);
    expect(apart(measured.area, 4508.73441)).toBeLessThan(1e-8);
    expect([measured.triangles, measured.euler, measured.genus]).toEqual([2444, 0, 1]);
    expect(apart(measured.unionVolume, 8922.63666)).toBeLessThan(2e-3);
    expect(measured.overlaps).toBe(false);
  });

  test("the open bunny has 223 border edges in 5 holes and a range that three other hole fillers fall into", () => {
    const measured = stlModel("objects/bunny.bin.stl");
    expect([measured.watertight, measured.volume, measured.genus, measured.centre]).toEqual([
      false,
      null,
      null,
      null,
    ]);
    expect([measured.borderEdges, measured.holes.length]).toEqual([223, 5]);
    expect(apart(measured.area, 0.0571288)).toBeLessThan(1e-6);
    const { low, high, reasons } = measured.openVolume ?? {};
    expect(reasons).toEqual(["border"]);
    // Fan from the rim's middle 7.5520e-4; admesh 0.98.4 7.55e-4; CGAL triangulate_hole 7.5476e-4.
    for (const filled of [7.552e-4, 7.55e-4, 7.5476e-4]) {
      expect(low).toBeLessThan(filled);
      expect(high).toBeGreaterThan(filled);
    }
    expect((high ?? NaN) / (low ?? NaN)).toBeLessThan(1.003);
  });
});

describe("surfaces that are not whole", () => {
  test("a cube without its lid is open by one hole, and its flat rim leaves no doubt of the volume", () => {
    const lidless = boxes([[0, 10, 0, 10, 0, 10]]);
    const open = measureMesh({ pos: lidless.pos, idx: lidless.idx.filter((_, i) => !isLid(lidless, i)) });
    expect(open.volume).toBeNull();
    expect(open.borderEdges).toBe(4);
    expect(open.holes).toHaveLength(1);
    expect(open.holes[0]?.length).toBeCloseTo(40, 9);
    expect(open.holes[0]?.share).toBeCloseTo(Math.sqrt(2 / 3), 9);
    expect(open.openVolume?.low).toBeCloseTo(1000, 9);
    expect(open.openVolume?.high).toBeCloseTo(1000, 9);
  });

  test("a turned-over triangle is counted by its three edges, and no volume is made up", () => {
    const idx = cube.idx.slice();
    [idx[1], idx[2]] = [idx[2]!, idx[1]!];
    const measured = measureMesh({ pos: cube.pos, idx });
    expect([measured.flippedEdges, measured.watertight, measured.volume]).toEqual([3, false, null]);
    expect(measured.openVolume).toEqual({ low: null, high: null, reasons: ["flipped"] });
  });

  test("two cubes that share an edge are said to, and their volume is a range of no width", () => {
    const measured = measureMesh(together(boxes([[0, 1, 0, 1, 0, 1]]), boxes([[1, 2, 1, 2, 0, 1]])));
    expect([measured.nonManifoldEdges, measured.borderEdges, measured.watertight]).toEqual([1, 0, false]);
    expect(measured.openVolume).toEqual({ low: 2, high: 2, reasons: ["non-manifold"] });
  });

  test("a surface inside out is measured turned, and said to be", () => {
    const measured = measureMesh(turnedInsideOut(cube));
    expect([measured.volume, measured.insideOut]).toEqual([1e6, true]);
    expect(measured.inertia?.xx).toBeCloseTo(1e10 / 6, 0);
  });

  test("triangles that name a place twice are left out and counted, and close no hole", () => {
    const more = Uint32Array.from([...cube.idx, 0, 0, 1, 2, 3, 2]);
    expect(measureMesh({ pos: cube.pos, idx: more })).toMatchObject({
      degenerate: 2,
      volume: 1e6,
      watertight: true,
    });
  });

  test("bodies that overlap count twice in the one volume and once in the other", () => {
    const measured = measureMesh(together(boxes([[0, 20, 0, 20, 0, 20]]), boxes([[10, 30, 0, 20, 0, 20]])));
    expect([measured.volume, measured.components, measured.overlaps]).toEqual([16_000, 2, true]);
    expect(apart(measured.unionVolume, 12_000)).toBeLessThan(2e-3);
  });

  test("a thin shell is not taken for an overlap", () => {
    const shell = measureMesh(boxes([[0, 200, 0, 150, 0, 100]], [[0.7, 199.3, 0.7, 149.3, 0.7, 99.3]]));
    expect(shell.overlaps).toBe(false);
    expect(apart(shell.unionVolume, shell.volume ?? NaN)).toBeLessThan(4e-3);
  });

  test("a void takes from both volumes", () => {
    const measured = measureMesh(boxes([[0, 40, 0, 40, 0, 40]], [[5, 35, 5, 35, 5, 35]]));
    expect([measured.volume, measured.components, measured.overlaps]).toEqual([64_000 - 27_000, 2, false]);
  });

  test("a small pattern far from its origin is warned of", () => {
    expect(measureMesh(moved(boxes([[0, 1, 0, 1, 0, 1]]), ([x, y, z]) => [x + 90_000, y, z])).farOff).toBe(
      true,
    );
  });

  test("no triangles are no mesh", () => {
    expect(() => measureMesh(without(cube, 12))).toThrow(RangeError);
  });
});

test("loose facets and shared points measure the same, in any order of the axes", () => {
  const straight = measureMesh(torus);
  for (const mesh of [
    unwelded(torus),
    moved(torus, ([x, y, z]) => [y, z, x]),
    readMesh(stlBinaryFile(torus), "a.stl"),
  ]) {
    const other = measureMesh(mesh);
    expect(apart(other.volume, straight.volume ?? NaN)).toBeLessThan(1e-12);
    expect(apart(other.area, straight.area)).toBeLessThan(1e-12);
    expect([other.vertices, other.euler, other.watertight]).toEqual([straight.vertices, 0, true]);
  }
});

test("a ring turned any way in space measures the same, to what 32-bit coordinates hold", () => {
  const straight = measureMesh(torus);
  fc.assert(
    fc.property(anyTurn, (rotation) => {
      const other = measureMesh(turnedInSpace(torus, rotation));
      expect(apart(other.volume, straight.volume ?? NaN)).toBeLessThan(1e-7);
      expect(apart(other.area, straight.area)).toBeLessThan(1e-6);
      expect(apart(other.unionVolume, straight.volume ?? NaN)).toBeLessThan(2e-3);
      expect([other.watertight, other.euler, other.overlaps]).toEqual([true, 0, false]);
    }),
    { numRuns: 5 },
  );
});

function isLid({ pos, idx }: Mesh, i: number): boolean {
  const first = 3 * Math.floor(i / 3);
  return [0, 1, 2].every((k) => pos[3 * idx[first + k]! + 2] === 10);
}
