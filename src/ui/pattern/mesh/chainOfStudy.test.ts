import { expect, test } from "vitest";
import { alloyOf } from "../../../trade/metals/alloys.ts";
import { fillTimes } from "../../../logbook/casting/fillTimes.ts";
import { gatingSum } from "../../../logbook/casting/gatingSum.ts";
import { chainSum } from "../../../logbook/casting/chainSum.ts";
import { gatingDraftOf } from "../../../logbook/casting/gatingDraft.ts";
import { chainOfStudy } from "./chainOfStudy.ts";
import { feedsKey } from "./feeds.ts";
import { startingTree } from "../../../logbook/casting/gatingTree.ts";
import { upResultsOf } from "./patternResults.ts";
import { withMark, withResults, type PatternStudy } from "./patternStudy.ts";
import type { Mark } from "../../../logbook/casting/mark.ts";
import { block, studyOfMesh } from "../../../../tests/meshes/testStudy.ts";

const bare = studyOfMesh(block(40, 40, 60));
const gate: Mark = { id: "g", kind: "gate", point: [20, 0, 0], normal: [0, -1, 0], diameterMm: 12 };
const feeder: Mark = { id: "f", kind: "feeder", point: [20, 20, 60], normal: [0, 0, 1], diameterMm: 15 };
const hung = { up: [0, 0, 1], highMm: 60, cupLevelMm: 160, reachMm: 20 } as const;

function drawn(...marks: readonly Mark[]): PatternStudy {
  let n = 0;
  const study = marks.reduce(withMark, bare);
  const found = upResultsOf([0, 0, 1], { tips: [], drains: [], low: 0, high: 60 });
  return { ...withResults(study, found), bars: startingTree(marks, hung, () => `b${n++}`) };
}
const names = (study: PatternStudy) => chainOfStudy(study)?.links.map(({ name }) => name);

test("from the mesh over gate and sprue to the cup, each by what is drawn", () => {
  const study = drawn(gate);
  const found = chainOfStudy(study);
  expect(names(study)).toEqual(["Casting, from its 3D file", "Gate", "Sprue", "Cup"]);
  expect(found).toMatchObject({ from: "mesh", by: "cup", gate: "bottom", sprueMm: 160, cavityMm: 60 });
  // 40 × 40 × 60 mm: 96 cm³ behind 128 cm².
  expect(found?.links[0]).toMatchObject({ shape: "measured", volumeCm3: 96, areaCm2: 128 });
  // The cup, 28 to 80 mm over 60: a frustum of π/12·60·(28² + 28·80 + 80²) mm³.
  expect(found?.links.at(-1)?.volumeCm3).toBeCloseTo(148, 0);
});

test("what freezes last leads the chain with its neck; found for other feeders it is not taken", () => {
  const study = drawn(gate);
  const spots = [
    { point: [20, 20, 50], plate: 31, ball: 31, neck: { point: [20, 20, 20], plate: 12, ball: 12 } },
  ] as const;
  const known = { ...study, hot: { key: feedsKey(study, 1), spots } };
  expect(
    chainOfStudy(known)
      ?.links.map(({ thicknessMm }) => thicknessMm)
      .slice(0, 2),
  ).toEqual([31, 12]);
  expect(chainOfStudy({ ...known, hot: { key: "[]", spots } })?.from).toBe("mesh");
});

test("the last place to freeze has the modulus of a plate, a rod or a ball, whichever it is like", () => {
  // √(8u) in the middle of a sphere of 40 mm is 40/√3, of a rod 40/√2: closed forms of u.
  const study = drawn(gate);
  const halfOf = (plate: number) => {
    const spots = [{ point: [20, 20, 30], plate, ball: 40, neck: null }] as const;
    return (
      (chainOfStudy({ ...study, hot: { key: feedsKey(study, 1), spots } })?.links[0]?.thicknessMm ?? 0) / 2
    );
  };
  expect(halfOf(40)).toBeCloseTo(20, 2);
  expect(halfOf(40 / Math.SQRT2)).toBeCloseTo(10, 2);
  expect(halfOf(40 / Math.sqrt(3))).toBeCloseTo(40 / 6, 2);
});

