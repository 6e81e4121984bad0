import { expect, test } from "vitest";
import fc from "fast-check";
import { findTips } from "../../../geometry/findTips.ts";
import { towers } from "../../../../tests/meshes/testShapes.ts";
import { meshFindings } from "./meshFindings.ts";
import { heldOf, marksKey, upResultsOf } from "./patternResults.ts";
import { sizeOf } from "./patternSize.ts";
import {
  displayInMm,
  mmPerUnitOf,
  movedMark,
  resized,
  resultsFor,
  turned,
  withMark,
  withoutMark,
  withResults,
} from "./patternStudy.ts";
import type { Mark } from "../../../logbook/casting/mark.ts";
import { readStudy } from "./readStudy.ts";
import { sumsVersion } from "./sumsVersion.ts";
import { block, studyOfMesh } from "../../../../tests/meshes/testStudy.ts";
import { trappedVolume } from "../../../../tests/meshes/atOnce.ts";

const study = studyOfMesh(block(40, 20, 10));
const vent: Mark = { id: "v", kind: "vent", point: [1, 2, 5], normal: null, diameterMm: 4 };

test("a block 40 × 20 × 10 in inches with 2 % shrink is its mm times 25.4 times 1.02", () => {
  const scaled = resized(study, { unit: "inch", shrinkShare: 0.02 });
  const by = mmPerUnitOf(scaled)!;
  expect(by).toBeCloseTo(25.908, 9);
  const size = sizeOf(scaled, by);
  expect(size.volumeMm3! / 8000).toBeCloseTo(25.908 ** 3, 6);
  expect(size.areaMm2 / 2800).toBeCloseTo(25.908 ** 2, 6);
  expect(size.boxMm[0]).toBeCloseTo(40 * 25.908, 3);
  expect(Math.max(...displayInMm(scaled, by).pos)).toBeCloseTo(40 * 25.908, 2);
});

test("a length of 40 that shall be 100 is 250 %", () => {
  const scaled = resized(study, { scale: { kind: "length", fromMm: 40, toMm: 100 } });
  expect(mmPerUnitOf(scaled)).toBe(2.5);
});

test("marks go with the size, there and back, and what was found is asked again", () => {
  const found = upResultsOf([0, 0, 1], { tips: [], drains: [], low: -5, high: 5 });
  const marked = withResults(withMark(study, vent), found);
  fc.assert(
    fc.property(fc.double({ min: 10, max: 1000, noNaN: true }), (percent) => {
      const there = resized(marked, { scale: { kind: "percent", percent } });
      expect(there.byUp).toEqual(percent === 100 ? marked.byUp : []);
      there.marks[0]!.point.forEach((at, k) => expect(at).toBeCloseTo((vent.point[k]! * percent) / 100, 6));
      const back = resized(there, { scale: { kind: "percent", percent: 100 } });
      back.marks[0]!.point.forEach((at, k) => expect(at).toBeCloseTo(vent.point[k]!, 6));
    }),
    { numRuns: 100 },
  );
});

test("what was found for one way to hang is there again when the piece is turned back", () => {
  const found = upResultsOf([0, 0, 1], { tips: [], drains: [], low: -5, high: 5 });
  const once = withResults(study, found);
  const over = turned(once, [1, 0, 0]);
  expect(resultsFor(over)).toBeNull();
  expect(resultsFor(turned(over, [0, 0, 1]))).toBe(found);
});

test("marks are put, moved and taken away by their id", () => {
  const marked = withMark(study, vent);
  expect(withMark(marked, vent).marks).toHaveLength(1);
  const moved = movedMark(marked, "v", { point: [0, 0, 0], normal: [0, 0, 1] });
  expect(moved.marks[0]).toEqual({ ...vent, point: [0, 0, 0], normal: [0, 0, 1] });
  expect(marksKey(moved.marks)).not.toBe(marksKey(marked.marks));
  expect(withoutMark(moved, "v").marks).toEqual([]);
});

