import { dot, length, minus, times, type Vec3 } from "../../src/geometry/vector.ts";
import type { HangsAt } from "../../src/logbook/casting/gatingTree.ts";
import type { Mark, MarkKind } from "../../src/logbook/casting/mark.ts";
import { upResultsOf } from "../../src/ui/pattern/mesh/patternResults.ts";
import {
  cupLevelOf,
  mmPerUnitOf,
  resultsFor,
  withMark,
  withResults,
  withTree,
  type PatternStudy,
} from "../../src/ui/pattern/mesh/patternStudy.ts";
import { block, studyOfMesh } from "./testStudy.ts";

/** A block with a gate at its side and two vents on top, and what a worker and a maker do to it. */
export const sides: Vec3 = [40, 30, 60];
export const bare: PatternStudy = { ...studyOfMesh(block(...sides)), alloyId: "c87300" };
export const mark = (id: string, kind: MarkKind, point: Vec3, normal: Vec3 | null = null): Mark => ({
  id,
  kind,
  point,
  normal,
  diameterMm: kind === "gate" ? 12 : 4,
});
export const gate = mark("g", "gate", [40, 15, 0], [1, 0, 0]);
export const vents = [mark("v", "vent", [10, 10, 60]), mark("w", "vent", [30, 20, 60])];

/** The corners of the block as it is scaled now. */
function cornersOf(study: PatternStudy): readonly Vec3[] {
  const by = mmPerUnitOf(study) ?? 1;
  return Array.from({ length: 8 }, (_, n) =>
    times([sides[0] * (n & 1), sides[1] * ((n >> 1) & 1), sides[2] * ((n >> 2) & 1)], by),
  );
}

export function hangs(study: PatternStudy): HangsAt {
  const { up } = study;
  const heights = cornersOf(study).map((p) => dot(p, up));
  const reachMm = Math.max(...cornersOf(study).map((p) => length(minus(p, times(up, dot(p, up))))));
  const highMm = Math.max(...heights);
  return { up, highMm, cupLevelMm: cupLevelOf(study, highMm), reachMm };
}

/** As the worker would answer for the way it hangs now. */
export function found(study: PatternStudy): PatternStudy {
  const heights = cornersOf(study).map((p) => dot(p, study.up));
  const asked = { tips: [], drains: [], low: Math.min(...heights), high: Math.max(...heights) };
  return resultsFor(study) === null ? withResults(study, upResultsOf(study.up, asked)) : study;
}

export const drawn = (study: PatternStudy): PatternStudy => {
  let n = 0;
  return withTree(found(study), hangs(study), () => `bar ${n++}`);
};
export const placed = (...marks: readonly Mark[]): PatternStudy => found(marks.reduce(withMark, bare));
