import { describe, expect, test } from "vitest";
import { bare, drawn, found, gate, mark, placed, vents } from "../../../../tests/meshes/testTree.ts";
import type { GatingBar } from "../../../geometry/gatingBars.ts";
import { withLength } from "../../../logbook/casting/gatingTree.ts";
import { builtInShop } from "../../../logbook/piece/builtIns.ts";
import { alloyOf } from "../../../trade/metals/alloys.ts";
import { chainOfStudy } from "./chainOfStudy.ts";
import { sizeOf } from "./patternSize.ts";
import {
  cupLevelOf,
  movedMark,
  placedOf,
  resized,
  restored,
  resultsFor,
  treeMisfit,
  turned,
  withBars,
  withCup,
  withMark,
  withoutMark,
  type PatternStudy,
} from "./patternStudy.ts";
import { measuredOf, planOfStudy } from "./planOfStudy.ts";
import { readStudy } from "./readStudy.ts";
import { needsOf } from "./wallFigures.ts";

const withAll = drawn(placed(gate, ...vents));
const rodsOf = ({ bars }: PatternStudy): readonly GatingBar[] => bars.filter(({ kind }) => kind === "vent");
const headOf = (study: PatternStudy): number | null | undefined => measuredOf(study)?.headM;

describe("a tree goes with its piece", () => {
  test("a vent taken away takes its rod, one moved takes it along, a new one gets its own", () => {
    const without = withoutMark(withAll, "v");
    expect(rodsOf(without).map(({ from }) => from)).toEqual([[30, 20, 60]]);
    const moved = movedMark(without, "w", { point: [5, 5, 60], normal: null });
    expect(rodsOf(moved)).toMatchObject([{ from: [5, 5, 60], to: [5, 5, 160] }]);
    const put = withMark(moved, mark("x", "vent", [20, 20, 60]));
    expect(rodsOf(put)).toHaveLength(2);
    expect([without, moved, put].map(treeMisfit)).toEqual([null, null, null]);
    // A rod of 4 mm and 100 mm is π/4·4²·100 mm³.
    const rod = (Math.PI / 4) * 16 * 100;
    expect(sizeOf(withAll, 1).gatingMm3 - sizeOf(without, 1).gatingMm3).toBeCloseTo(rod, 6);
  });

  test("a rod keeps the thickness it was given, and one led into a runner stays there", () => {
    const [rod] = rodsOf(withAll);
    const thick = { ...rod!, fromSection: { kind: "round", diameter: 9 } } as const;
    const changed = withBars(
      withAll,
      withAll.bars.map((bar) => (bar === rod ? thick : bar)),
      null,
    );
    const moved = movedMark(changed, "v", { point: [12, 10, 60], normal: null });
    expect(rodsOf(moved)[0]).toMatchObject({ from: [12, 10, 60], fromSection: { diameter: 9 } });
    const runner = withAll.bars.find(({ kind }) => kind === "gate")!;
    const led = withBars(
      withAll,
      withAll.bars.map((bar) => (bar === rod ? { ...bar, to: runner.from } : bar)),
      null,
    );
    expect(rodsOf(movedMark(led, "v", { point: [12, 10, 60], normal: null }))[0]?.to).toEqual(runner.from);
  });

  test("turned, it does not fit: no head, metal, surface, drain way or chain rests on it; turned back it fits", () => {
    const over = found(turned(withAll, [1, 0, 0]));
    expect(treeMisfit(over)).toBe("turned");
    expect(sizeOf(over, 1)).toMatchObject({ tree: null, gatingMm3: 0, gatingAreaMm2: 0 });
    const need = {
      part: { kind: "round", diameterMm: 30 },
      point: [0, 0, 0],
      headMm: 140,
      neededMm: 6,
      bareMm: 6,
    } as const;
    expect(planOfStudy(over, need)).toEqual({ patternId: bare.id, alloyId: "c87300" });
    expect(planOfStudy(withAll, need)).toMatchObject({ headM: 0.14 });
    expect(measuredOf(over)).toMatchObject({ gatingMm3: null, volumeMm3: 72_000 });
    expect(chainOfStudy(over)?.by).toBe("nothing");
    // As high as it hangs now, and the cup as high above it as was asked for.
    expect(headOf(over)).toBeCloseTo((40 + 100) / 1000, 9);
    const back = turned(over, [0, 0, 1]);
    expect(treeMisfit(back)).toBeNull();
    expect(sizeOf(back, 1)).toEqual(sizeOf(withAll, 1));
  });

  test("drawn anew for the way it hangs now, it fits again", () => {
    const over = drawn(turned(withAll, [1, 0, 0]));
    expect(treeMisfit(over)).toBeNull();
    expect(cupLevelOf(over, 40)).toBeCloseTo(140, 9);
  });

  test("scaled, it does not fit; at the old scale it does", () => {
    const large = resized(withAll, { scale: { kind: "percent", percent: 150 } });
    expect(treeMisfit(large)).toBe("scaled");
    expect(sizeOf(large, 1.5).gatingMm3).toBe(0);
    expect(treeMisfit(resized(large, { scale: { kind: "percent", percent: 100 } }))).toBeNull();
  });

  test("its first gate moved, taken away or put, it does not fit: sprue and cup can't follow it round the piece", () => {
    expect(treeMisfit(movedMark(withAll, "g", { point: [0, 15, 0], normal: [-1, 0, 0] }))).toBe("gate");
    const without = withoutMark(withAll, "g");
    expect(treeMisfit(without)).toBe("gate");
    expect(without.bars.some(({ kind }) => kind === "gate")).toBe(false);
    expect(treeMisfit(withMark(drawn(placed(...vents)), gate))).toBe("gate");
  });

  test("a second gate gets a bar from the sprue's foot, and loses it again", () => {
    const two = withMark(withAll, mark("h", "gate", [0, 15, 20], [-1, 0, 0]));
    const sprue = two.bars.find(({ kind }) => kind === "sprue")!;
    expect(two.bars.at(-1)).toMatchObject({ kind: "runner", from: sprue.to, to: [0, 15, 20] });
    expect(treeMisfit(two)).toBeNull();
    expect(withoutMark(two, "h").bars).toEqual(withAll.bars);
  });

  test("placed or moved while it does not fit, it fits no more when the piece is turned back", () => {
    const over = turned(withAll, [1, 0, 0]);
    const put = withMark(over, mark("x", "vent", [40, 5, 5]));
    expect(treeMisfit(turned(put, [0, 0, 1]))).toBe("marks");
    expect(treeMisfit(turned(withoutMark(over, "v"), [0, 0, 1]))).toBeNull();
  });

  test("the level asked for lifts cup, sprue and rods; the head is the drawn cup's", () => {
    const higher = withCup(withAll, 150);
    expect(treeMisfit(higher)).toBeNull();
    expect(cupLevelOf(higher, 60)).toBeCloseTo(210, 9);
    expect(rodsOf(higher)[0]?.to[2]).toBeCloseTo(210, 9);
    expect(headOf(higher)).toBeCloseTo(0.21, 9);
    // 50 mm less of cup by hand: the level sinks with it, whatever was asked for.
    const lower = withBars(
      withAll,
      withAll.bars.map((bar) => (bar.kind === "cup" ? { ...bar, to: [bar.to[0], bar.to[1], 110] } : bar)),
      null,
    );
    expect(headOf(lower)).toBeCloseTo(0.11, 9);
  });

  test("the shell is asked to carry the head of the drawn cup", () => {
    const floor = { point: [20, 15, 0], normal: [0, 0, -1], width: 30, length: 40, area: 1200 } as const;
    const shape = { thickness: null, flats: [floor], rounds: [], recesses: [] };
    const headOver = (study: PatternStudy) =>
      needsOf({ ...study, shape }, { shop: builtInShop, recipe: null })[0]?.headMm;
    expect(headOver(withAll)).toBeCloseTo(160, 9);
    expect(headOver(withCup(withAll, 150))).toBeCloseTo(210, 9);
    const shorter = withAll.bars.map((bar) => (bar.kind === "cup" ? withLength(bar, 10) : bar));
    expect(headOver(withBars(withAll, shorter, null))).toBeCloseTo(110, 9);
  });

  test("a level at which its rods would vanish is one it can't follow; the next digit typed, it can", () => {
    const typed = withCup(withAll, 1);
    expect(treeMisfit(typed)).toBe("cup");
    expect(sizeOf(typed, 1).tree).toBeNull();
    expect(withCup(withCup(typed, 12), 120)).toEqual(withCup(withAll, 120));
    expect(treeMisfit(withCup(typed, 100))).toBeNull();
  });

  test("Undo brings back marks, bars, hang, cup and scale at once", () => {
    const before = placedOf(withAll);
    const edits = [
      turned(withAll, [0, 1, 0]),
      withoutMark(withAll, "v"),
      movedMark(withAll, "g", { point: [0, 15, 0], normal: null }),
      withCup(withAll, 300),
      withBars(withAll, [], null),
      resized(withAll, { scale: { kind: "percent", percent: 70 } }),
    ];
    for (const edited of edits) {
      const back = restored(edited, before);
      expect(placedOf(back)).toEqual(before);
      expect(sizeOf(back, 1)).toEqual(sizeOf(withAll, 1));
    }
    // What was found at another size is asked again.
    expect(resultsFor(restored(found(edits.at(-1)!), before))).toBeNull();
    expect(resultsFor(restored(found(edits[1]!), before))).not.toBeNull();
  });

  test("a tree of an older app tells by its cup how the piece hung", () => {
    const old = readStudy(
      structuredClone({
        ...withAll,
        drawnFor: undefined,
        bars: withAll.bars.map((bar) => ({ ...bar, markId: undefined })),
      }),
    )!;
    expect(treeMisfit(old)).toBeNull();
    expect(treeMisfit(turned(old, [0, 0, -1]))).toBe("turned");
    expect(rodsOf(withoutMark(old, "v"))).toHaveLength(1);
    expect(treeMisfit(movedMark(old, "g", { point: [0, 15, 0], normal: null }))).toBe("gate");
    expect(treeMisfit(resized(old, { scale: { kind: "percent", percent: 50 } }))).toBe("scaled");
    expect(
      treeMisfit(resized(resized(old, { scale: { kind: "percent", percent: 50 } }), { scale: old.scale })),
    ).toBeNull();
  });
});

