import { describe, expect, test } from "vitest";
import { drainPath } from "../../geometry/drainPath.ts";
import { treeSums } from "../../geometry/gatingBars.ts";
import type { Vec3 } from "../../geometry/vector.ts";
import { lengthOf, startingTree, touchMm, withLength, type HangsAt } from "./gatingTree.ts";
import type { Mark, MarkKind } from "./mark.ts";

const at: HangsAt = { up: [0, 0, 1], highMm: 60, cupLevelMm: 160, reachMm: 45 };
const mark = (id: string, kind: MarkKind, point: Vec3, normal: Vec3 | null = null): Mark => ({
  id,
  kind,
  point,
  normal,
  diameterMm: 8,
});
let n = 0;
const newId = (): string => `bar ${n++}`;
const marks = [
  mark("g", "gate", [40, 0, -50], [1, 0, 0]),
  mark("h", "gate", [30, 10, -20], [1, 0, 0]),
  mark("v", "vent", [0, 0, 60]),
  mark("f", "feeder", [-40, 0, 0], [-1, 0, 0]),
  mark("d", "drain", [0, 0, -60]),
];
const tree = startingTree(marks, at, newId);
const sums = treeSums({
  bars: tree,
  up: at.up,
  pieceVolume: 0,
  tapped: marks.map(({ point }) => point),
  touch: touchMm,
});

describe("a starting tree", () => {
  test("has its cup at the level asked for, and nothing higher", () => {
    expect(sums.cupLevel).toBeCloseTo(160);
    expect(sums.highest).toBeCloseTo(160);
  });

  test("reaches every gate, and its vents end at the level in the cup", () => {
    for (const gate of marks.slice(0, 2)) expect(tree.some(({ to }) => to === gate.point)).toBe(true);
    expect(tree.find(({ kind }) => kind === "vent")?.to[2]).toBeCloseTo(160);
  });

  test("stands clear of the piece: sprue and cup are further out than it reaches", () => {
    const sprue = tree.find(({ kind }) => kind === "sprue")!;
    expect(Math.hypot(sprue.to[0], sprue.to[1])).toBeGreaterThanOrEqual(at.reachMm + 40 - 1e-9);
  });

  test("lets plastic out of both gates downhill when it hangs cup down", () => {
    for (const gate of marks.slice(0, 2)) {
      const way = drainPath({ bars: tree, at: gate.point, outUp: [0, 0, -1], touch: touchMm });
      expect(way).not.toBeNull();
      expect(way!.narrowest).toBeCloseTo(8);
    }
    expect(
      drainPath({ bars: tree, at: marks[0]!.point, outUp: [0, 0, -1], touch: touchMm })!.climbs,
    ).toBeCloseTo(0);
  });

  test("without a gate has rods only, and without marks nothing", () => {
    expect(startingTree([marks[2]!], at, newId).map(({ kind }) => kind)).toEqual(["vent"]);
    expect(startingTree([], at, newId)).toEqual([]);
  });

  test("a gate right under the middle still has a way aside", () => {
    const bars = startingTree([mark("g", "gate", [0, 0, -60], [0, 0, -1])], at, newId);
    expect(bars.every((bar) => lengthOf(bar) > 1 && bar.to.every(Number.isFinite))).toBe(true);
  });
});

test("a bar made longer keeps its beginning and its way", () => {
  const bar = tree.find(({ kind }) => kind === "vent")!;
  const longer = withLength(bar, 250);
  expect(lengthOf(longer)).toBeCloseTo(250);
  expect(longer.from).toEqual(bar.from);
  expect(longer.to[2]).toBeCloseTo(310);
});
