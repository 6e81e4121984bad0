import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { drainPath } from "./drainPath.ts";
import { barSums, treeSums, type BarKind, type GatingBar, type Section } from "./gatingBars.ts";
import type { Vec3 } from "./vector.ts";

const round = (diameter: number): Section => ({ kind: "round", diameter });
const bar = (
  id: string,
  kind: BarKind,
  from: Vec3,
  to: Vec3,
  fromSection: Section,
  toSection = fromSection,
): GatingBar => ({ id, kind, from, to, fromSection, toSection });
const joined = { freeFrom: false, freeTo: false };
const free = { freeFrom: true, freeTo: true };

describe("one bar", () => {
  test("round and straight is a cylinder: modulus a quarter of its diameter when its ends are joined", () => {
    const sums = barSums(bar("a", "runner", [0, 0, 0], [0, 0, 100], round(20)), joined);
    expect(sums.volume).toBeCloseTo(Math.PI * 10 ** 2 * 100, 6);
    expect(sums.coolingArea).toBeCloseTo(Math.PI * 20 * 100, 6);
    expect(sums.modulus).toBeCloseTo(20 / 4, 9);
  });

  test("that tapers from 30 to 20 is the frustum of a cone: π · 90 / 12 · (30² + 30 · 20 + 20²)", () => {
    const sums = barSums(bar("a", "sprue", [0, 0, 0], [0, 0, 90], round(30), round(20)), free);
    expect(sums.volume).toBeCloseTo(((Math.PI * 90) / 12) * (900 + 600 + 400), 6);
    const slant = Math.hypot(90, 5);
    expect(sums.coolingArea).toBeCloseTo(Math.PI * (25 * slant + 15 ** 2 + 10 ** 2), 6);
  });

  test("square and straight is a box; 20 to 10 square over 60 is a frustum of a pyramid: 60 / 3 · (400 + 200 + 100)", () => {
    const square = (side: number): Section => ({ kind: "rectangle", width: side, height: side });
    expect(barSums(bar("a", "gate", [0, 0, 0], [60, 0, 0], square(20)), free)).toMatchObject({
      volume: 24_000,
      coolingArea: 4 * 20 * 60 + 2 * 400,
    });
    const tapered = barSums(bar("a", "gate", [0, 0, 0], [60, 0, 0], square(20), square(10)), joined);
    expect(tapered.volume).toBeCloseTo(14_000, 6);
    expect(tapered.coolingArea).toBeCloseTo(4 * 15 * Math.hypot(60, 5), 6);
  });

  test("twice as big in every way has eight times the metal, four times the face and twice the modulus", () => {
    const size = fc.double({ min: 1, max: 100, noNaN: true });
    fc.assert(
      fc.property(size, size, size, (d, e, span) => {
        const one = barSums(bar("a", "vent", [0, 0, 0], [span, 0, 0], round(d), round(e)), free);
        const two = barSums(bar("a", "vent", [0, 0, 0], [2 * span, 0, 0], round(2 * d), round(2 * e)), free);
        expect(two.volume / one.volume).toBeCloseTo(8, 9);
        expect(two.coolingArea / one.coolingArea).toBeCloseTo(4, 9);
        expect(two.modulus / one.modulus).toBeCloseTo(2, 9);
      }),
    );
  });

  test("of no length or no width is refused", () => {
    expect(() => barSums(bar("v1", "vent", [1, 1, 1], [1, 1, 1], round(5)), free)).toThrow(/v1.*found 0/);
    expect(() => barSums(bar("v1", "vent", [0, 0, 0], [1, 1, 1], round(0)), free)).toThrow(/diameter.*0/);
  });
});

/** A cup on a sprue beside a piece, a runner at its foot, a vent back up to the sprue. */
const tree = [
  bar("cup", "cup", [0, 0, 200], [0, 0, 260], round(30), round(80)),
  bar("sprue", "sprue", [0, 0, 200], [0, 0, 0], round(30), round(24)),
  bar("runner", "runner", [0, 0, 0], [60, 0, 0], round(16)),
  bar("vent", "vent", [80, 0, 120], [0, 0, 160], round(6)),
];
const tapped: Vec3[] = [
  [60, 0, 0],
  [80, 0, 120],
];