test("two towers on a block: tips at 50 and 40 high, the lower one holds 2880 mm³ until it is vented", () => {
  const up = [0, 0, 1] as const;
  const tips = findTips({ mesh: towers, up, minRise: 2, minVolume: 50 });
  const drains = findTips({ mesh: towers, up: [0, 0, -1], minRise: 2, minVolume: 50 });
  const found = upResultsOf(up, { tips, drains, low: 0, high: 50 });
  expect(found.tips.map(({ heightMm, isLast }) => [heightMm, isLast])).toEqual([
    [50, true],
    [40, false],
  ]);
  expect(found.tips[1]?.ml).toBeCloseTo(2.88, 6);
  // The block's whole floor is its one low place.
  expect(found.drains.map(({ heightMm, isLast }) => [Math.abs(heightMm), isLast])).toEqual([[0, true]]);
  const air = trappedVolume({ mesh: towers, up, vents: [[10, 20, 50]] });
  const held = heldOf(air, { lowMm: 0, turned: false });
  expect(held.pockets[0]?.ml).toBeCloseTo(2.88, 1);
  expect(held.pockets[0]?.endMm).toBeCloseTo(40, 6);
  expect(held.pockets[0]?.levelMm).toBeCloseTo(20, 6);
  const plastic = trappedVolume({ mesh: towers, up: [0, 0, -1], vents: [] });
  expect(heldOf(plastic, { lowMm: 0, turned: true }).pockets[0]?.endMm).toBeCloseTo(0, 6);
});

test("a kept pattern opens as it was; other things do not open, and older sums are let go", () => {
  const kept = structuredClone(withMark(study, vent));
  expect(readStudy(kept)).toEqual(kept);
  for (const odd of [null, 7, "x", {}, { ...kept, found: {} }, { ...kept, marks: 1 }])
    expect(readStudy(odd)).toBeNull();
  const found = upResultsOf([0, 0, 1], { tips: [], drains: [], low: -5, high: 5 });
  const older = { ...withResults(kept, found), sumsVersion: 0 };
  expect(readStudy(older)).toMatchObject({ byUp: [], marks: kept.marks, sumsVersion });
});

test("a sound mesh has one good word, an open one is told first", () => {
  const how = { isWhole: true, count: String };
  expect(meshFindings(study, how)).toEqual({
    level: "clear",
    findings: ["Watertight: one closed surface, no repairs."],
  });
  const { pos, idx } = block(40, 20, 10);
  const open = meshFindings(studyOfMesh({ pos, idx: idx.subarray(6) }), how);
  expect(open.level).toBe("watch");
  expect(open.findings[0]).toBe(
    "Not watertight: it has open edges (4 edges). Its volume is a range at best.",
  );
  expect(meshFindings(study, { ...how, isWhole: false }).level).toBe("note");
});

test("each of two bodies has an end of its own, however low the other reaches", () => {
  const [a, b] = [block(20, 20, 60), block(20, 20, 20)];
  const mesh = {
    pos: Float32Array.from([
      ...a.pos,
      ...b.pos.map((at, n) => (n % 3 === 0 ? at + 40 : n % 3 === 2 ? at + 30 : at)),
    ]),
    idx: Uint32Array.from([...a.idx, ...b.idx.map((v) => v + 8)]),
  };
  const limits = { minRise: 2, minVolume: 50 };
  const up = [0, 0, 1] as const;
  const found = upResultsOf(up, {
    tips: findTips({ mesh, up, ...limits }),
    drains: findTips({ mesh, up: [0, 0, -1], ...limits }),
    low: 0,
    high: 60,
  });
  expect(found.tips.map(({ isLast }) => isLast)).toEqual([true, true]);
  expect(found.drains.map(({ isLast }) => isLast)).toEqual([true, true]);
});

test("two bodies are not called one skin, a sheet without thickness is not called sound, and all holes count", () => {
  const how = { isWhole: true, count: String };
  const [a, b] = [block(40, 20, 10), block(5, 5, 5)];
  const two = studyOfMesh({
    pos: Float32Array.from([...a.pos, ...b.pos.map((at) => at + 60)]),
    idx: Uint32Array.from([...a.idx, ...b.idx.map((v) => v + 8)]),
  });
  expect(meshFindings(two, how)).toMatchObject({ level: "note" });
  expect(meshFindings(two, how).findings.join(" ")).toMatch(/^Watertight\. 2 closed skins/);
  const sheet = studyOfMesh({
    pos: Float32Array.of(0, 0, 0, 50, 0, 0, 50, 50, 0),
    idx: Uint32Array.of(0, 1, 2, 2, 1, 0),
  });
  expect(meshFindings(sheet, how)).toMatchObject({ level: "watch" });
  expect(meshFindings(sheet, how).findings[0]).toMatch(/surface without thickness/);
  const { found } = study;
  const hole = { share: 0.04, length: 3, low: 0, high: 0 };
  const mended = { ...found.mended, capped: [hole], cappedCount: 700 };
  expect(meshFindings({ ...study, found: { ...found, mended } }, how).findings.join(" ")).toContain(
    "700 holes were closed: the widest is 4%",
  );
});