describe("what a tree adds to the surface", () => {
  test("a rod is a cylinder with one free end: π·d·L + π/4·d², less the disc it covers of the piece", () => {
    const study = drawn(placed(vents[0]!));
    expect(sizeOf(study, 1).gatingAreaMm2).toBeCloseTo(
      Math.PI * 4 * 100 + (Math.PI / 4) * 16 - (Math.PI / 4) * 16,
      6,
    );
    // 2·(40·30 + 30·60 + 60·40) mm² of block, and the rod's 1257: the plan has both.
    expect(planOfStudy(study, null).areaM2).toBe(Number(((10_800 + Math.PI * 400) / 1e6).toPrecision(3)));
    expect(measuredOf(study)).toMatchObject({ areaMm2: 10_800 });
  });

  test("a cup's mouth stays bare", () => {
    const cup = { ...rodsOf(withAll)[0]!, id: "c", kind: "cup", markId: undefined } as const;
    const study = withBars(placed(), [{ ...cup, from: [0, 0, 90], to: [0, 0, 190] }], 60);
    // Both ends stand free; of a cylinder they are alike, and one is the mouth.
    expect(sizeOf(study, 1).gatingAreaMm2).toBeCloseTo(Math.PI * 4 * 100 + (Math.PI / 4) * 16, 6);
  });
});

test("metal, gates, cup and heights of a drawn tree fill all the gating sums ask for", () => {
  const { solidKgM3 } = alloyOf("c87300")!;
  const taken = chainOfStudy(withAll, solidKgM3.value)!;
  const litre = planOfStudy(withAll, null).metalLitre!;
  expect(taken.massKg! / (litre * 1e-3 * solidKgM3.value)).toBeCloseTo(1, 3);
  // A gate of 12 mm: π/4·12² mm². The starting cup is 60 mm deep.
  expect(taken.gateMm2).toBeCloseTo((Math.PI / 4) * 144, 1);
  expect(taken).toMatchObject({ cupMm: 60, sprueMm: 160, cavityMm: 60 });
  const over = chainOfStudy(turned(withAll, [1, 0, 0]), solidKgM3.value)!;
  expect([over.gateMm2, over.cupMm]).toEqual([undefined, undefined]);
});