test("a tree has its bars' metal and the piece's, its level in the cup, and each bar a head below that", () => {
  const sums = treeSums({ bars: tree, up: [0, 0, 1], pieceVolume: 500_000, tapped, touch: 1 });
  expect(sums.cupLevel).toBe(260);
  expect(sums.highest).toBe(260);
  expect(sums.bars.map(({ head }) => head)).toEqual([60, 260, 260, 140]);
  expect(sums.metalVolume).toBeCloseTo(500_000 + sums.bars.reduce((sum, { volume }) => sum + volume, 0), 6);
  // Both ends of the runner are joined; the cup's mouth stands free.
  expect(sums.bars[2]?.coolingArea).toBeCloseTo(Math.PI * 16 * 60, 6);
  const cupSides = Math.PI * 55 * Math.hypot(60, 25);
  expect(sums.bars[0]?.coolingArea).toBeCloseTo(cupSides + Math.PI * 40 ** 2, 6);
});

test("slurry comes on sides and free ends, not on a cup's mouth; ends on the piece cover it, bars in bars count twice", () => {
  const sums = treeSums({ bars: tree, up: [0, 0, 1], pieceVolume: 0, tapped, touch: 1 });
  const [cup, sprue, runner] = sums.bars;
  // Frustum of a cone: π·(R + r)·slant.
  expect(cup?.coatedArea).toBeCloseTo(Math.PI * 55 * Math.hypot(60, 25), 6);
  expect(sprue?.coatedArea).toBeCloseTo(Math.PI * 27 * Math.hypot(200, 3), 6);
  expect(runner?.coatedArea).toBeCloseTo(Math.PI * 16 * 60, 6);
  expect(sums.coatedArea).toBeCloseTo(
    sums.bars.reduce((sum, { coatedArea }) => sum + coatedArea, 0),
    9,
  );
  // The runner's 16 mm and the vent's 6 mm stand on the piece.
  expect(sums.coveredArea).toBeCloseTo((Math.PI / 4) * (16 ** 2 + 6 ** 2), 6);
  // Runner into the sprue, sprue's foot into the runner, vent into the sprue: sides as deep as the other is thick, and a disc.
  const buried = (d: number, other: number): number => Math.PI * d * (other / 2) + (Math.PI / 4) * d ** 2;
  expect(sums.doubledArea).toBeCloseTo(buried(16, 30) + buried(24, 16) + buried(6, 30), 6);
});

test("a tree without a cup has no level and no heads", () => {
  const sums = treeSums({ bars: tree.slice(1), up: [0, 0, 1], pieceVolume: 0, tapped, touch: 1 });
  expect(sums.cupLevel).toBeNull();
  expect(sums.bars.map(({ head }) => head)).toEqual([null, null, null]);
});

describe("plastic on its way out with the cup down", () => {
  const outUp: Vec3 = [0, 0, -1];

  test("runs from the runner through the sprue, as narrow as the runner, and never climbs", () => {
    expect(drainPath({ bars: tree, at: [60, 0, 0], outUp, touch: 1 })).toEqual({
      bars: ["runner", "sprue", "cup"],
      narrowest: expect.closeTo(16, 9),
      climbs: 0,
    });
  });

  test("from the vent is as narrow as the vent", () => {
    const path = drainPath({ bars: tree, at: [80, 0, 120], outUp, touch: 1 });
    expect(path?.bars).toEqual(["vent", "sprue", "cup"]);
    expect(path?.narrowest).toBeCloseTo(6, 9);
  });

  test("with the cup still up climbs the whole sprue, the runner's 0 and the cup's 60", () => {
    expect(drainPath({ bars: tree, at: [60, 0, 0], outUp: [0, 0, 1], touch: 1 })?.climbs).toBe(260);
  });

  test("takes the way that climbs least, and through a free drain none", () => {
    const drained = [...tree, bar("drain", "drain", [60, 0, 0], [60, 0, -10], round(8))];
    expect(drainPath({ bars: drained, at: [60, 0, 0], outUp: [0, 0, 1], touch: 1 })?.bars).toEqual(["drain"]);
  });

  test("from where no bar stands there is none", () => {
    expect(drainPath({ bars: tree, at: [10, 50, 0], outUp, touch: 1 })).toBeNull();
  });
});