test("a feeder nearer to what freezes last than the gate feeds it alone", () => {
  const study = drawn(gate, feeder);
  const spots = [{ point: [20, 20, 50], plate: 31, ball: 31, neck: null }] as const;
  const known = { ...study, hot: { key: feedsKey(study, 1), spots } };
  expect(names(known)).toEqual(["Hot spot", "Feeder"]);
  expect(chainOfStudy(known)).toMatchObject({ by: "feeder" });
});

test("without a bar it says so; without a unit there is nothing to hand over", () => {
  expect(chainOfStudy(bare)).toMatchObject({ by: "nothing", from: "mesh" });
  expect(chainOfStudy({ ...bare, unit: null })).toBeNull();
});

test("the chain is one the feeding sums take, and a neck shuts it", () => {
  const study = drawn(gate);
  const spots = [
    { point: [20, 20, 50], plate: 31, ball: 31, neck: { point: [20, 20, 20], plate: 12, ball: 12 } },
  ] as const;
  const { links } = chainOfStudy({ ...study, hot: { key: feedsKey(study, 1), spots } })!;
  const draft = { ...gatingDraftOf({ metalKg: 1, headM: 0.2, mesh: null, shellMm: 8 }), links };
  const [alloy, figures] = [alloyOf("c90300")!, alloyOf("c90300")!];
  const sum = chainSum({ draft, alloy, figures, metalC: 1150, shellC: 600 });
  expect(sum?.missing).toEqual([]);
  expect(sum?.chain.links.map(({ modulusMm }) => modulusMm).slice(0, 2)).toEqual([15.5, 6]);
  expect(sum?.chain.shutAt?.name).toBe("Neck on the way to it");
});

test("taken into an empty draft, choke, fill time, gate speed and all three riser checks have what they ask for", () => {
  const study = drawn(gate);
  const spots = [
    { point: [20, 20, 50], plate: 31, ball: 31, neck: { point: [20, 20, 20], plate: 12, ball: 12 } },
  ] as const;
  const alloy = alloyOf("c90300")!;
  const byMesh = { ...study, hot: { key: feedsKey(study, 1), spots } };
  for (const known of [study, byMesh]) {
    const { from: _, by: __, ...taken } = chainOfStudy(known, alloy.solidKgM3.value)!;
    const draft = {
      ...gatingDraftOf({ metalKg: null, headM: undefined, mesh: null, shellMm: 8 }),
      ...taken,
    };
    const { massKg } = draft;
    const times = fillTimes({ massKg: massKg!, gate: draft.gate, alloy, wallMm: 6, mostS: null });
    const { stream } = alloy;
    const timeS = times.plannedS;
    const sum = gatingSum({ draft, massKg, timeS, liquidKgM3: alloy.liquidKgM3.value, stream });
    expect(sum.choke?.areaMm2).toBeGreaterThan(0);
    // Continuity by hand: mass over density, time and the gate's π/4·12² mm².
    const speedMS = massKg! / (alloy.liquidKgM3.value * timeS * (Math.PI / 4) * 144e-6);
    expect(sum.throughGates!.speedMS / speedMS).toBeCloseTo(1, 2);
    const checks = chainSum({ draft, alloy, figures: alloy, metalC: 1150, shellC: 600 })?.checks;
    // 40 × 40 × 60 mm of block is what has to be fed, however it is cut into sections.
    expect(checks!.castingVolumeMm3 / 96_000).toBeCloseTo(1, 2);
    expect(checks!.volume).not.toBeNull();
  }
});

test("a thickest place stands for all of the piece; its modulus is still a rod's", () => {
  const study = drawn(gate);
  const thickness = {
    thin: [],
    thick: [{ point: [20, 20, 30], diameter: 40 }],
    median: 40,
    field: new Float32Array(12),
    pitch: 1,
    resolvable: 3,
  } as const;
  const shape = { thickness, flats: null, rounds: null, recesses: null };
  expect(chainOfStudy({ ...study, shape })?.links[0]).toMatchObject({ diameterMm: 40, volumeCm3: 96 });
});
